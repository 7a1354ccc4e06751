#include "core/floor/narrow_place.h"

#include <gtest/gtest.h>

#include "core/geometry/segment.h"
#include "tests/support/rough_plan.h"

namespace stopwalk::floor {
namespace {

Polygon box(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

Plan hallWith(std::vector<Polygon> solids) {
  Plan plan;
  plan.rooms = {box(0, 0, 10000, 6000)};
  for (std::size_t i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
  for (Polygon& p : solids) plan.solids.push_back({p, std::nullopt, true, 0});
  return plan;
}

std::optional<Segment> narrowest(const Plan& plan, Point from, Point to) {
  const Walk walk = Walks(plan).between(from, to);
  EXPECT_TRUE(walk.found());
  return NarrowPlaces(plan).along(walk.path);
}

double widthOf(const std::optional<Segment>& s) {
  return s ? distance(s->a, s->b) : 0;
}

TEST(NarrowPlaces, AGapBetweenTwoMachinesIsAsWideAsTheyAreApart) {
  const Plan plan = hallWith({box(4000, 0, 5000, 2500), box(4400, 3300, 5200, 6000)});
  const auto place = narrowest(plan, {1000, 3000}, {9000, 3000});
  ASSERT_TRUE(place);
  EXPECT_NEAR(widthOf(place), 800, 1e-6);
  EXPECT_GE(place->a.x, 4400);
  EXPECT_LE(place->a.x, 5000);
}

TEST(NarrowPlaces, BetweenCornersItRunsFromCornerToCorner) {
  const Plan plan = hallWith({box(4000, 0, 5000, 2500), box(5300, 2900, 6300, 6000)});
  EXPECT_FALSE(Walks(plan).between(Point{1000, 3000}, Point{9000, 3000}).found());
  const Plan wider = hallWith({box(4000, 0, 5000, 2500), box(5360, 2980, 6300, 6000)});
  const auto place = narrowest(wider, {1000, 4500}, {9000, 1000});
  ASSERT_TRUE(place);
  EXPECT_NEAR(widthOf(place), 600, 1e-6);  // 360 by 480
}

TEST(NarrowPlaces, WhereTwoPeoplePassThereIsNone) {
  const Plan plan = hallWith({box(4000, 0, 5000, 2000), box(4000, 2000 + kTwoBodies_mm, 5000, 6000)});
  EXPECT_FALSE(narrowest(plan, {1000, 3000}, {9000, 3000}));
  EXPECT_TRUE(NarrowPlaces(plan).along(std::vector<Point>{{1000, 2500}, {9000, 2500}}, kTwoBodies_mm + 1));
}

TEST(NarrowPlaces, APassageThatIsNotWalkedThroughDoesNotCount) {
  // The gap of 700 mm lies behind the one who walks.
  const Plan plan = hallWith({box(2000, 0, 3000, 2500), box(2000, 3200, 3000, 6000)});
  EXPECT_FALSE(narrowest(plan, {5000, 3000}, {9000, 3000}));
}

TEST(NarrowPlaces, AWalkThatBeginsBetweenTwoThingsBeginsAtANarrowPlace) {
  const Plan plan = hallWith({box(2000, 1000, 6000, 2000), box(2000, 2750, 6000, 3500)});
  const auto place = narrowest(plan, {4000, 2400}, {9000, 2400});
  EXPECT_NEAR(widthOf(place), 750, 1e-6);
}

// Of a walk that is only narrow, the narrowest place is what stopped the next wider clearance.
TEST(NarrowPlaces, OfANarrowWalkItIsItsClearWidthToTwoMillimetres) {
  int narrow = 0;
  for (unsigned seed = 0; seed < 2000; ++seed) {
    support::Numbers n(seed);
    const Plan plan = support::roughPlan(n, 14);
    const Walks walks(plan);
    const NarrowPlaces places(plan);
    for (int i = 0; i < 10; ++i) {
      const Walk walk =
          walks.between(Point{n.in(0, 8000), n.in(0, 7000)}, Point{n.in(0, 8000), n.in(0, 7000)});
      const auto place = walk.path.size() < 2 ? std::nullopt : places.along(walk.path);
      if (place) {
        EXPECT_LT(distance(place->a, place->b), kTwoBodies_mm);
        EXPECT_TRUE(FloorIndex(plan).onFloor(geometry::at(*place, 0.5)));
      }
      if (walk.status != WalkStatus::Narrow) continue;
      ++narrow;
      SCOPED_TRACE("seed " + std::to_string(seed) + ", walk " + std::to_string(i));
      ASSERT_TRUE(place);
      EXPECT_LT(distance(place->a, place->b), 2 * (walk.clearance_mm + 1) + 0.01);
    }
  }
  EXPECT_GT(narrow, 20);
}

}  // namespace
}  // namespace stopwalk::floor
