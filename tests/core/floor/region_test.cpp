#include "core/floor/region.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

#include "core/geometry/lattice.h"
#include "tests/support/rough_plan.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::floor {
namespace {

using geometry::Polygon;
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

// Under what overhangs, too: as far over the edge as counts as on it, it is a long way down to the edge.
TEST_P(RegionOfRoughPlans, PlacesOnTheBoundaryAreOfItsPart) {
  Numbers n(static_cast<unsigned>(GetParam()));
  const Built built(support::roughPlan(n, 12));
  const double over = 0.9 * kRounding_mm;
  for (const Region::Piece& piece : built.region.pieces()) {
    const Point middle = 0.5 * (built.region.beginOf(piece) + built.region.endOf(piece));
    const Point centre = built.mesh.corners()[piece.corner];
    const Point at = piece.arc ? centre + (built.region.radius() - over) * geometry::unit(middle - centre)
                               : middle - over * geometry::leftOf(geometry::unit(piece.to - piece.from));
    EXPECT_EQ(built.region.partAt(geometry::onLattice(at)), piece.part) << at.x << "," << at.y;
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

// A comb whose teeth point down, each over a step of the bench below it, with twice the radius and `more`
// between them: nothing else of the comb faces down.
struct CombOverBench {
  Plan plan;
  std::vector<Point> round;    // places on the floor about both
  std::vector<Point> between;  // and between a tooth and the next

  CombOverBench(Numbers& n, const std::vector<double>& more) {
    const double pitch = 1500, width = pitch * static_cast<double>(more.size());
    Polygon comb, bench = {{width, -3000}, {0, -3000}};
    for (std::size_t i = 0; i < more.size(); ++i) {
      const double x = pitch * static_cast<double>(i), tip = n.in(-300, 300);
      const double top = tip - 2 * builtAt(305) - more[i];
      if (i > 0) comb.push_back({x, 1200});
      if (i > 0) between.push_back({x, std::max(bench.back().y, top) + 350});
      comb.insert(comb.end(), {{x + 700, tip}, {x + 800, tip + n.below(2) * n.in(0, 200)}});
      bench.insert(bench.end(), {{x, top}, {x + pitch, top}});
    }
    comb.insert(comb.end(), {{width, 1500}, {0, 1500}});
    round = {{-1000, 0}, {width + 1000, 0}, {700, 2500}, {700, -4000}};
    plan.rooms = {{{-2000, -5000}, {width + 2000, -5000}, {width + 2000, 3500}, {-2000, 3500}}};
    for (int i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
    for (const Polygon& outline : {comb, bench}) plan.solids.push_back({outline, std::nullopt, false, 0});
  }

  void mirror() {
    for (Polygon* outline :
         {&plan.rooms[0], &plan.solids[0].outline, &plan.solids[1].outline, &round, &between})
      for (Point& p : *outline) p.x = -p.x;
    for (Segment& wall : plan.walls) wall = {{-wall.a.x, wall.a.y}, {-wall.b.x, wall.b.y}};
  }
};

// Open is what is twice the radius wide, or less by a touch.
TEST(Region, IsOnePartAboutWhatAllButTouches) {
  const std::vector<double> open = {-1e-6, -1e-7, 0, 1e-7, 1e-6, 2e-6, 1e-5, 1e-4}, shut = {-1e-4, -1e-5};
  for (unsigned seed = 0; seed < 500; ++seed) {
    Numbers n(seed);
    std::vector<double> more;
    for (int tooth = n.below(3); tooth >= 0; --tooth)
      more.push_back(n.below(4) ? open[n.below(8)] : shut[n.below(2)]);
    CombOverBench shop(n, more);
    if (n.below(2)) shop.mirror();
    const double deg = 90 * n.below(4) + n.below(2) * n.in(-1, 1);
    const Built built(support::movedPlan(shop.plan, deg, {0, 0}));
    const auto partAt = [&](Point p) {
      const Point at = built.mesh.local(geometry::turned(p, deg));
      EXPECT_TRUE(built.region.holds(at)) << seed << " at " << p.x << "," << p.y;
      return built.region.partAt(at);
    };
    const Region::Index outside = partAt(shop.round[0]);
    for (const Point p : shop.round) EXPECT_EQ(partAt(p), outside) << seed << " at " << p.x << "," << p.y;
    const auto isOpen = [](double gap) { return gap > -2e-6; };
    for (std::size_t i = 0; i < shop.between.size(); ++i) {
      const auto here = more.begin() + static_cast<std::ptrdiff_t>(i) + 1;
      const bool joined = std::all_of(more.begin(), here, isOpen) || std::all_of(here, more.end(), isOpen);
      EXPECT_EQ(partAt(shop.between[i]) == outside, joined) << seed << " between " << i;
    }
  }
}

// A solid that all but touches what encloses it.
TEST(Region, WithinARingIsAPartOfItsOwn) {
  Plan plan;
  plan.rooms = {{{-6000, -6000}, {6000, -6000}, {6000, 6000}, {-6000, 6000}}};
  const Polygon ring = {{-3000, -3000}, {3000, -3000}, {3000, 3000}, {-3000, 3000}};
  for (const Polygon& round : {plan.rooms[0], ring})
    for (int i = 0; i < 4; ++i) plan.walls.push_back({round[i], round[(i + 1) % 4]});
  for (const double more : {-2e-6, -1e-6, -1e-7, 0.0, 1e-7, 1e-6, 2e-6, 1e-5, 1e-4}) {
    const double low = -3000 + 2 * builtAt(305) + more;
    plan.solids = {{{{-1000, 0}, {0, low}, {1000, 0}, {0, 1000}}, std::nullopt, false, 0}};
    for (const double deg : {0, 90, 180, 270}) {
      const Built built(support::movedPlan(plan, deg, {0, 0}));
      const auto partAt = [&](Point p) { return built.region.partAt(geometry::turned(p, deg)); };
      for (const Point p : {Point{2000, 0}, {0, 2000}, {-1000, -2500}}) {
        EXPECT_EQ(partAt(p), partAt({-2000, 0})) << more << " at " << p.x << "," << p.y << " turned " << deg;
        EXPECT_NE(partAt(p), partAt({-4000, 0})) << more << " at " << p.x << "," << p.y << " turned " << deg;
      }
      EXPECT_EQ(built.region.parts(), 2);
    }
  }
}

// Between two boxes that stand the radius from the walls beside them, so that of the arc round a corner no
// more is left than rounding.
TEST(Region, HasPartsAsLoopsGoOnPastTheShortestArcs) {
  for (const double more : {-2e-6, -1e-6, 0.0, 1e-6, 2e-6}) {
    const double gap = builtAt(305) + more;
    Plan plan;
    plan.rooms = {{{0, 0}, {4000, 0}, {4000, 2000}, {0, 2000}}};
    for (int i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
    for (const double x : {0, 3500})
      plan.solids.push_back(
          {{{x, gap}, {x + 500, gap}, {x + 500, 2000 - gap}, {x, 2000 - gap}}, std::nullopt, false, 0});
    for (const double deg : {0, 90, 180, 270}) {
      const Built built(support::movedPlan(plan, deg, {0, 0}));
      const auto& pieces = built.region.pieces();
      EXPECT_EQ(built.region.parts(), 1) << more << " turned " << deg;
      for (std::size_t i = 0; i < pieces.size(); ++i)
        EXPECT_NE(pieces[i].next, i) << more << " turned " << deg;
    }
  }
}

}  // namespace
}  // namespace stopwalk::floor
