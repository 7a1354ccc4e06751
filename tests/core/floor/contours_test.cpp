#include "core/floor/contours.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "tests/support/rough_plan.h"

namespace stopwalk::floor {
namespace {

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

double lengthOf(const std::vector<Point>& line) {
  double whole = 0;
  for (std::size_t i = 1; i < line.size(); ++i) whole += distance(line[i - 1], line[i]);
  return whole;
}

TEST(Contours, AreCirclesInAnEmptyHall) {
  const Plan plan = roomWith(box(-9900, -9900, 9900, 9900), {});
  const std::vector<Place> to{{{{30, 40}}, {}}};
  const auto contours = contoursOf(ReachMap(plan, Walks(plan), to, 250), 1000);
  std::set<int> closed;
  for (const Contour& c : contours) {
    for (const Point p : c.line) {
      if (std::max(std::abs(p.x), std::abs(p.y)) > 9300) continue;  // near a wall one steps out first
      EXPECT_NEAR(distance(p, to[0].points[0]), c.multiple * 1000, 20);
    }
    if (!c.closed()) continue;
    EXPECT_TRUE(closed.insert(c.multiple).second) << "more than one line at " << c.multiple;
    EXPECT_NEAR(lengthOf(c.line), 2 * std::numbers::pi * c.multiple * 1000, 0.02 * 6.3 * c.multiple * 1000);
  }
  for (int m = 1; m <= 9; ++m) EXPECT_TRUE(closed.contains(m)) << m;
  EXPECT_EQ(contours.back().multiple, 13);  // the farthest sample is 13.9 m away
}

TEST(Contours, LieBetweenASmallerAndALargerSample) {
  for (unsigned seed = 0; seed < 10; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    support::Numbers n(seed);
    const Plan plan = support::roughPlan(n, 12);
    const std::vector<Place> to{{{{n.in(0, 8000), n.in(0, 7000)}}, {}}};
    const ReachMap map(plan, Walks(plan), to, 200);
    for (const Contour& c : contoursOf(map, 1000)) {
      ASSERT_GE(c.line.size(), 2u);
      for (const Point p : c.line) {
        const Point at = (1 / map.step_mm()) * (p - map.at(0, 0));
        const int column = static_cast<int>(std::floor(at.x + 1e-9)),
                  row = static_cast<int>(std::floor(at.y + 1e-9));
        const bool up = at.x - column < 1e-6;
        const auto from = map.length_mm(column, row);
        // A crossing at a sample itself may be of any of its sides.
        if (up && at.y - row < 1e-6) continue;
        const auto next = up ? map.length_mm(column, row + 1) : map.length_mm(column + 1, row);
        ASSERT_TRUE(from && next);
        EXPECT_TRUE(up ? map.openUp(column, row) : map.openRight(column, row));
        EXPECT_LE(std::min(*from, *next), c.multiple * 1000);
        EXPECT_GE(std::max(*from, *next), c.multiple * 1000);
      }
    }
  }
}

TEST(Contours, DoNotCrossAWall) {
  Plan plan = roomWith(box(0, 0, 8000, 6000), {});
  plan.walls.push_back({{4100, 0}, {4100, 4000}});
  const std::vector<Place> to{{{{1000, 1000}}, {}}};
  const auto contours = contoursOf(ReachMap(plan, Walks(plan), to, 250), 1000);
  ASSERT_FALSE(contours.empty());
  for (const Contour& c : contours)
    for (std::size_t i = 1; i < c.line.size(); ++i) {
      const Point a = c.line[i - 1], b = c.line[i];
      EXPECT_FALSE((a.x < 4100) != (b.x < 4100) && std::min(a.y, b.y) < 3900) << a.y;
    }
}

TEST(Contours, OfAFlatOrEmptyMapAreNone) {
  const Plan plan = roomWith(box(0, 0, 2000, 2000), {});
  EXPECT_TRUE(contoursOf(ReachMap(plan, Walks(plan), {}, 250), 1000).empty());
  EXPECT_TRUE(contoursOf(ReachMap(), 1000).empty());
}

TEST(Midway, IsHalfWayAlong) {
  const Midway m = midwayOf({{0, 0}, {1000, 0}, {1000, 3000}});
  EXPECT_EQ(m.at, (Point{1000, 1000}));
  EXPECT_EQ(m.along, (Point{0, 1}));
}

}  // namespace
}  // namespace stopwalk::floor
