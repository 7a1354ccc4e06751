#include "app/edits/room_corners.h"

#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

Point door(const Layout& layout, std::size_t i = 0) {
  return layout.doors[i].at;
}

// In the bench shop the wood room's wall 1 is from 9000, 0 up to 9000, 7000, with the door d1 at 3500; wall 3
// is from 0, 7000 down to 0, 0, with d2 at 2000.

TEST(RoomCorners, MovedWallTakesItsDoorsAlong) {
  const Layout shop = benchShop();
  const Edit edit = moveWall(shop, "wood", 1, {500, 0});
  EXPECT_EQ(edit.name, "Move a wall of Wood room");
  Layout expected = shop;
  expected.rooms[0].outline = {{0, 0}, {9500, 0}, {9500, 7000}, {0, 7000}};
  expected.doors[0].at = {9500, 3500};
  EXPECT_EQ(edit.after, expected);
}

TEST(RoomCorners, DoorsOnAWallThatGrowsStayWhereTheyAre) {
  const Layout shop = benchShop();
  EXPECT_EQ(door(moveWall(shop, "wood", 2, {0, 1000}).after), door(shop));
  EXPECT_EQ(door(moveWall(shop, "wood", 0, {0, -1000}).after), door(shop));
}

TEST(RoomCorners, DoorsOnAWallThatShrinksStayOnIt) {
  const Layout shop = benchShop();
  EXPECT_EQ(door(moveWall(shop, "wood", 2, {0, -3000}).after), (Point{9000, 3100}))
      << "its end is the wall's";
  EXPECT_EQ(door(moveWall(shop, "wood", 2, {0, -6000}).after), (Point{9000, 500}))
      << "the middle of what is left";
}

TEST(RoomCorners, MovedCornerTurnsTheDoorsWithTheWall) {
  const Layout shop = benchShop();
  // A wall of 3, 4, 5: it runs from 9000, 0 to 13200, 5600, 7000 long as before.
  const Edit edit = moveCorner(shop, "wood", 2, {13200, 5600});
  EXPECT_EQ(edit.name, "Move a corner of Wood room");
  EXPECT_EQ(door(edit.after), (Point{11100, 2800}));
  EXPECT_EQ(door(edit.after, 1), door(shop, 1));
}

TEST(RoomCorners, OnlyDoorsThatTheRoomCarriesFollow) {
  const Layout shop = benchShop();
  EXPECT_EQ(door(moveWall(shop, "metal", 3, {300, 0}).after), door(shop));
}

TEST(RoomCorners, AddedCornerPartsAWall) {
  const Layout shop = benchShop();
  const Layout on = addCorner(shop, "wood", 1, {9000, 5000}).after;
  EXPECT_EQ(on.rooms[0].outline,
            (geometry::Polygon{{0, 0}, {9000, 0}, {9000, 5000}, {9000, 7000}, {0, 7000}}));
  EXPECT_EQ(on.doors, shop.doors);
  const Layout off = addCorner(shop, "wood", 1, {12000, 4000}).after;
  EXPECT_EQ(door(off), (Point{9000 + 3500 * 0.6, 3500 * 0.8})) << "3500 along the part from 9000, 0";
}

TEST(RoomCorners, RemovedCornerLetsTheDoorsFollow) {
  const Layout shop = benchShop();
  const Layout with = addCorner(shop, "wood", 1, {12000, 4000}).after;
  const Layout without = removeCorner(with, "wood", 2).after;
  EXPECT_EQ(without, shop);
}

TEST(RoomCorners, AreNeverFewerThanThree) {
  const Layout four = benchShop();
  const Layout three = removeCorner(four, "metal", 0).after;
  EXPECT_EQ(three.rooms[1].outline.size(), 3u);
  EXPECT_EQ(removeCorner(three, "metal", 0).after, three);
}

TEST(RoomCorners, ThatAreNotThereChangeNothing) {
  const Layout shop = benchShop();
  EXPECT_EQ(moveCorner(shop, "wood", 4, {1, 1}).after, shop);
  EXPECT_EQ(moveWall(shop, "saw", 0, {1, 1}).after, shop);
  EXPECT_EQ(addCorner(shop, "nothing", 0, {1, 1}).after, shop);
  EXPECT_EQ(removeCorner(shop, "wood", 99).after, shop);
}

TEST(RoomCorners, AllowAnOutlineThatCrossesItselfAndOneThatFallsTogether) {
  const Layout shop = benchShop();
  expectReadable(moveCorner(shop, "wood", 0, {20000, 20000}).after);
  const Layout flat = moveCorner(shop, "wood", 2, {9000, 0}).after;
  expectReadable(flat);
  EXPECT_EQ(door(flat), door(shop)) << "no wall is left to be on";
}

}  // namespace
}  // namespace stopwalk::edits
