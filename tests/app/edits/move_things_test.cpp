#include "app/edits/move_things.h"

#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

Layout moved(const Layout& layout, const std::vector<std::string>& ids, Point by) {
  return moveThings(layout, ids, by).after;
}

TEST(MoveThings, MovesAMachineAndWithItWhatIsOnIt) {
  const Layout before = benchShop();
  const Edit edit = moveThings(before, {"saw"}, {100, -50});
  EXPECT_EQ(edit.name, "Move Table saw");
  Layout expected = before;
  expected.machines[0].at = {3100, 2950};
  EXPECT_EQ(edit.after, expected);
}

TEST(MoveThings, MovesWhatIsOnAMachineInTheMachinesFrame) {
  const Layout before = benchShop();
  const Layout after = moved(before, {"saw/helper"}, {100, 20});
  const Thing helper = *findThing(after, "saw/helper");
  EXPECT_EQ(*placeOf(after, helper) - *placeOf(before, helper), (Point{100, 20}));
  EXPECT_EQ(after.machines[0].at, before.machines[0].at);
}

TEST(MoveThings, DoesNotMoveWhatBelongsToAChosenMachineTwice) {
  const Layout before = benchShop();
  EXPECT_EQ(moved(before, {"saw/paddle", "saw", "saw", "saw/helper"}, {7, 8}),
            moved(before, {"saw"}, {7, 8}));
}

TEST(MoveThings, MovesTheCornersOfARoomAndNothingElse) {
  const Layout before = benchShop();
  Layout expected = before;
  for (Point& corner : expected.rooms[1].outline) corner = corner + Point{10, 0};
  EXPECT_EQ(moved(before, {"metal"}, {10, 0}), expected);
}

TEST(MoveThings, MovesThePointerOfANoteAlong) {
  const Layout after = moved(benchShop(), {"n1"}, {1, 2});
  EXPECT_EQ(after.notes[0].at, (Point{5001, 5002}));
  EXPECT_EQ(after.notes[0].points_to, (Point{5201, 6002}));
}

TEST(MoveThings, IgnoresUnknownIdsAndTapeChecks) {
  const Layout before = benchShop();
  for (const char* id : {"", "nothing", "saw/nothing", "t1", "/"})
    EXPECT_EQ(moved(before, {id}, {1, 1}), before) << id;
  EXPECT_EQ(moveThings(before, {"nothing", "saw"}, {1, 1}).name, "Move Table saw");
}

TEST(MoveThings, GoesNotBeyondTenKilometres) {
  const Layout before = benchShop();
  EXPECT_EQ(moved(before, {"saw"}, {1e7, 0}), before);
  EXPECT_EQ(moved(before, {"saw"}, {HUGE_VAL, 0}), before);
}

TEST(MoveThings, NamesSeveralByTheirNumberAndOthersByWhatTheyAre) {
  const Layout shop = benchShop();
  const auto name = [&](const std::vector<std::string>& ids) { return moveThings(shop, ids, {1, 1}).name; };
  EXPECT_EQ(name({"saw", "phone-1", "d1"}), "Move 3 things");
  EXPECT_EQ(name({"d1"}), "Move door d1");
  EXPECT_EQ(name({"phone-1"}), "Move Yard phone");
  EXPECT_EQ(name({"lathe/bar"}), "Move bar of Engine lathe");
  EXPECT_EQ(name({"(underlay)"}), "Move underlay");
  EXPECT_EQ(name({"cut-off"}), "Move device cut-off");
}

TEST(MoveThings, LeavesNoLongRowOfDigits) {
  Layout layout = benchShop();
  for (int i = 0; i < 3; ++i) layout = moved(layout, {"saw"}, {0.1, 0.2});
  EXPECT_EQ(layout.machines[0].at, (Point{3000.3, 3000.6}));
}

TEST(TurnThings, TurnsEachOnItsOwnPlace) {
  const Layout before = benchShop();
  const Edit edit = turnThings(before, {"saw", "cut-off", "lathe/bar"}, -105);
  EXPECT_EQ(edit.name, "Turn 3 things");
  Layout expected = before;
  expected.machines[0].turn = 345;
  expected.devices[0].faces = 255;
  expected.machines[1].devices[0].faces = 165;
  EXPECT_EQ(edit.after, expected);
}

TEST(TurnThings, TurnsARoomAboutTheMiddleOfItsBounds) {
  const Layout after = turnThings(benchShop(), {"wood"}, 90).after;
  EXPECT_EQ(after.rooms[0].outline,
            (geometry::Polygon{{8000, -1000}, {8000, 8000}, {1000, 8000}, {1000, -1000}}));
}

TEST(TurnThings, TurnsAllAboutOnePoint) {
  const Layout before = benchShop();
  const Layout after = turnThings(before, {"lathe", "phone-1", "n1"}, 90, Point{10000, 3000}).after;
  EXPECT_EQ(after.machines[1].at, (Point{10000, 5000}));
  EXPECT_EQ(after.machines[1].turn, 90);
  EXPECT_EQ(after.machines[1].stations, before.machines[1].stations);
  EXPECT_EQ(after.phones[0].at, (Point{10000, -7000}));
  EXPECT_EQ(after.phones[0].faces, 90);
  EXPECT_EQ(after.notes[0].points_to, (Point{7000, -1800}));
}

TEST(TurnThings, TurnsWhatIsOnAMachineAboutThePointOfThePlan) {
  const Layout before = benchShop();
  const Layout after = turnThings(before, {"saw/operator"}, 90, Point{3000, 3000}).after;
  const Thing station = *findThing(after, "saw/operator");
  EXPECT_EQ(placeOf(before, station), (Point{3700, 3000}));
  EXPECT_EQ(placeOf(after, station), (Point{3000, 3700}));
}

TEST(TurnThings, TakesAWholeTurnInStepsForNothing) {
  const Layout before = benchShop();
  Layout layout = before;
  for (int i = 0; i < 24; ++i) layout = turnThings(layout, {"saw", "bench-1", "phone-1"}, 15).after;
  EXPECT_EQ(layout, before);
}

}  // namespace
}  // namespace stopwalk::edits
