#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using RoomTool = AtTheWindow;

TEST_F(RoomTool, TypedSidesGoWhereThePointerIs) {
  choose({plan::Choice::What::Room});
  click({4000, 5000});
  move({2000, 3000});
  type("3000");
  key(Qt::Key_Tab);
  type("1 m");
  key(Qt::Key_Return);
  ASSERT_EQ(layout().rooms.size(), 1u);
  const auto& outline = layout().rooms[0].outline;
  EXPECT_NEAR(outline[2].x, 4000, 50);
  EXPECT_NEAR(outline[2].y, 5000, 50);
  EXPECT_DOUBLE_EQ(outline[2].x - outline[0].x, 3000);
  EXPECT_DOUBLE_EQ(outline[2].y - outline[0].y, 1000);
}

TEST_F(RoomTool, ClicksOrADragDrawTheSame) {
  choose({plan::Choice::What::Room});
  click({1000, 1000});
  click({5000, 4000});
  choose({plan::Choice::What::Room});
  drag({6000, 1000}, {9000, 4000});
  ASSERT_EQ(layout().rooms.size(), 2u);
  EXPECT_EQ(plan().choice().what, plan::Choice::What::Select);
}

TEST_F(RoomTool, ARoomTypedOutOfSightIsBroughtIntoSight) {
  choose({plan::Choice::What::Room});
  typeNumbers({"90 m", "40 m", "8 m", "6 m"});
  EXPECT_TRUE(QRectF(plan().rect()).contains(plan().transform().toPixels({{90000, 40000}, {98000, 46000}})));
}

TEST_F(RoomTool, ByCornersTakesClicksAndNumbers) {
  choose({plan::Choice::What::RoomByCorners});
  typeNumbers({"1000", "1000"});
  typeNumbers({"4000", "0"});
  typeNumbers({"3000", "90"});
  typeNumbers({"4000", "180"});
  click({1000, 1000});
  ASSERT_EQ(layout().rooms.size(), 1u);
  ASSERT_EQ(layout().rooms[0].outline.size(), 4u);
  EXPECT_EQ(layout().rooms[0].outline[2], (geometry::Point{5000, 4000}));
}

// Wherever the pointer went since the last corner.
TEST_F(RoomTool, ByCornersEnterWithoutANumberClosesTheRoom) {
  choose({plan::Choice::What::RoomByCorners});
  for (const geometry::Point corner : {geometry::Point{1000, 1000}, {5000, 1000}, {5000, 4000}})
    click(corner);
  move({2000, 3000});
  key(Qt::Key_Return);
  ASSERT_EQ(layout().rooms.size(), 1u);
  EXPECT_EQ(layout().rooms[0].outline.size(), 3u);
}

TEST_F(RoomTool, ByCornersEnterClosesNothingOfTwoCorners) {
  choose({plan::Choice::What::RoomByCorners});
  for (const geometry::Point corner : {geometry::Point{1000, 1000}, {5000, 1000}}) click(corner);
  move({2000, 3000});
  key(Qt::Key_Return);
  EXPECT_TRUE(layout().rooms.empty());
  click({5000, 4000});
  click({1000, 1000});
  ASSERT_EQ(layout().rooms.size(), 1u);
  EXPECT_EQ(layout().rooms[0].outline.size(), 3u) << "no corner where the pointer was at Enter";
}

}  // namespace
}  // namespace stopwalk::window
