#include "core/geometry/lattice.h"

#include <gtest/gtest.h>

#include <cmath>

namespace stopwalk::geometry {
namespace {

// The largest coordinate of the lattice, below 2^32 mm, and one step.
const double kFar_mm = std::ldexp(1.0, 32) - kLatticeStep_mm;

TEST(Lattice, HoldsItsFarthestPoint) {
  EXPECT_EQ(onLattice({kFar_mm, -kFar_mm}), (Point{kFar_mm, -kFar_mm}));
  EXPECT_EQ(kFar_mm - (-kFar_mm) - kFar_mm, kFar_mm);  // differences are exact
}

TEST(Orientation, TellsOneStepFromNoneAcrossTheWholeLattice) {
  const Point a{-kFar_mm, -kFar_mm}, b{kFar_mm, kFar_mm}, middle{0, 0};
  EXPECT_EQ(orientation(a, b, middle), 0);
  EXPECT_EQ(orientation(a, b, middle + Point{0, kLatticeStep_mm}), 1);
  EXPECT_EQ(orientation(a, b, middle + Point{kLatticeStep_mm, 0}), -1);
}

}  // namespace
}  // namespace stopwalk::geometry
