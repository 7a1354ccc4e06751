#include "core/floor/region.h"

#include <gtest/gtest.h>

#include <numbers>

#include "core/geometry/lattice.h"
#include "tests/support/rough_plan.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::floor {
namespace {

using support::Numbers;

struct Built {
  explicit Built(const Plan& plan, double clearance = 305) : mesh(plan), grid(mesh), region(mesh, grid, clearance) {}
  Mesh mesh;
  WallGrid grid;
  Region region;
};

class RegionOfRoughPlans : public testing::TestWithParam<int> {};

TEST_P(RegionOfRoughPlans, HoldsWhatIsFarEnoughFromEverything) {
  Numbers n(static_cast<unsigned>(GetParam()));
  const Plan plan = support::roughPlan(n, 12);
  const Built built(plan);
  for (int i = 0; i < 300; ++i) {
    const Point p{n.in(-500, 8500), n.in(-500, 7500)};
    const double room = support::slowClearance(plan, p);
    if (std::abs(room - 305) < 0.01) continue;
    EXPECT_EQ(built.region.holds(built.mesh.local(p)), room > 305) << p.x << "," << p.y;
  }
}

TEST_P(RegionOfRoughPlans, BoundaryIsClosedAndAtTheRadius) {
  Numbers n(static_cast<unsigned>(GetParam()));
  const Built built(support::roughPlan(n, 12));
  for (const Region::Piece& piece : built.region.pieces()) {
    ASSERT_NE(piece.next, Region::kNone);
    EXPECT_LT(distance(built.region.endOf(piece), built.region.beginOf(built.region.pieces()[piece.next])), 0.01);
    EXPECT_EQ(piece.part, built.region.pieces()[piece.next].part);
    EXPECT_NEAR(built.grid.clearance(built.region.beginOf(piece), 400), built.region.radius(), 1e-5);
  }
}

TEST_P(RegionOfRoughPlans, PartsAreThePlacesThatAWalkJoins) {
  Numbers n(static_cast<unsigned>(GetParam()));
  const Plan plan = support::roughPlan(n, 6);
  const Built built(plan);
  std::vector<Point> inside;
  for (int i = 0; i < 60 && inside.size() < 6; ++i) {
    const Point p{n.in(0, 8000), n.in(0, 7000)};
    if (support::slowClearance(plan, p) > 305) inside.push_back(p);
  }
  for (std::size_t i = 0; i + 1 < inside.size(); ++i) {
    const bool joined = std::isfinite(support::slowWalk(plan, 305, inside[i], inside[i + 1]));
    EXPECT_EQ(built.region.partAt(built.mesh.local(inside[i])) == built.region.partAt(built.mesh.local(inside[i + 1])), joined);
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, RegionOfRoughPlans, testing::Range(0, 60));

TEST(Region, OfARoomWithOneColumnHasTwoLoopsOfTheRightLength) {
  Plan plan;
  plan.rooms = {{{0, 0}, {4000, 0}, {4000, 4000}, {0, 4000}}};
  for (int i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
  plan.solids.push_back({support::turnedBox({2000, 2000}, 400, 400, 17), std::nullopt, false, 0});
  const Built built(plan);
  double straight = 0, round = 0;
  for (const Region::Piece& p : built.region.pieces()) {
    if (p.arc) {
      round += p.angle * built.region.radius();
    } else {
      straight += distance(p.from, p.to);
    }
  }
  EXPECT_NEAR(straight, 4 * (4000 - 610) + 4 * 400, 0.01);
  EXPECT_NEAR(round, 2 * std::numbers::pi * 305, 0.01);
  EXPECT_EQ(built.region.parts(), 1);
}

}  // namespace
}  // namespace stopwalk::floor
