#include "core/floor/walks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace stopwalk::floor {
namespace {

Polygon box(double x0, double y0, double x1, double y1) { return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}; }

Plan roomWith(Polygon room, std::vector<Polygon> solids) {
  Plan plan;
  for (std::size_t i = 0; i < room.size(); ++i) plan.walls.push_back({room[i], room[(i + 1) % room.size()]});
  plan.rooms = {room};
  for (Polygon& p : solids) plan.solids.push_back({p, std::nullopt, true, 0});
  return plan;
}

const Polygon kHall = box(-20000, -20000, 20000, 20000);

struct Case {
  const char* name;
  std::vector<Polygon> solids;
  Point from, to;
  double at_zero, at_305;
};

class WalkPastCorners : public testing::TestWithParam<Case> {};

// Lengths derived in closed form: tangents and an arc about each corner passed.
TEST_P(WalkPastCorners, AgreesWithTheClosedForm) {
  const Case& c = GetParam();
  const Plan plan = roomWith(kHall, c.solids);
  EXPECT_NEAR(Walks(plan, 0).between(c.from, c.to).length_mm, c.at_zero, 0.001);
  EXPECT_NEAR(Walks(plan, 305).between(c.from, c.to).length_mm, c.at_305, 0.001);
}

INSTANTIATE_TEST_SUITE_P(
    Derived, WalkPastCorners,
    testing::Values(Case{"free", {}, {0, 0}, {3000, 4000}, 5000, 5000},
                    Case{"block", {box(-1000, -500, 1000, 500)}, {-3000, 0}, {3000, 0}, 6123.106, 6317.749},
                    Case{"quadrant", {box(0, -20000, 20000, 0)}, {4000, 1000}, {-1000, -4000}, 8246.211, 8598.439},
                    Case{"machine", {box(0, 0, 1200, 800)}, {-1000, 200}, {2500, 500}, 3612.643, 3864.325},
                    Case{"jamb", {box(0, -20000, 100, 0), box(0, 900, 100, 20000)}, {-3000, -2000}, {4000, -2000}, 8088.473, 8435.863}),
    [](const auto& i) { return std::string(i.param.name); });

// Two halves of a hall, joined by a gap between two solids.
Plan hallWithGap(double gap) {
  return roomWith(box(0, 0, 10000, 6000), {box(4000, 0, 5000, 3000), box(4000, 3000 + gap, 5000, 6000)});
}

TEST(Walks, TurnAHalfTurnRoundTheEndOfAWall) {
  // A wall of no thickness from the side into the hall: round its end, both ways.
  Plan plan = roomWith(kHall, {});
  plan.walls.push_back({{0, -20000}, {0, 0}});
  const double d = std::hypot(5000, 1000), free_side = 2 * std::numbers::pi - 2 * std::atan2(1000.0, 5000.0);
  // Closed form for one corner (derived): tangents from both sides, and the rest of the turn on the arc.
  const double expected = 2 * std::sqrt(d * d - 305 * 305) + 305 * (free_side - 2 * std::acos(305 / d));
  const Walks walks(plan);
  EXPECT_NEAR(walks.between({1000, -5000}, {-1000, -5000}).length_mm, expected, 0.001);
  EXPECT_NEAR(walks.between({-1000, -5000}, {1000, -5000}).length_mm, expected, 0.001);
}

TEST(Walks, AlongAnEdgeThatOtherLinesCross) {
  // The edge is turned, and lines that block nothing cross it near its corner: rounding bends it there by a hair.
  for (double deg = 0; deg < 90; deg += 1.7) {
    Plan plan = roomWith(kHall, {});
    Polygon machine = box(-2000, -500, 2000, 500);
    for (Point& p : machine) p = geometry::turned(p, deg);
    plan.solids.push_back({machine, std::nullopt, true, 0});
    const auto at = [&](Point p) { return geometry::turned(p, deg); };
    for (double x : {-1999.99, -1980.0, -1700.0, 3.0, 1999.0}) {
      const Segment across{at({x, 0}), at({x + 7, 3000})};
      plan.passages.push_back({0, across, across});
    }
    const double length = Walks(plan).between(at({-6000, 0}), at({6000, 0})).length_mm;
    const double leg = std::sqrt(4000.0 * 4000 + 500 * 500 - 305 * 305);
    const double turn = std::asin(305 / std::hypot(4000, 500)) + std::atan2(500.0, 4000.0);
    EXPECT_NEAR(length, 4000 + 2 * (leg + 305 * turn), 0.01) << deg;
  }
}

TEST(NarrowWay, GapOfTwiceTheClearanceIsOpen) {
  const Walk walk = Walks(hallWithGap(610)).between({1000, 3305}, {9000, 3305});
  EXPECT_EQ(walk.status, WalkStatus::Walk);
  EXPECT_NEAR(walk.length_mm, 8000, 1e-3);
  EXPECT_EQ(walk.clearance_mm, 305);
}

TEST(NarrowWay, GapAThousandthOfAMillimetreLessIsOpen) {
  EXPECT_EQ(Walks(hallWithGap(609.999)).between({1000, 3300}, {9000, 3300}).status, WalkStatus::Walk);
  EXPECT_EQ(Walks(hallWithGap(609.9989)).between({1000, 3300}, {9000, 3300}).status, WalkStatus::Narrow);
}

TEST(NarrowWay, UsesTheWidestWholeMillimetre) {
  for (double gap : {560.0, 561.0, 577.0, 590.4, 609.0}) {
    const Walk walk = Walks(hallWithGap(gap)).between({1000, 3000}, {9000, 3000});
    EXPECT_EQ(walk.status, WalkStatus::Narrow) << gap;
    EXPECT_EQ(walk.clearance_mm, std::floor(gap / 2)) << gap;
  }
}

TEST(NarrowWay, GapNarrowerThanABodyIsNoWay) {
  const Walk walk = Walks(hallWithGap(559)).between({1000, 3000}, {9000, 3000});
  EXPECT_EQ(walk.status, WalkStatus::Unreachable);
  EXPECT_TRUE(std::isinf(walk.length_mm));
}

TEST(NarrowWay, BelowTheBodyThereIsNoFallback) {
  EXPECT_EQ(Walks(hallWithGap(500), 260).between({1000, 3000}, {9000, 3000}).status, WalkStatus::Unreachable);
  EXPECT_EQ(Walks(hallWithGap(520), 260).between({1000, 3000}, {9000, 3000}).status, WalkStatus::Walk);
}

TEST(NarrowWay, WiderThanMeasuringFallsBackBelowIt) {
  const Walk walk = Walks(hallWithGap(700), 400).between({1000, 3350}, {9000, 3350});
  EXPECT_EQ(walk.status, WalkStatus::Narrow);
  EXPECT_EQ(walk.clearance_mm, 304);
}

TEST(Step, LeadsStraightOutAndCounts) {
  // 300 mm from the wall: 5 mm out, along, and at the end none, since that place is clear of the wall.
  const Walk walk = Walks(roomWith(box(0, 0, 10000, 6000), {})).between({2000, 300}, {5000, 305});
  EXPECT_NEAR(walk.length_mm, 3005, 1e-3);
}

TEST(Step, IsNotLongerThanAMetre) {
  // A dead end 300 wide: its far end is more than a step from where a body fits.
  const Plan plan = roomWith({{0, 0}, {4000, 0}, {4000, 4000}, {2300, 4000}, {2300, 5600}, {2000, 5600}, {2000, 4000}, {0, 4000}}, {});
  EXPECT_EQ(Walks(plan).between({2150, 5500}, {1000, 1000}).status, WalkStatus::Unreachable);
  EXPECT_EQ(Walks(plan).between({2150, 4500}, {1000, 1000}).status, WalkStatus::Walk);
}

TEST(Step, DoesNotLeadThroughAWall) {
  // Beside a wall of no thickness: the other side is 300 mm away, but not seen.
  Plan plan = roomWith(box(0, 0, 10000, 6000), {});
  plan.walls.push_back({{5000, 0}, {5000, 5000}});
  const Walk walk = Walks(plan).between({4950, 1000}, {5400, 1000});
  EXPECT_EQ(walk.status, WalkStatus::Walk);
  EXPECT_GT(walk.length_mm, 8000);
}

TEST(Step, DoesNotLeadThroughAGapThatABodyDoesNotPass) {
  // In a corridor 580 wide, before a gap in its wall of no thickness: the room beyond is a step away.
  const auto beyond = [](double gap) {
    Plan plan = roomWith(box(0, 0, 6000, 3200), {});
    plan.walls.push_back({{580, 0}, {580, 1600 - gap / 2}});
    plan.walls.push_back({{580, 1600 + gap / 2}, {580, 3200}});
    return Walks(plan).between({290, 1600}, {4000, 1500}).status;
  };
  EXPECT_EQ(beyond(400), WalkStatus::Unreachable);
  EXPECT_EQ(beyond(600), WalkStatus::Walk);
}

TEST(Step, FromTheVeryCornerLeadsTheWayTheWalkGoes) {
  // The straight line from the corner itself is a way: every point of the arc is one step away.
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {box(3000, 3000, 5000, 4000)}));
  for (const Point to : {Point{6000, 1000}, {5800, 2900}, {5100, 1000}})
    EXPECT_NEAR(walks.between({5000, 3000}, to).length_mm, distance({5000, 3000}, to), 0.01);
}

TEST(Step, LeadsOutOfANicheTooNarrowToTurnIn) {
  const Plan plan =
      roomWith({{0, 0}, {6000, 0}, {6000, 2000}, {3580, 2000}, {3580, 2900}, {3000, 2900}, {3000, 2000}, {0, 2000}}, {});
  EXPECT_EQ(Walks(plan).between({3290, 2300}, {1000, 1000}).status, WalkStatus::Walk);
}

TEST(Step, DoesNotSlipBetweenAMachineAndTheWallItStandsThrough) {
  // The station is on the machine's front edge; along that edge a wall of no thickness comes out of the machine.
  Plan plan = roomWith(box(0, 0, 10000, 6000), {box(3000, 2000, 7000, 3000)});
  plan.walls.push_back({{5000, 0}, {5000, 6000}});
  EXPECT_EQ(Walks(plan).between({4800, 2000}, {8000, 1000}).status, WalkStatus::Unreachable);
  EXPECT_EQ(Walks(plan).between({4800, 2000}, {2000, 1000}).status, WalkStatus::Walk);
}

TEST(Step, LeadsToANotchWhoseArcsAreNearerWhereTheyAreHidden) {
  // Between the tips of two wedges: the arcs round them meet straight ahead, and their far ends, behind the wedges, are nearer.
  const Polygon lower = {{-600, -50}, {-600, -718}, {200, -50}}, upper = {{-600, 50}, {200, 50}, {-600, 718}};
  const Plan plan = roomWith(box(-600, -1500, 3000, 1500), {lower, upper});
  EXPECT_NEAR(Walks(plan, 305).between(Point{0, 0}, Point{2000, 0}).length_mm, 2000, 0.001);
}

TEST(Bar, NearestPointOfItsLineCounts) {
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {}));
  const Place bar{{}, {{{6000, 2000}, {6000, 4000}}}};
  EXPECT_NEAR(walks.between(Place{{{1000, 3000}}, {}}, bar).length_mm, 5000, 1e-3);
  EXPECT_NEAR(walks.between(Place{{{3000, 6000 - 305}}, {}}, bar).length_mm, std::hypot(3000, 1695), 1e-3);
  EXPECT_NEAR(walks.between(bar, Place{{{1000, 3000}}, {}}).length_mm, 5000, 1e-3);
}

// Round one corner of a machine, along its side, and straight on to a bar at right angles: the last piece is both
// the end of the turn and the shortest way to the bar, which rounding puts now on the one, now on the other side.
TEST(Bar, AtRightAnglesToTheSideOfAMachineIsFoundAlongIt) {
  const Plan plan = roomWith(box(0, 0, 8000, 6000), {box(2500, 750, 5000, 2750)});
  const Walks walks(plan, 305, Paths::LengthsOnly);
  constexpr double r = 305;
  const Point corner{2500, 2750};
  std::mt19937 random(20260326);
  std::uniform_real_distribution<double> across(2210, 2480), up(3500, 5500), bar_y(310, 700);
  for (int i = 0; i < 4000; ++i) {
    const Point from{across(random), up(random)};
    const double y = bar_y(random), d = distance(from, corner);
    const double begins = std::atan2(from.y - corner.y, from.x - corner.x) + std::acos(r / d);
    if (begins > std::numbers::pi) continue;  // straight past the corner
    const double expected =  // derived: tangent, arc, and the rest straight down
        std::sqrt(d * d - r * r) + r * (std::numbers::pi - begins) + corner.y - y;
    const Place bar{{}, {{{2768.15, y}, {843.943, y}}}};
    EXPECT_NEAR(walks.between({{from}, {}}, bar).length_mm, expected, 0.001) << from.x << "," << from.y << " " << y;
  }
}

TEST(Bar, AlongAMachineIsReachedByAStep) {
  // The bar's line runs 300 mm before a machine's front: 5 mm inside the clearance.
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {box(3000, 3000, 5000, 4000)}));
  const Place bar{{}, {{{3100, 2700}, {4900, 2700}}}};
  EXPECT_NEAR(walks.between(Place{{{4000, 1000}}, {}}, bar).length_mm, 1700, 1e-3);
  EXPECT_NEAR(walks.between(Place{{{1000, 2695}}, {}}, bar).length_mm, 2100 + 5, 1e-3);
}

TEST(Bar, LineThatLeavesTheRegionAndComesBack) {
  // Past a column's corner: its line runs in the region, within the clearance of the corner, and in the region again.
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {box(4800, 3000, 5200, 3400)}));
  for (double y : {2700.0, 2695.0, 2695.0005, 2694.9995}) {
    const Place bar{{}, {{{3000, y}, {7000, y}}}};
    EXPECT_NEAR(walks.between(Place{{{5000, 1000}}, {}}, bar).length_mm, y - 1000, 0.01) << y;
    EXPECT_NEAR(walks.between(Place{{{2000, y}}, {}}, bar).length_mm, 1000, 0.01) << y;
  }
}

TEST(Walks, OffTheFloorIsUnmeasured) {
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {box(3000, 3000, 5000, 4000)}));
  EXPECT_EQ(walks.between({4000, 3500}, {1000, 1000}).status, WalkStatus::Unmeasured);
  EXPECT_EQ(walks.between({1000, 1000}, {-500, 1000}).status, WalkStatus::Unmeasured);
  EXPECT_EQ(walks.between({4000, 3000}, {1000, 1000}).status, WalkStatus::Walk);  // on the outline is on the floor
}

TEST(Parts, AreSharedJustWhereThereIsAWay) {
  const Walks walks(hallWithGap(590));
  const Place left{{{1000, 1000}}, {}}, right{{{9000, 1000}}, {}}, beside_left{{{3990, 1000}}, {}};
  EXPECT_EQ(walks.parts(left, 295), walks.parts(right, 295));
  EXPECT_NE(walks.parts(left, 296), walks.parts(right, 296));
  EXPECT_EQ(walks.parts(left, 296), walks.parts(beside_left, 296));  // by a step
}

TEST(Parts, OfManyPointsAreAllTheirs) {
  const Walks walks(hallWithGap(300));
  const auto both = walks.parts(Place{{{9000, 1000}, {1000, 1000}, {2000, 1000}}, {}}, 305);
  EXPECT_EQ(both.size(), 2u);
  EXPECT_TRUE(std::ranges::is_sorted(both));
  EXPECT_TRUE(walks.parts(Place{{{4500, 1000}}, {}}, 305).empty());  // in a solid
}

TEST(Nearest, EqualsGoToTheFirst) {
  const Walks walks(roomWith(box(0, 0, 10000, 6000), {}));
  const std::vector<Place> both = {{{{8000, 3000}}, {}}, {{{2000, 3000}}, {}}};
  EXPECT_EQ(walks.nearest({5000, 3000}, both).index, 0u);
  const std::vector<Point> from = {{5000, 3000}};
  EXPECT_EQ(walks.nearestForAll(from, both)[0].index, 0u);
}

TEST(Nearest, ANarrowWayMayBeNearer) {
  const Walks walks(hallWithGap(600));
  const std::vector<Place> to = {{{{400, 400}}, {}}, {{{5400, 3300}}, {}}};
  const Nearest n = walks.nearest({3600, 3300}, to);
  EXPECT_EQ(n.index, 1u);
  EXPECT_EQ(n.walk.status, WalkStatus::Narrow);
  const std::vector<Point> from = {{3600, 3300}};
  EXPECT_EQ(walks.nearestForAll(from, to)[0].index, 1u);
}

// Two people on either side of a wall of no thickness, both nearer to it than the clearance, walk round its end: half a
// turn to the last bit, by rounding a hair more or less.
TEST(Walks, HalfATurnRoundAThinWallIsNeitherMissedNorLost) {
  for (int i = 0; i < 400; ++i) {
    const double turn = 0.9 * i, below_a = 300 + 7 * (i % 50), below_b = 300 + 11 * (i % 37);
    const auto placed = [&](Point p) { return geometry::turned(p, turn) + Point{i * 31.7, -i * 17.3}; };
    Polygon room = box(-5000, -5000, 5000, 5000);
    for (Point& p : room) p = placed(p);
    Plan plan = roomWith(room, {});
    plan.walls.push_back({placed({0, -5000}), placed({0, 0})});
    const Point a = placed({-250, -below_a}), b = placed({250, -below_b});
    const double expected = 2 * 55 + below_a + below_b + std::numbers::pi * 305;
    const Walks walks(plan);
    const std::vector<Point> from = {a};
    const std::vector<Place> to = {{{b}, {}}};
    for (const Walk& walk : {walks.between(a, b), walks.between(b, a), walks.nearestForAll(from, to)[0].walk}) {
      EXPECT_EQ(walk.status, WalkStatus::Walk) << turn;
      EXPECT_NEAR(walk.length_mm, expected, 0.001) << turn;
    }
  }
}

}  // namespace
}  // namespace stopwalk::floor
