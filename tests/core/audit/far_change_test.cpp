// What stands in a room of its own, shut off, changes no walk: neither its length nor where it is drawn,
// though all of the floor is cut into other triangles for it.
#include <gtest/gtest.h>

#include <cstdint>
#include <vector>

#include "core/audit/context.h"
#include "core/files/device_kinds_reader.h"
#include "core/geometry/box.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

constexpr int kSeeds = 120;
constexpr int kTimes = 3;

// The layout with a shut store beside it, and crates in it that stand otherwise each time.
layout::Layout withStore(layout::Layout layout, int time) {
  geometry::Box box;
  for (const layout::Room& room : layout.rooms) box.add(geometry::boxOf(room.outline));
  for (const layout::Machine& m : layout.machines)
    box.add(geometry::boxOf(layout::outlineInPlan(m.footprint, m.at, m.turn)));
  for (const layout::Fixture& f : layout.fixtures)
    box.add(geometry::boxOf(layout::outlineInPlan(f.footprint, f.at, f.turn)));
  const Point low{box.high.x + 3000, box.low.y}, high{2 * box.high.x - box.low.x + 3000, box.high.y};
  layout::Room store;
  store.id = "store";
  store.outline = {low, {high.x, low.y}, high, {low.x, high.y}};
  layout.rooms.push_back(std::move(store));
  support::Random random(static_cast<std::uint64_t>(time));
  for (int i = 0; i <= time; ++i) {
    layout::Fixture crate;
    crate.id = "crate-" + std::to_string(i);
    crate.footprint = layout::Rectangle{random.between(200, 1200), random.between(200, 1200)};
    crate.at = {random.between(low.x + 900, high.x - 900), random.between(low.y + 900, high.y - 900)};
    crate.turn = random.chance(0.5) ? 0 : random.between(0, 90);
    layout.fixtures.push_back(std::move(crate));
  }
  return layout;
}

struct Count {
  int walks = 0, tied = 0, other = 0;
};

// Walks from every station to each stop of its machine, and to the nearest phone.
std::vector<floor::Nearest> walksOf(const layout::Layout& layout) {
  const Context c(layout, files::bundledDeviceKinds(), defaultProfile(), floor::Hours::Open);
  std::vector<floor::Nearest> found;
  std::vector<Place> phones;
  for (const PlacedEntry& p : c.phones)
    if (!p.standing.place.empty()) phones.push_back(p.standing.place);
  std::vector<Point> from;
  for (const StationEntry& s : c.stations) {
    from.push_back(s.at);
    for (const std::size_t d : c.relation.candidates(s.machine))
      if (!c.placed[d].standing.place.empty())
        found.push_back(c.walks.nearest(s.at, {&c.placed[d].standing.place, 1}));
  }
  if (!phones.empty())
    for (floor::Nearest& n : c.walks.nearestForAll(from, phones)) found.push_back(std::move(n));
  return found;
}

void compare(const layout::Layout& layout, Count& count) {
  const std::vector<floor::Nearest> first = walksOf(withStore(layout, 0));
  for (int time = 1; time <= kTimes; ++time) {
    const std::vector<floor::Nearest> again = walksOf(withStore(layout, time));
    ASSERT_EQ(first.size(), again.size());
    for (std::size_t i = 0; i < first.size(); ++i) {
      const floor::Walk &a = first[i].walk, &b = again[i].walk;
      ASSERT_EQ(a.status, b.status);
      EXPECT_EQ(first[i].index, again[i].index);
      EXPECT_EQ(a.clearance_mm, b.clearance_mm);
      EXPECT_EQ(a.tied, b.tied);
      if (!a.found()) continue;
      ++count.walks;
      if (a.tied) {
        ++count.tied;
        count.other += a.path != b.path;
        EXPECT_NEAR(a.length_mm, b.length_mm, 1e-5);
      } else {
        EXPECT_EQ(a.length_mm, b.length_mm);
        EXPECT_EQ(a.path, b.path);
      }
    }
  }
}

TEST(FarChange, MovesNoWalkOfAShopDrawnWithARuler) {
  Count count;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    compare(support::gridLayout(static_cast<std::uint64_t>(seed)), count);
  }
  // Those that have an equal are told, and some of them do go the other way.
  EXPECT_GT(count.walks, 10 * count.tied);
  EXPECT_GT(count.other, 0);
  RecordProperty("walks", count.walks);
  RecordProperty("tied", count.tied);
}

TEST(FarChange, MovesNoWalkOfARandomShop) {
  Count count;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    compare(support::randomLayout(static_cast<std::uint64_t>(seed)), count);
  }
  EXPECT_GT(count.walks, 1000);
}

}  // namespace
}  // namespace stopwalk::audit
