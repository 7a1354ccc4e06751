// However a layout is edited, an Auditor that has seen all before reports what an audit from nothing does, to
// the byte.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <functional>
#include <string>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "tests/support/furnished.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::audit {
namespace {

using layout::Layout;
using layout::Point;
using support::Random;

std::string textOf(Report report) {
  files::FiledReport filed{"shop", "", std::move(report)};
  return files::reportJson(filed);
}

template <class Things>
auto* oneOf(Things& things, Random& random) {
  return things.empty() ? nullptr
                        : &things[static_cast<std::size_t>(random.below(static_cast<int>(things.size())))];
}

// A nudge, a step on the drawing's grid, or anywhere near.
Point somewhat(Random& random) {
  const double size = random.chance(0.5) ? 60 : random.chance(0.5) ? 400 : 2500;
  if (random.chance(0.5)) return {50.0 * random.below(9) - 200, 50.0 * random.below(9) - 200};
  return {random.between(-size, size), random.between(-size, size)};
}

template <class Thing>
void putElsewhere(Thing& thing, Random& random) {
  if (random.chance(0.8)) thing.at = thing.at + somewhat(random);
  if (random.chance(0.25)) thing.turn += random.chance(0.5) ? 90 : random.between(-40, 40);
}

void addCrate(Layout& layout, Random& random) {
  const layout::Machine* beside = oneOf(layout.machines, random);
  if (!beside) return;
  layout::Fixture crate;
  crate.id = "crate-" + std::to_string(random.below(1 << 30));
  crate.name = "Crate";
  crate.at = beside->at + Point{random.between(-2500, 2500), random.between(-2500, 2500)};
  crate.footprint = layout::Rectangle{random.between(100, 900), random.between(100, 900)};
  layout.fixtures.push_back(std::move(crate));
}

void edited(Layout& layout, Random& random) {
  switch (random.below(16)) {
    case 0:
      return addCrate(layout, random);
    case 1:
      if (!layout.fixtures.empty())
        layout.fixtures.erase(layout.fixtures.begin() +
                              random.below(static_cast<int>(layout.fixtures.size())));
      return;
    case 2:
      if (auto* f = oneOf(layout.fixtures, random)) putElsewhere(*f, random);
      return;
    case 3:
      if (layout.machines.size() > 2)
        layout.machines.erase(layout.machines.begin() +
                              random.below(static_cast<int>(layout.machines.size())));
      return;
    case 4:
      if (const auto* m = oneOf(layout.machines, random)) {
        layout::Machine copy = *m;
        copy.id = "copy-" + std::to_string(random.below(1 << 30));
        copy.at = copy.at + somewhat(random);
        layout.machines.push_back(std::move(copy));
      }
      return;
    case 5:
      if (auto* d = oneOf(layout.doors, random)) d->locked = static_cast<layout::Locked>(random.below(3));
      return;
    case 6:
      if (auto* p = oneOf(layout.phones, random)) p->at = p->at + somewhat(random);
      return;
    case 7:
      if (auto* r = oneOf(layout.rooms, random)) {
        Point& corner = *oneOf(r->outline, random);
        corner = corner + Point{random.between(-80, 80), random.between(-80, 80)};
      }
      return;
    case 8:
      if (auto* d = oneOf(layout.devices, random)) d->at = d->at + somewhat(random);
      return;
    case 9:
      if (auto* m = oneOf(layout.machines, random))
        if (auto* d = oneOf(m->devices, random)) d->at = d->at + Point{random.between(-100, 100), 0};
      return;
    case 10:
      if (auto* m = oneOf(layout.machines, random))
        if (auto* s = oneOf(m->stations, random)) s->at = s->at + somewhat(random);
      return;
    default:
      if (auto* m = oneOf(layout.machines, random)) putElsewhere(*m, random);
  }
}

// One thing after the other is taken up, dragged a few steps and put down, as with the pointer.
class Drag {
 public:
  void operator()(Layout& layout, Random& random) {
    if (steps_ == 0) {
      machine_ = layout.fixtures.empty() || random.chance(0.8);
      const std::size_t count = machine_ ? layout.machines.size() : layout.fixtures.size();
      index_ = static_cast<std::size_t>(random.below(static_cast<int>(count)));
      steps_ = 3 + random.below(8);
      const double size = random.chance(0.7) ? 60 : 400;
      by_ = random.chance(0.3) ? Point{50.0 * random.below(5) - 100, 0}
                               : Point{random.between(-size, size), random.between(-size, size)};
    }
    --steps_;
    machine_ ? put(layout.machines[index_], random) : put(layout.fixtures[index_], random);
  }

 private:
  template <class Thing>
  void put(Thing& thing, Random& random) const {
    if (random.chance(0.9)) thing.at = thing.at + by_;
    if (random.chance(0.1)) thing.turn += random.chance(0.5) ? 90 : random.between(-40, 40);
  }

  bool machine_ = true;
  std::size_t index_ = 0;
  int steps_ = 0;
  Point by_;
};

using Edit = std::function<void(Layout&, Random&)>;

struct Count {
  std::size_t kept = 0, found = 0, reports = 0, followed = 0;
};

void follow(Layout layout, std::uint64_t seed, int edits, double after_hours, Edit edit, Count& count) {
  const Profile profile = defaultProfile();
  Random random(seed);
  Auditor auditor;
  for (int i = 0; i <= edits; ++i) {
    const floor::Hours hours = random.chance(after_hours) ? floor::Hours::After : floor::Hours::Open;
    const std::string kept = textOf(auditor.audit(layout, files::bundledDeviceKinds(), profile, hours));
    const std::string anew = textOf(audit(layout, files::bundledDeviceKinds(), profile, hours));
    ASSERT_EQ(kept, anew) << "seed " << seed << ", after edit " << i;
    if (i > 0) count.kept += auditor.walksKept(), count.found += auditor.walksFound(), ++count.reports;
    edit(layout, random);
  }
  count.followed += auditor.followed();
}

void followAll(const std::function<Layout(std::uint64_t)>& draw, int seeds, int edits, double least_kept,
               double after_hours = 0.15, const Edit& edit = edited) {
  Count count;
  for (int seed = 0; seed < seeds && !testing::Test::HasFatalFailure(); ++seed)
    follow(draw(static_cast<std::uint64_t>(seed)), static_cast<std::uint64_t>(seed), edits, after_hours, edit,
           count);
  // That it is not found anew after all.
  EXPECT_GT(static_cast<double>(count.kept), least_kept * static_cast<double>(count.found));
  EXPECT_GT(count.followed, 0u);
  testing::Test::RecordProperty("reports", static_cast<int>(count.reports));
  testing::Test::RecordProperty("followed", static_cast<int>(count.followed));
  testing::Test::RecordProperty("kept", static_cast<int>(count.kept));
  testing::Test::RecordProperty("found", static_cast<int>(count.found));
}

TEST(Auditor, ReportsOfRandomShopsAsFromNothing) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed); }, 25, 20, 0.05);
}

TEST(Auditor, ReportsOfNarrowShopsAsFromNothing) {
  followAll(
      [](std::uint64_t seed) { return support::randomLayout(seed, {.most_machines = 16, .narrow = true}); },
      12, 25, 0.05);
}

TEST(Auditor, ReportsOfShopsDrawnWithARulerAsFromNothing) {
  followAll([](std::uint64_t seed) { return support::gridLayout(seed); }, 25, 20, 0.2);
}

TEST(Auditor, ReportsOfABigShopAsFromNothing) {
  followAll([](std::uint64_t) { return support::shopLayout(support::kShopSizes[1]); }, 1, 40, 0.2);
}

TEST(Auditor, FollowsDragsInRandomShops) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed); }, 24, 30, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsAfterHours) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed + 500); }, 10, 40, 0, 1, Drag());
}

TEST(Auditor, FollowsDragsInNarrowShops) {
  followAll(
      [](std::uint64_t seed) { return support::randomLayout(seed, {.most_machines = 16, .narrow = true}); },
      12, 40, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsInShopsDrawnWithARuler) {
  followAll([](std::uint64_t seed) { return support::gridLayout(seed); }, 20, 30, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsWithWaysOutHazardsAndTapeChecks) {
  followAll([](std::uint64_t seed) { return support::furnished(support::randomLayout(seed + 700), seed); },
            24, 30, 0, 0.05, Drag());
  followAll([](std::uint64_t seed) { return support::furnished(support::gridLayout(seed + 700), seed); }, 24,
            30, 0, 0.05, Drag());
}

TEST(Auditor, FollowsDragsInABigShop) {
  followAll([](std::uint64_t) { return support::shopLayout(support::kShopSizes[1]); }, 1, 150, 0, 0, Drag());
}

}  // namespace
}  // namespace stopwalk::audit
