#include "core/floor/covered.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/floor/wall_grid.h"
#include "tests/support/rough_plan.h"

namespace stopwalk::floor {
namespace {

using geometry::Point;
using support::Numbers;

// The interval against dense sampling: inside it everything is near, outside nothing.
TEST(NearSegment, AgreesWithSamplingAlongALine) {
  Numbers n(1);
  for (int k = 0; k < 400; ++k) {
    const Point o{n.in(-500, 500), n.in(-500, 500)}, d = geometry::direction(n.in(0, 360));
    const Point a{n.in(-500, 500), n.in(-500, 500)}, b{n.in(-500, 500), n.in(-500, 500)};
    const double r = n.in(1, 400);
    const Interval near = nearSegment(o, d, a, b, r);
    for (double s = -2000; s < 2000; s += 7) {
      const double off = distance(Segment{a, b}, o + s * d) - r;
      if (std::abs(off) < 1e-6) continue;
      EXPECT_EQ(off < 0, !near.empty() && s > near.from && s < near.to) << k << " at " << s;
    }
  }
}

TEST(NearSegment, AgreesWithSamplingRoundACircle) {
  Numbers n(2);
  for (int k = 0; k < 400; ++k) {
    const Point v{n.in(-300, 300), n.in(-300, 300)};
    const Point a{n.in(-500, 500), n.in(-500, 500)}, b = k % 3 ? Point{n.in(-500, 500), n.in(-500, 500)} : a + Point{1, 2};
    const double r = n.in(50, 400);
    const Interval near = nearSegmentRound(v, r, a, b, r);
    for (int i = 0; i < 720; ++i) {
      const double angle = near.from + i * std::numbers::pi / 360;
      const double off = distance(Segment{a, b}, v + r * Point{std::cos(angle), std::sin(angle)}) - r;
      if (std::abs(off) < 1e-3) continue;
      EXPECT_EQ(off < 0, !near.empty() && angle < near.to) << k << " at " << angle;
    }
  }
}

TEST(Uncovered, KeepsWhatNoIntervalCovers) {
  std::vector<Interval> covered = {{5, 6}, {-1, 1}, {5.5, 7}, {9, 12}}, free;
  uncovered(0, 10, covered, 1e-9, free);
  ASSERT_EQ(free.size(), 2u);
  EXPECT_EQ(free[0].from, 1);
  EXPECT_EQ(free[0].to, 5);
  EXPECT_EQ(free[1].from, 7);
  EXPECT_EQ(free[1].to, 9);
}

}  // namespace
}  // namespace stopwalk::floor
