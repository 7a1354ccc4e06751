#include <gtest/gtest.h>

#include <random>

#include "core/floor/walks.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::floor {
namespace {

// Uniform numbers that are the same on every machine.
class Numbers {
 public:
  explicit Numbers(unsigned seed) : engine_(seed) {}
  double in(double low, double high) { return low + (high - low) * static_cast<double>(engine_()) / 4294967295.0; }
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }

 private:
  std::mt19937 engine_;
};

Polygon turnedBox(Point at, double w, double d, double deg) {
  Polygon p = {{-w / 2, -d / 2}, {w / 2, -d / 2}, {w / 2, d / 2}, {-w / 2, d / 2}};
  for (Point& c : p) c = at + geometry::turned(c, deg);
  return p;
}

Plan randomPlan(Numbers& n) {
  Plan plan;
  const Polygon rooms[] = {{{0, 0}, {8000, 0}, {8000, 6000}, {0, 6000}},
                           {{0, 0}, {8000, 0}, {8000, 3000}, {4500, 3000}, {4500, 7000}, {0, 7000}}};
  const Polygon room = rooms[n.below(2)];
  plan.rooms = {room};
  for (std::size_t i = 0; i < room.size(); ++i) plan.walls.push_back({room[i], room[(i + 1) % room.size()]});
  const int solids = 1 + n.below(6);
  const bool square = n.below(2) == 0;
  for (int i = 0; i < solids; ++i) {
    Point at{n.in(0, 8000), n.in(0, 6000)};
    double w = n.in(300, 2500), d = n.in(300, 1500);
    if (square) {  // multiples of 50: touching, flush and collinear edges
      at = {std::round(at.x / 250) * 250, std::round(at.y / 250) * 250};
      w = std::round(w / 500) * 500 + 500;
      d = std::round(d / 500) * 500 + 500;
    }
    plan.solids.push_back({turnedBox(at, w, d, square ? 0 : n.in(0, 360)), std::nullopt, true, std::size_t(i)});
  }
  return plan;
}

Point freePoint(Numbers& n, const Plan& plan, double clearance) {
  for (int i = 0; i < 200; ++i) {
    const Point p{n.in(0, 8000), n.in(0, 7000)};
    if (support::slowClearance(plan, p) >= clearance) return p;
  }
  return {-1, -1};
}

class WalksTwin : public testing::TestWithParam<int> {};

TEST_P(WalksTwin, AgreesOnRandomPlans) {
  for (int k = 0; k < 25; ++k) {
    const unsigned seed = static_cast<unsigned>(GetParam() * 1000 + k);
    Numbers n(seed);
    const Plan plan = randomPlan(n);
    const double clearance = n.below(3) == 0 ? n.in(0, 400) : 305;
    const Walks walks(plan, clearance);
    for (int q = 0; q < 3; ++q) {
      const Point a = freePoint(n, plan, clearance), b = freePoint(n, plan, clearance);
      if (a.x < 0 || b.x < 0) continue;
      const Walk walk = walks.between(a, b);
      const double slow = support::slowWalk(plan, clearance, a, b);
      const double fast = walk.status == WalkStatus::Walk ? walk.length_mm : std::numeric_limits<double>::infinity();
      if (std::isinf(slow) && std::isinf(fast)) continue;
      EXPECT_NEAR(fast, slow, 0.02) << "seed " << seed << " clearance " << clearance << " from " << a.x << "," << a.y << " to "
                                    << b.x << "," << b.y;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, WalksTwin, testing::Range(0, 8));

}  // namespace
}  // namespace stopwalk::floor
