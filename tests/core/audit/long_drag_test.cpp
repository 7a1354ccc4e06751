// Something dragged in a straight line over a whole shop: through walls and other machines, onto a door or to
// where a phone is used from, off the floor. At each step an Auditor that saw all before reports what an
// audit from nothing does, to the byte.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "core/geometry/box.h"
#include "tests/core/audit/lines_text.h"
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
  return files::reportJson(filed, inspection::kUnreadDay) + linesText(filed.report);
}

std::size_t oneOf(std::size_t count, Random& random) {
  return static_cast<std::size_t>(random.below(static_cast<int>(count)));
}

Point away(double size, Random& random) {
  return {random.between(-size, size), random.between(-size, size)};
}

// Where a drag leads to.
Point goalOf(const Layout& layout, Random& random) {
  const layout::Machine& other = layout.machines[oneOf(layout.machines.size(), random)];
  switch (random.below(5)) {
    case 0:
      return layout.doors.empty() ? other.at : layout.doors[oneOf(layout.doors.size(), random)].at;
    case 1:
      if (layout.phones.empty()) return other.at;
      return layout.phones.front().at + 450 * geometry::direction(layout.phones.front().faces);
    case 2: {
      geometry::Box box;
      for (const layout::Room& room : layout.rooms) box.add(geometry::boxOf(room.outline));
      return random.chance(0.5) ? box.high + Point{800, 800} : box.low + away(1500, random);
    }
    case 3:
      return other.at + away(1200, random);  // beside it, often with a narrow gap
    default:
      return other.at;
  }
}

std::vector<inspection::FailedDevice> someFailed(const Layout& layout, Random& random) {
  std::vector<inspection::FailedDevice> failed;
  for (const layout::Machine& m : layout.machines)
    for (const layout::Device& d : m.devices)
      if (random.chance(0.1))
        failed.push_back({m.id + "/" + d.id, *inspection::parseDate("2026-03-02"), 7, "Ada Example"});
  return failed;
}

struct Count {
  std::size_t kept = 0, found = 0;
};

// Two drags of a shop, one after the other, the second often of the same thing.
void drag(Layout layout, std::uint64_t seed, Count& count) {
  Random random(seed ^ 0x5eed);
  const Profile profile = defaultProfile();
  const floor::Hours hours = random.chance(0.3) ? floor::Hours::After : floor::Hours::Open;
  const std::vector<inspection::FailedDevice> failed = someFailed(layout, random);
  Auditor auditor;
  std::size_t machine = oneOf(layout.machines.size(), random);
  for (int drag = 0; drag < 2; ++drag) {
    if (random.chance(0.5)) machine = oneOf(layout.machines.size(), random);
    layout::Machine& dragged = layout.machines[machine];
    const Point from = dragged.at, to = goalOf(layout, random);
    const int steps = 6 + random.below(10);
    const bool turning = random.chance(0.2);
    for (int i = 0; i <= steps; ++i) {
      dragged.at = from + (double(i) / steps) * (to - from);
      if (turning) dragged.turn += 7;
      const std::string kept =
          textOf(auditor.audit(layout, files::bundledDeviceKinds(), profile, hours, failed));
      const std::string anew = textOf(audit(layout, files::bundledDeviceKinds(), profile, hours, failed));
      ASSERT_EQ(kept, anew) << "seed " << seed << ", drag " << drag << ", step " << i;
      count.kept += auditor.walksKept();
      count.found += auditor.walksFound();
    }
  }
}

constexpr std::uint64_t kSeeds = 25;

// Those seeds besides, at which something was once wrong.
void dragAll(const std::function<Layout(std::uint64_t)>& draw,
             const std::vector<std::uint64_t>& besides = {}) {
  Count count;
  for (std::uint64_t seed = 0; seed < kSeeds && !testing::Test::HasFatalFailure(); ++seed)
    drag(draw(seed), seed, count);
  for (const std::uint64_t seed : besides)
    if (!testing::Test::HasFatalFailure()) drag(draw(seed), seed, count);
  EXPECT_GT(count.kept, 0u);
  testing::Test::RecordProperty("kept", static_cast<int>(count.kept));
  testing::Test::RecordProperty("found", static_cast<int>(count.found));
}

TEST(LongDrag, OverRandomShops) {
  dragAll([](std::uint64_t seed) { return support::randomLayout(seed + 9000); });
}

TEST(LongDrag, OverShopsWithWaysOutHazardsAndTapeChecks) {
  dragAll([](std::uint64_t seed) { return support::furnished(support::randomLayout(seed + 8000), seed); });
  dragAll([](std::uint64_t seed) { return support::furnished(support::gridLayout(seed + 8000), seed); });
}

// Some hundred positions on, what was asked of the first of them is forgotten.
TEST(LongDrag, PastWhatIsForgottenOnTheWay) {
  const auto& kinds = files::bundledDeviceKinds();
  const Profile profile = defaultProfile();
  for (std::uint64_t seed = 0; seed < 4; ++seed) {
    Random random(seed);
    Layout layout = support::furnished(support::shopLayout(support::kShopSizes[0]), seed);
    Auditor auditor;
    auditor.audit(layout, kinds, profile);
    std::size_t followed = 0;
    for (const int positions : {400, 20}) {
      layout::Machine& dragged = layout.machines[oneOf(layout.machines.size(), random)];
      const Point start = dragged.at;
      for (int i = 1; i <= positions; ++i) {
        dragged.at = start + Point{300 * std::sin(0.037 * i), 200 * std::sin(0.0411 * i)};
        const std::size_t before = auditor.followed();
        const Report& report = auditor.audit(layout, kinds, profile);
        followed += auditor.followed() - before;
        if (i % 10 != 0) continue;
        ASSERT_EQ(textOf(report), textOf(audit(layout, kinds, profile))) << seed << ", " << i;
      }
    }
    EXPECT_GT(followed, 300u) << seed;
  }
}

TEST(LongDrag, OverNarrowShops) {
  dragAll(
      [](std::uint64_t seed) {
        return support::randomLayout(seed + 9000, {.most_machines = 16, .narrow = true});
      },
      {114, 176});
}

TEST(LongDrag, OverShopsDrawnWithARuler) {
  dragAll([](std::uint64_t seed) { return support::gridLayout(seed + 9000); }, {52, 70});
}

}  // namespace
}  // namespace stopwalk::audit
