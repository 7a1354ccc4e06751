#include <gtest/gtest.h>

#include <limits>

#include "core/floor/walks.h"
#include "tests/support/rough_plan.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::floor {
namespace {

using support::Numbers;

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
    const Plan plan = support::roughPlan(n, 6);
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
