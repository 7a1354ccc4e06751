#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/floor/walks.h"
#include "tests/support/draw.h"
#include "tests/support/rough_plan.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::floor {
namespace {

using support::Numbers;

Point anyPoint(Numbers& n) {
  return {n.in(0, 8000), n.in(0, 7000)};
}

class WalksProperty : public testing::TestWithParam<int> {
 protected:
  template <class Check>
  void onPlans(int plans, int most, Check check) {
    for (int k = 0; k < plans; ++k) {
      const unsigned seed = static_cast<unsigned>(GetParam() * 1000 + k);
      SCOPED_TRACE("seed " + std::to_string(seed));
      Numbers n(seed);
      const Plan plan = support::roughPlan(n, most);
      check(n, plan);
    }
  }
};

TEST_P(WalksProperty, SameBothWaysAndNeverShorterThanStraight) {
  onPlans(40, 30, [](Numbers& n, const Plan& plan) {
    const Walks walks(plan);
    for (int q = 0; q < 4; ++q) {
      const Point a = anyPoint(n), b = anyPoint(n);
      const Walk there = walks.between(a, b), back = walks.between(b, a);
      ASSERT_EQ(there.status, back.status) << a.x << "," << a.y << " " << b.x << "," << b.y;
      if (!there.found()) continue;
      EXPECT_NEAR(there.length_mm, back.length_mm, 1e-3) << a.x << "," << a.y << " " << b.x << "," << b.y;
      EXPECT_GE(there.length_mm, distance(a, b) - 1e-5);
      // The drawing's chords; rounding to the lattice may show.
      double drawn = 0;
      for (std::size_t i = 1; i < there.path.size(); ++i) drawn += distance(there.path[i - 1], there.path[i]);
      EXPECT_LE(drawn, there.length_mm + 1e-3);
      EXPECT_GE(drawn, 0.999 * there.length_mm - 1);
    }
  });
}

TEST_P(WalksProperty, TurningAndMovingThePlanChangesNothing) {
  onPlans(25, 12, [](Numbers& n, const Plan& plan) {
    const double deg = n.in(0, 360);
    const Point by{n.in(-1e6, 1e6), n.in(-1e6, 1e6)};
    const Walks here(plan), there(support::movedPlan(plan, deg, by));
    for (int q = 0; q < 3; ++q) {
      const Point a = anyPoint(n), b = anyPoint(n);
      const Walk w = here.between(a, b),
                 v = there.between(support::movedPoint(a, deg, by), support::movedPoint(b, deg, by));
      ASSERT_EQ(w.status, v.status) << a.x << "," << a.y << " " << b.x << "," << b.y;
      if (w.found()) {
        EXPECT_NEAR(w.length_mm, v.length_mm, 1e-2);
      }
    }
  });
}

TEST_P(WalksProperty, OrderOfTheSolidsChangesNothing) {
  onPlans(25, 20, [](Numbers& n, const Plan& plan) {
    Plan other = plan;
    std::reverse(other.solids.begin(), other.solids.end());
    std::reverse(other.walls.begin(), other.walls.end());
    const Walks one(plan), two(other);
    for (int q = 0; q < 3; ++q) {
      const Point a = anyPoint(n), b = anyPoint(n);
      const Walk w = one.between(a, b), v = two.between(a, b);
      ASSERT_EQ(w.status, v.status);
      if (w.found()) {
        EXPECT_NEAR(w.length_mm, v.length_mm, 1e-3);
      }
    }
  });
}

TEST_P(WalksProperty, TriangleAndClearanceAndObstaclesWhereNoStepIsNeeded) {
  onPlans(25, 8, [](Numbers& n, const Plan& plan) {
    Point p[3];
    for (Point& q : p) {
      for (int i = 0; i < 100 && support::slowClearance(plan, q = anyPoint(n)) < 320; ++i) {
      }
      if (support::slowClearance(plan, q) < 320) return;
    }
    const auto at = [](const Walks& w, Point a, Point b) {
      const Walk walk = w.between(a, b);
      return walk.status == WalkStatus::Walk ? walk.length_mm : std::numeric_limits<double>::infinity();
    };
    const Walks walks(plan);
    EXPECT_LE(at(walks, p[0], p[1]), at(walks, p[0], p[2]) + at(walks, p[2], p[1]) + 1e-3);
    EXPECT_LE(at(walks, p[0], p[1]), at(Walks(plan, 320), p[0], p[1]) + 1e-3);
    EXPECT_LE(at(Walks(plan, 100), p[0], p[1]), at(walks, p[0], p[1]) + 1e-3);
    Plan fewer = plan;
    fewer.solids.pop_back();
    EXPECT_LE(at(Walks(fewer), p[0], p[1]), at(walks, p[0], p[1]) + 1e-3);
  });
}

TEST_P(WalksProperty, OnePassForAllGivesTheSameAsOneByOne) {
  onPlans(15, 20, [](Numbers& n, const Plan& plan) {
    std::vector<Point> from;
    std::vector<Place> to;
    for (int i = 0; i < 25; ++i) from.push_back(anyPoint(n));
    for (int i = 0; i < 3; ++i) to.push_back({{anyPoint(n)}, {}});
    const Walks walks(plan);
    const std::vector<Nearest> all = walks.nearestForAll(from, to);
    for (std::size_t i = 0; i < from.size(); ++i) {
      const Nearest one = walks.nearest(from[i], to);
      EXPECT_EQ(all[i].index, one.index) << i;
      EXPECT_EQ(all[i].walk.status, one.walk.status) << i;
      if (one.index) {
        EXPECT_NEAR(all[i].walk.length_mm, one.walk.length_mm, 1e-3) << i;
      }
    }
  });
}

TEST_P(WalksProperty, OnePassForAllToBarsGivesTheSameAsOneByOne) {
  onPlans(8, 20, [](Numbers& n, const Plan& plan) {
    std::vector<Point> from;
    std::vector<Place> to;
    for (int i = 0; i < 12; ++i) from.push_back(anyPoint(n));
    for (int i = 0; i < 4; ++i) to.push_back({{anyPoint(n)}, {}});
    const Point a = anyPoint(n);
    to.push_back({{}, {{a, a + n.in(300, 1500) * geometry::direction(90 * n.below(4))}}});
    // Places far away, so that the nearest are asked first.
    for (int i = 0; i < 4; ++i) to.push_back({{anyPoint(n) + Point{50000, 0}}, {}});
    const Walks walks(plan);
    const std::vector<Nearest> all = walks.nearestForAll(from, to);
    for (std::size_t i = 0; i < from.size(); ++i) {
      const Nearest one = walks.nearest(from[i], to);
      EXPECT_EQ(all[i].index, one.index) << i;
      EXPECT_EQ(all[i].walk.status, one.walk.status) << i;
      EXPECT_EQ(all[i].walk.length_mm, one.walk.length_mm) << i;
    }
  });
}

TEST_P(WalksProperty, PartsAreSharedJustWhereThereIsAWay) {
  onPlans(15, 20, [](Numbers& n, const Plan& plan) {
    const Walks walks(plan);
    for (int q = 0; q < 10; ++q) {
      const Point a = anyPoint(n), b = anyPoint(n);
      const auto at_a = walks.parts(Place{{a}, {}}, kMeasuringClearance_mm),
                 at_b = walks.parts(Place{{b}, {}}, kMeasuringClearance_mm);
      const bool shared = std::ranges::find_first_of(at_a, at_b) != at_a.end();
      EXPECT_EQ(shared, walks.between(a, b).status == WalkStatus::Walk)
          << a.x << "," << a.y << " " << b.x << "," << b.y;
    }
  });
}

// Of a bar all of whose places lie on the floor; by how much it is nearer than the nearest of so many of
// them.
double expectAsNearAsItsPlaces(const Plan& plan, const Walks& walks, Point from, Point a, Point b,
                               int count) {
  std::vector<Place> places;
  for (int i = 0; i <= count; ++i) {
    const Point p = a + (double(i) / count) * (b - a);
    if (support::slowClearance(plan, p) <= 0.01) return 0;
    places.push_back({{p}, {}});
  }
  const Walk bar = walks.between(Place{{from}, {}}, Place{{}, {{a, b}}});
  const Nearest sampled = walks.nearest(from, places);
  EXPECT_EQ(bar.found(), sampled.index.has_value()) << a.x << "," << a.y << " " << b.x << "," << b.y;
  if (!bar.found() || !sampled.index || bar.status != sampled.walk.status) return 0;
  EXPECT_LE(bar.length_mm, sampled.walk.length_mm + 1e-3) << a.x << "," << a.y << " " << b.x << "," << b.y;
  // It is the walk to the place where it ends; or, where another step begins just there, to one a hair
  // beside.
  const Point hair = 0.01 * geometry::unit(b - a), end = bar.path.back();
  double least = std::numeric_limits<double>::infinity();
  for (const Point there : {end, end - hair, end + hair})
    least = std::min(least, walks.between(from, there).length_mm);
  EXPECT_GE(bar.length_mm, least - 0.1)
      << end.x << "," << end.y << " of " << a.x << "," << a.y << " " << b.x << "," << b.y;
  return sampled.walk.length_mm - bar.length_mm;
}

TEST_P(WalksProperty, ABarIsAsNearAsTheNearestOfItsPlaces) {
  onPlans(12, 6, [](Numbers& n, const Plan& plan) {
    const Point from = anyPoint(n);
    if (support::slowClearance(plan, from) < 0) return;
    const Walks walks(plan);
    for (int k = 0; k < 3; ++k) {
      const Point a = anyPoint(n),
                  b = a + n.in(300, 1500) * geometry::direction(n.below(2) ? 90 * n.below(4) : n.in(0, 360));
      EXPECT_LE(expectAsNearAsItsPlaces(plan, walks, from, a, b, 150), distance(a, b) / 150)
          << a.x << "," << a.y << " " << b.x << "," << b.y;
    }
  });
}

// Before a bar at the wall stand slender things: from much of it one steps to the edge of what they hide.
TEST_P(WalksProperty, ABarIsAsNearAsItsPlacesWhereThingsHideTheFloor) {
  Numbers n(GetParam() + 900);
  for (int k = 0; k < 40; ++k) {
    layout::Layout l;
    l.rooms = {draw::room("r", {{0, 0}, {6000, 0}, {6000, 4000}, {0, 4000}})};
    for (int i = 0; i < 4; ++i) {
      l.fixtures.push_back(draw::bench("f" + std::to_string(i), {n.in(2300, 3700), n.in(320, 700)},
                                       n.in(5, 120), n.in(20, 200)));
      l.fixtures.back().turn = n.in(0, 180);
    }
    const Plan plan = buildPlan(l, Hours::Open);
    const Walks walks(plan);
    const Point from{n.in(1000, 5000), n.in(1200, 3500)};
    expectAsNearAsItsPlaces(plan, walks, from, {2500, 300}, {3500, 300}, 400);
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, WalksProperty, testing::Range(0, 6));

}  // namespace
}  // namespace stopwalk::floor
