#include "core/floor/reach_map.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/floor/near_places.h"
#include "tests/support/plain_plan.h"
#include "tests/support/random_layout.h"
#include "tests/support/rough_plan.h"

namespace stopwalk::floor {
namespace {

using support::Numbers;

Polygon box(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

Plan roomWith(Polygon room, std::vector<Polygon> solids) {
  Plan plan;
  for (std::size_t i = 0; i < room.size(); ++i) plan.walls.push_back({room[i], room[(i + 1) % room.size()]});
  plan.rooms = {room};
  for (Polygon& p : solids) plan.solids.push_back({p, std::nullopt, true, 0});
  return plan;
}

// The slow twin: of the places that a walk at the clearance gets to, the nearest, asked for this point alone.
Reach slowReach(const Walks& walks, Point p, const std::vector<Place>& to) {
  if (!walks.onFloor(p)) return {WalkStatus::Unmeasured};
  const auto here = walks.parts({{p}, {}}, kMeasuringClearance_mm);
  std::vector<Place> near;
  for (const Place& place : to) {
    const auto there = walks.parts(place, kMeasuringClearance_mm);
    if (std::ranges::any_of(here, [&](auto part) { return std::ranges::binary_search(there, part); }))
      near.push_back(place);
  }
  const Walk walk = walks.nearest(p, near.empty() ? to : near).walk;
  return {walk.status, near.empty() ? std::numeric_limits<double>::infinity() : walk.length_mm};
}

struct Tally {
  int walked = 0;
  int apart = 0;  // by more than a hair
};

// Two ways to the very corner that a bar's place steps out at may differ by up to 3 mm, and one point at a
// time may miss the nearest place of a bar: so `apart` is few, and never much longer.
Tally compare(const Walks& walks, const std::vector<Point>& from, const std::vector<Place>& to) {
  Tally tally;
  const std::vector<Reach> all = walks.reachForAll(from, to);
  EXPECT_EQ(all.size(), from.size());
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Reach slow = slowReach(walks, from[i], to);
    EXPECT_EQ(all[i].status, slow.status) << from[i].x << "," << from[i].y;
    if (slow.status != WalkStatus::Walk || all[i].status != WalkStatus::Walk) continue;
    ++tally.walked;
    tally.apart += std::abs(all[i].length_mm - slow.length_mm) > 0.02;
    EXPECT_LE(all[i].length_mm, slow.length_mm + 3) << from[i].x << "," << from[i].y;
    EXPECT_GE(all[i].length_mm, straightLineTo(from[i], to[*all[i].index]) - 3);
  }
  return tally;
}

std::vector<Point> pointsIn(Numbers& n, const geometry::Box& box, int count) {
  std::vector<Point> points;
  for (int i = 0; i < count; ++i)
    points.push_back({n.in(box.low.x, box.high.x), n.in(box.low.y, box.high.y)});
  return points;
}

class ReachTwin : public testing::TestWithParam<int> {};

// Whether all of a bar's standing places are on the floor, as far as one sees at 40 of them.
bool allOnFloor(const Walks& walks, const Segment& s) {
  for (int i = 0; i <= 40; ++i)
    if (!walks.onFloor(s.a + (i / 40.0) * (s.b - s.a))) return false;
  return true;
}

TEST_P(ReachTwin, ManyAtOnceComeToTheSameAsOneByOneOnRoughPlans) {
  int bars = 0;
  Tally all;
  for (int k = 0; k < 12; ++k) {
    const unsigned seed = static_cast<unsigned>(GetParam() * 1000 + k);
    SCOPED_TRACE("seed " + std::to_string(seed));
    Numbers n(seed);
    const Plan plan = support::roughPlan(n, 20);
    const Walks walks(plan);
    const geometry::Box room = geometry::boxOf(plan.rooms.front());
    std::vector<Place> to;
    for (const Point p : pointsIn(n, room, 1)) to.push_back({{p}, {}});
    // Bars and cords: along an axis, and any way.
    for (const Point p : pointsIn(n, room, 12)) {
      const double deg = n.below(2) == 0 ? 90 * n.below(4) : n.in(0, 360);
      const Segment bar{p, p + n.in(300, 2000) * geometry::direction(deg)};
      if (allOnFloor(walks, bar)) to.push_back({{}, {bar}}), ++bars;
    }
    const Tally tally = compare(walks, pointsIn(n, room, 60), to);
    all.walked += tally.walked;
    all.apart += tally.apart;
  }
  EXPECT_GT(bars, 10);
  EXPECT_GT(all.walked, 150);
  EXPECT_LE(all.apart, all.walked / 100);
}

TEST_P(ReachTwin, ManyAtOnceComeToTheSameAsOneByOneOnLayouts) {
  int walked = 0;
  for (int k = 0; k < 12; ++k) {
    const auto seed = static_cast<std::uint64_t>(GetParam() * 1000 + k);
    SCOPED_TRACE("seed " + std::to_string(seed));
    support::RandomLayoutOptions options;
    options.narrow = k % 2 == 1;
    options.turned = options.far_away = false;
    const layout::Layout layout = support::randomLayout(seed, options);
    const Plan plan = support::plainPlan(layout);
    geometry::Box box;
    for (const Polygon& room : plan.rooms) box.add(geometry::boxOf(room));
    Numbers n(static_cast<unsigned>(seed));
    std::vector<Place> to;
    for (const layout::Machine& m : layout.machines)
      for (const layout::Station& s : m.stations)
        if (n.below(3) == 0) to.push_back({{layout::toPlan(m.at, m.turn, s.at)}, {}});
    const Tally tally = compare(Walks(plan), pointsIn(n, box, 80), to);
    walked += tally.walked;
    EXPECT_EQ(tally.apart, 0);
  }
  EXPECT_GT(walked, 150);
}

INSTANTIATE_TEST_SUITE_P(Seeds, ReachTwin, testing::Range(0, 8));

TEST(ReachMap, SamplesAreTheWalksFromThere) {
  const Plan plan = roomWith(box(0, 0, 6000, 4000), {box(2000, 1000, 3000, 4000)});
  const Walks walks(plan);
  const std::vector<Place> to{{{{500, 3500}}, {}}};
  const ReachMap map(plan, walks, to, 250);
  EXPECT_EQ(map.columns(), 24);
  EXPECT_EQ(map.rows(), 16);
  int measured = 0;
  for (int row = 0; row < map.rows(); ++row)
    for (int column = 0; column < map.columns(); ++column) {
      const Nearest one = walks.nearest(map.at(column, row), to);
      ASSERT_EQ(map.state(column, row) == Sampled::OffFloor, one.walk.status == WalkStatus::Unmeasured);
      ASSERT_EQ(map.length_mm(column, row).has_value(), one.walk.status == WalkStatus::Walk);
      if (!map.length_mm(column, row)) continue;
      EXPECT_NEAR(*map.length_mm(column, row), one.walk.length_mm, 0.02);
      ++measured;
    }
  EXPECT_EQ(measured, 24 * 16 - 4 * 12);
}

TEST(ReachMap, LengthsAreOnlyWhereThereIsAWalk) {
  // A gap of 580 mm between two halves, and a corner walled off.
  Plan plan = roomWith(box(0, 0, 6000, 3000), {box(2000, 580, 2500, 3000), box(4000, 0, 4200, 3000)});
  const Walks walks(plan);
  const std::vector<Place> to{{{{1000, 1500}}, {}}};
  const ReachMap map(plan, walks, to, 500);
  EXPECT_EQ(map.state(1, 2), Sampled::Walk);
  EXPECT_EQ(map.state(6, 2), Sampled::OnlyNarrow);
  EXPECT_EQ(map.state(10, 2), Sampled::NoWay);
  EXPECT_EQ(map.state(4, 2), Sampled::OffFloor);
  EXPECT_FALSE(map.length_mm(6, 2));
  EXPECT_FALSE(map.length_mm(10, 2));
  EXPECT_LT(*map.longest_mm(), 2500);
  const ReachMap none(plan, walks, {}, 500);
  EXPECT_EQ(none.state(1, 2), Sampled::NoWay);
  EXPECT_FALSE(none.longest_mm());
}

TEST(ReachMap, KnowsWhatStandsBetweenTwoSamples) {
  // Samples at 185, 685, 1185 ...
  Plan plan = roomWith(box(0, 0, 4000, 4000), {box(1250, 1100, 1600, 1500)});
  plan.walls.push_back({{2685, 0}, {2685, 4000}});
  const ReachMap map(plan, Walks(plan), {}, 500);
  EXPECT_TRUE(map.openRight(0, 2));
  EXPECT_FALSE(map.openRight(2, 2));  // the solid, between 1185 and 1685
  EXPECT_TRUE(map.openRight(2, 1));
  EXPECT_TRUE(map.openRight(2, 3));
  EXPECT_FALSE(map.openRight(4, 3));  // through the sample at 2685
  EXPECT_FALSE(map.openRight(5, 3));
  EXPECT_TRUE(map.openRight(6, 3));
  EXPECT_TRUE(map.openUp(4, 3));
}

TEST(ReachMap, KeepsItsGridWhenThePlanChangesALittle) {
  const Plan one = roomWith(box(10, 20, 6010, 4020), {}), other = roomWith(box(-30, -40, 5000, 4100), {});
  const Point p = ReachMap(one, Walks(one), {}, 250).at(0, 0),
              q = ReachMap(other, Walks(other), {}, 250).at(0, 0);
  EXPECT_EQ(std::remainder(p.x - q.x, 250), 0);
  EXPECT_EQ(std::remainder(p.y - q.y, 250), 0);
}

TEST(ReachMap, OfNothingIsEmpty) {
  const Plan plan;
  const ReachMap map(plan, Walks(plan), {}, 250);
  EXPECT_EQ(map.columns(), 0);
  EXPECT_FALSE(map.longest_mm());
}

TEST(StepFor, IsTheFinestThatFits) {
  const Plan plan = roomWith(box(0, 0, 10000, 5000), {});
  EXPECT_EQ(stepFor(plan, 50 * 100), 100);
  EXPECT_EQ(stepFor(plan, 50 * 100 - 1), 200);
  EXPECT_EQ(stepFor(plan, 300), 500);
  EXPECT_EQ(stepFor(plan, 20), 2000);
  EXPECT_EQ(stepFor(Plan{}, 20), 50);
}

}  // namespace
}  // namespace stopwalk::floor
