// What a change of the floor is said to leave as it was is found again on the floor as it
// is then.
#include "core/floor/walk_change.h"

#include <gtest/gtest.h>

#include <memory>

#include "core/floor/corridor.h"
#include "tests/core/floor/same_walk.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::floor {
namespace {

using support::Random;

// A shop before and after one of its machines was moved.
struct Moved {
  explicit Moved(int seed) : random(static_cast<std::uint64_t>(seed) + 3) {
    layout::Layout layout = support::randomLayout(static_cast<std::uint64_t>(seed));
    before = buildPlan(layout, Hours::Open);
    layout::Machine& machine =
        layout.machines[static_cast<std::size_t>(random.below(static_cast<int>(layout.machines.size())))];
    const double by = random.chance(0.5) ? 80 : 1500;
    machine.at = machine.at + Point{random.between(-by, by), random.between(-by, by)};
    now = buildPlan(layout, Hours::Open);
    for (const layout::Machine& m : layout.machines)
      for (const layout::Station& s : m.stations) stations.push_back(layout::toPlan(m.at, m.turn, s.at));
  }
  Random random;
  Plan before, now;
  std::vector<Point> stations;
};

TEST(WalkChange, LeavesNoWalkThatIsAnotherAfterwards) {
  int left = 0, not_left = 0;
  for (int seed = 0; seed < 120; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const Moved moved(seed);
    const auto doors = std::make_shared<const DoorBounds>(moved.now);
    const WalkChange change(changeBetween(moved.before, moved.now), moved.before, moved.now,
                            kMeasuringClearance_mm, doors);
    if (!change.partsStay()) continue;
    const Walks before(moved.before), now(moved.now);
    for (const Point from : moved.stations)
      for (const Point to : moved.stations) {
        const Place place{{to}, {}};
        const Nearest old = before.nearest(from, {&place, 1});
        if (!old.index || old.walk.tied || old.sought_narrow) continue;
        if (!change.leaves(old.walk, old.walk.length_mm, from, endsOf({&place, 1}, *doors))) {
          ++not_left;
          continue;
        }
        const Nearest fresh = now.nearest(from, {&place, 1});
        expectSame(old, fresh);
        ++left;
      }
  }
  EXPECT_GT(left, 200);
  EXPECT_GT(not_left, 200);
}

TEST(WalkChange, WherePartsStayWhatWasJoinedIsJoined) {
  int stayed = 0, other = 0;
  for (int seed = 0; seed < 150; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const Moved moved(seed);
    const WalkChange change(changeBetween(moved.before, moved.now), moved.before, moved.now,
                            kMeasuringClearance_mm, std::make_shared<const DoorBounds>(moved.now));
    const Walks before(moved.before), now(moved.now);
    for (const double clearance : {305.0, 355.5, 480.0}) {
      const bool stay = change.partsStay(clearance);
      for (const Point a : moved.stations)
        for (const Point b : moved.stations) {
          if (change.isNear(geometry::boxOf(a)) || change.isNear(geometry::boxOf(b))) continue;
          const bool same = before.joined(a, b, clearance) == now.joined(a, b, clearance);
          EXPECT_TRUE(same || !stay) << clearance;
          stayed += stay;
          other += !same;
        }
    }
  }
  EXPECT_GT(stayed, 500);
  EXPECT_GT(other, 0);  // or nothing ever was parted, and this holds nothing
}

}  // namespace
}  // namespace stopwalk::floor
