#include <gtest/gtest.h>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "tests/support/draw.h"
#include "tests/support/random.h"

// Plans built from drawn doors, walked through: what is open is open for a walk, what is shut is shut.
namespace stopwalk::floor {
namespace {

using namespace draw;
using layout::Layout;

struct View {
  double turn;
  Point by;
  Point operator()(Point p) const { return geometry::turned(p, turn) + by; }
};
const View kViews[] = {{0, {0, 0}}, {90, {0, 0}}, {37.3, {1e6, -1e6}}, {213.1, {-1e6, -1e6}}};

// The walk in every view; its length in metres, 0 for none.
double walked(const Layout& l, Point from, Point to, double clearance) {
  double first = -1;
  for (const View& view : kViews) {
    const Walks walks(buildPlan(carried(l, view.turn, view.by), Hours::Open), clearance);
    const Walk walk = walks.between(view(from), view(to));
    const double length = walk.status == WalkStatus::Walk ? walk.length_mm / 1000 : 0;
    if (first < 0) first = length;
    EXPECT_NEAR(length, first, 1e-6) << view.turn;
  }
  return first;
}

Layout twoRooms(double wall) {
  Layout l;
  l.rooms = {room("a", box(-5000, -4000, 0, 4000)), room("b", box(wall, -4000, 6000, 4000))};
  l.doors = {door("d", "a", "b", {0, 450}, 900)};
  return l;
}

// Closed form, check value (derived): wall x 0 to 0.1 with opening y 0 to 0.9, from (-3, -2) to (4, -2).
TEST(DoorWalks, ThickWallAgreesWithTheClosedForm) {
  EXPECT_NEAR(walked(twoRooms(100), {-3000, -2000}, {4000, -2000}, 0), 8.088473, 1e-5);
  EXPECT_NEAR(walked(twoRooms(100), {-3000, -2000}, {4000, -2000}, 305), 8.435863, 1e-5);
}

TEST(DoorWalks, WallOfNoThicknessAndRoomsThatOverlapALittle) {
  // Round one point at clearance 0: straight to it and on.
  const double expected = (std::hypot(3000, 2000) + std::hypot(4000, 2000)) / 1000;
  EXPECT_NEAR(walked(twoRooms(0), {-3000, -2000}, {4000, -2000}, 0), expected, 1e-9);
  for (double overlap : {0.3, 1.0})
    EXPECT_NEAR(walked(twoRooms(-overlap), {-3000, -2000}, {4000, -2000}, 0), expected, 0.002);
  EXPECT_EQ(walked(twoRooms(1), {-3000, -2000}, {4000, -2000}, 451), 0);
}

TEST(DoorWalks, WidthIsClearToTheLastMillimetre) {
  for (double wall : {0.0, 1.0, 250.0, 1000.0}) {
    Layout l = twoRooms(wall);
    l.doors[0].width = 610;
    EXPECT_GT(walked(l, {-3000, 450}, {4000, 450}, 305), 6.99) << wall;
    l.doors[0].width = 609.99;
    EXPECT_EQ(walked(l, {-3000, 450}, {4000, 450}, 305), 0) << wall;
  }
}

// An arc that begins on the very edge of the mesh that runs out from its corner was followed on the wrong
// side of that edge, if rounding put its beginning there, and was then never met where it is: no way, or one
// round.
TEST(DoorWalks, RoundBothPostsIsFoundInEveryViewAndAtEveryClearanceThatTheDoorLeaves) {
  support::Random random(20);
  for (int i = 0; i < 60; ++i) {
    Layout l = twoRooms(random.between(60, 400));
    l.doors[0].width = random.between(590, 1000);
    const View view{random.between(0, 360), {random.between(-1e5, 1e5), random.between(-1e5, 1e5)}};
    const Plan turned = buildPlan(carried(l, view.turn, view.by), Hours::Open);
    const Point from{-3000, -1500}, to{4000, 2500};
    double last = 0;
    for (double clearance = 150; clearance < l.doors[0].width / 2; clearance += random.between(1, 9)) {
      const Walk walk = Walks(turned, clearance).between(view(from), view(to));
      const double steady = Walks(buildPlan(l, Hours::Open), clearance).between(from, to).length_mm;
      ASSERT_EQ(walk.status, WalkStatus::Walk) << i << " at " << clearance;
      ASSERT_NEAR(walk.length_mm, steady, 0.002) << i << " at " << clearance;
      ASSERT_GE(walk.length_mm, last - 0.001) << i << " at " << clearance;
      last = walk.length_mm;
    }
  }
}

TEST(DoorWalks, DoorsSideBySideAreOneWay) {
  for (double wall : {0.0, 200.0}) {
    Layout l = twoRooms(wall);
    l.doors = {door("d", "a", "b", {0, 200}, 400), door("e", "a", "b", {0, 600}, 400)};
    EXPECT_NEAR(walked(l, {-3000, 400}, {4000, 400}, 305), 7, 1e-9) << wall;
    l.doors[1].at.y = 500;
    EXPECT_NEAR(walked(l, {-3000, 350}, {4000, 350}, 305), 7, 1e-9) << wall;
    l.doors[1].at.y = 601;  // a post of 1 mm between
    EXPECT_EQ(walked(l, {-3000, 400}, {4000, 400}, 305), 0) << wall;
  }
}

TEST(DoorWalks, ObliqueAndBentWallsAreOpenWhereTheyAreMet) {
  Layout l = twoRooms(0);
  l.rooms[1].outline = {{100, -4000}, {6000, -4000}, {6000, 4000}, {900, 4000}};
  EXPECT_NEAR(walked(l, {-3000, 450}, {4000, 450}, 305), 7, 1e-9);
  l.rooms[1].outline = {{100, -4000}, {6000, -4000}, {6000, 4000}, {700, 4000},
                        {700, 700},   {400, 700},    {250, 200},   {100, 200}};
  // Its steps stand, their ends (0.25, 0.2) and (0.4, 0.7) being 0.522 m apart.
  EXPECT_NEAR(walked(l, {-3000, 450}, {4000, 450}, 250), 7, 1e-9);
  EXPECT_EQ(walked(l, {-3000, 450}, {4000, 450}, 262), 0);
}

}  // namespace
}  // namespace stopwalk::floor
