#include "core/floor/plan.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/geometry/segment.h"
#include "tests/support/draw.h"

namespace stopwalk::floor {
namespace {

using namespace draw;
using geometry::distance;
using geometry::crossProperly;
using layout::Layout;
using layout::Locked;

// Two rooms, 200 mm of wall between them at x = 9000 to 9200.
Layout thickWall() {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 9000, 7000)), room("metal", box(9200, 0, 15000, 7000))};
  return l;
}

Layout thinWall() {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 9000, 7000)), room("metal", box(9000, 0, 15000, 7000))};
  return l;
}

bool isBlocked(const Plan& plan, Point a, Point b) {
  return std::any_of(plan.walls.begin(), plan.walls.end(),
                     [&](const Segment& w) { return crossProperly({a, b}, w, 1e-9); });
}

double wallLength(const Plan& plan) {
  double sum = 0;
  for (const Segment& w : plan.walls) sum += distance(w.a, w.b);
  return sum;
}

std::vector<std::string> subjects(const Plan& plan) {
  std::vector<std::string> ids;
  for (const Fault& f : plan.faults) ids.push_back(f.subject);
  return ids;
}

using Ids = std::vector<std::string>;

bool says(const Plan& plan, const std::string& words) {
  return std::any_of(plan.faults.begin(), plan.faults.end(),
                     [&](const Fault& f) { return f.text.find(words) != std::string::npos; });
}

TEST(Plan, DoorThroughThickWallHasJambs) {
  Layout l = thickWall();
  l.doors = {door("d1", "wood", "metal", {9010, 3500}, 1800)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_TRUE(plan.faults.empty());
  ASSERT_EQ(plan.passages.size(), 1u);
  EXPECT_EQ(plan.passages[0].first, (Segment{{9000, 4400}, {9000, 2600}}));
  EXPECT_EQ(plan.passages[0].second, (Segment{{9200, 4400}, {9200, 2600}}));
  EXPECT_FALSE(isBlocked(plan, {8000, 3500}, {10000, 3501}));
  EXPECT_TRUE(isBlocked(plan, {8000, 4401}, {10000, 4401}));
  EXPECT_TRUE(isBlocked(plan, {9100, 3500}, {9100, 5000}));  // a jamb
  EXPECT_DOUBLE_EQ(wallLength(plan), 2 * 16000.0 + 2 * 12800 - 2 * 1800 + 2 * 200);
}

TEST(Plan, DoorInWallOfNoThicknessOpensBothOutlines) {
  Layout l = thinWall();
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1800)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_TRUE(plan.faults.empty());
  EXPECT_FALSE(isBlocked(plan, {8000, 3500}, {10000, 3501}));
  EXPECT_TRUE(isBlocked(plan, {8000, 2500}, {10000, 2501}));
  EXPECT_DOUBLE_EQ(wallLength(plan), 32000.0 + 26000 - 2 * 1800);
}

TEST(Plan, RoomsMayOverlapByOneMillimetreAtADoor) {
  for (const double overlap : {0.0004, 0.5, 1.0}) {
    Layout l = thinWall();
    l.rooms[1].outline = box(9000 - overlap, 0, 15000, 7000);
    l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1800)};
    const Plan plan = buildPlan(carried(l, 31, {1e6, -1e6}), Hours::Open);
    EXPECT_EQ(subjects(plan), Ids{}) << overlap;
    EXPECT_EQ(plan.passages.size(), 1u);
  }
  Layout l = thinWall();
  l.rooms[1].outline = box(8998.9, 0, 15000, 7000);
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(subjects(plan), Ids{"metal"});
  EXPECT_TRUE(says(plan, "overlaps room wood"));
}

TEST(Plan, HoursDecideWhichDoorsAreOpen) {
  Layout l = thickWall();
  l.doors = {door("never", "wood", "metal", {9000, 1000}, 900), door("late", "wood", "metal", {9000, 3000}, 900, Locked::AfterHours),
             door("always", "wood", "metal", {9000, 5000}, 900, Locked::Always), door("out", "wood", "outside", {0, 3000}, 900)};
  const Plan open = buildPlan(l, Hours::Open), after = buildPlan(l, Hours::After);
  EXPECT_EQ(open.passages.size(), 2u);
  EXPECT_EQ(after.passages.size(), 1u);
  EXPECT_FALSE(isBlocked(open, {8000, 3000}, {10000, 3001}));
  EXPECT_TRUE(isBlocked(after, {8000, 3000}, {10000, 3001}));
  EXPECT_TRUE(isBlocked(open, {8000, 5000}, {10000, 5001}));
  EXPECT_TRUE(isBlocked(open, {-1000, 3000}, {1000, 3001}));
  EXPECT_TRUE(open.faults.empty());
}

TEST(Plan, DoorsSideBySideOrOverlappingShareOneOpening) {
  for (const double second_at : {3000.0, 3400.0, 3900.0}) {
    Layout l = thickWall();
    l.doors = {door("d1", "wood", "metal", {9000, 3000}, 900), door("d2", "wood", "metal", {9000, second_at}, 900)};
    const Plan plan = buildPlan(l, Hours::Open);
    EXPECT_EQ(plan.faults.empty(), second_at == 3900);
    EXPECT_EQ(plan.passages.size(), 2u);
    EXPECT_FALSE(isBlocked(plan, {9100, 2600}, {9100, second_at + 400})) << second_at;
    EXPECT_TRUE(isBlocked(plan, {9100, 2600}, {9100, second_at + 500}));
    EXPECT_TRUE(isBlocked(plan, {9100, 2500}, {9100, second_at + 400}));
  }
}

TEST(Plan, PassageMeetsAnObliqueWall) {
  Layout l = thickWall();
  l.rooms[1].outline = {{9100, 0}, {15000, 0}, {15000, 7000}, {9800, 7000}};
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1400)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_TRUE(plan.faults.empty());
  ASSERT_EQ(plan.passages.size(), 1u);
  EXPECT_NEAR(plan.passages[0].second.a.x, 9100 + 0.1 * 4200, 1e-9);
  EXPECT_NEAR(plan.passages[0].second.b.x, 9100 + 0.1 * 2800, 1e-9);
  EXPECT_FALSE(isBlocked(plan, {8000, 3500}, {10000, 3501}));
}

TEST(Plan, PassageMeetsAWallThatBendsAndSteps) {
  Layout l = thickWall();
  l.rooms[1].outline = {{9200, 0}, {15000, 0}, {15000, 7000}, {9400, 7000}, {9400, 3600}, {9300, 3600}, {9200, 3000}};
  l.doors = {door("d1", "wood", "metal", {9000, 3300}, 1800)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_TRUE(plan.faults.empty());
  EXPECT_EQ(plan.passages.size(), 3u);
  for (double y : {2450.0, 3100.0, 3300.0, 3550.0, 3700.0, 4150.0})
    EXPECT_FALSE(isBlocked(plan, {8000, y}, {10000, y + 0.5})) << y;
  EXPECT_TRUE(isBlocked(plan, {9350, 3500}, {9350, 3700}));  // the step stands
}

TEST(Plan, DoorMayLieAcrossACornerInAStraightWall) {
  Layout l = thinWall();
  l.rooms[0].outline = {{0, 0}, {9000, 0}, {9000, 3500}, {9000, 3500}, {9000, 3500.001}, {9000, 7000}, {0, 7000}};
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1800)};
  for (double turn : {0.0, 33.0, 90.0, 211.0}) {
    const Plan plan = buildPlan(carried(l, turn, {1e6, 1e6}), Hours::Open);
    EXPECT_EQ(subjects(plan), Ids{}) << turn;
    EXPECT_NEAR(wallLength(plan), 32000.0 + 26000 - 2 * 1800, 1e-6);
  }
}

TEST(Plan, MovingAndTurningChangesNothing) {
  Layout l = thickWall();
  l.rooms.push_back(room("store", box(-3000, 0, 0, 7000)));
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1800), door("d2", "store", "wood", {0, 600}, 1000)};
  l.machines = {machine("saw", {3000, 3000}, 900, 700), machine("through-wall", {9100, 6000}, 900, 900)};
  l.machines[0].stations = {station("operator", {0, -700})};
  const Plan still = buildPlan(l, Hours::Open);
  for (double turn : {0.0, 17.0, 90.0, 123.4, 270.0}) {
    const Layout moved = carried(l, turn, {1e6, -1e6});
    const Plan plan = buildPlan(moved, Hours::Open);
    EXPECT_EQ(subjects(plan), subjects(still));
    ASSERT_EQ(plan.walls.size(), still.walls.size());
    for (std::size_t i = 0; i < plan.walls.size(); ++i) {
      const Point a = geometry::turned(still.walls[i].a, turn) + Point{1e6, -1e6};
      EXPECT_LT(distance(a, plan.walls[i].a), 1e-6);
    }
    EXPECT_EQ(plan.passages.size(), still.passages.size());
  }
}

TEST(Plan, WallsEndExactlyAtThePassagesCorners) {
  Layout l = thickWall();
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 1777)};
  const Plan plan = buildPlan(carried(l, 12.3, {12345, 6789}), Hours::Open);
  ASSERT_EQ(plan.passages.size(), 1u);
  const Passage& p = plan.passages[0];
  for (Point corner : outlineOf(p)) {
    const auto ends = std::count_if(plan.walls.begin(), plan.walls.end(),
                                    [&](const Segment& w) { return w.a == corner || w.b == corner; });
    EXPECT_EQ(ends, 2);  // a wall and a jamb
  }
}

}  // namespace
}  // namespace stopwalk::floor
