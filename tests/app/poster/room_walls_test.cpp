// The walls that one chooses among.
#include "app/poster/room_walls.h"

#include <algorithm>

#include "core/geometry/polygon.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

struct Walls : testing::Test {
  Sample sample{Sample::fileText("tram-depot")};
};

// Each of its sides once, each viewer on its own wall and before it.
TEST_F(Walls, AreTheSidesOfTheRoomWithAPlaceOnEach) {
  for (std::size_t r = 0; r < sample.layout.rooms.size(); ++r) {
    const auto& outline = sample.layout.rooms[r].outline;
    const std::vector<RoomWall> walls = roomWalls(sample.layout, r);
    ASSERT_EQ(walls.size(), outline.size()) << sample.layout.rooms[r].id;
    for (std::size_t w = 0; w < walls.size(); ++w) {
      EXPECT_EQ(walls[w].line, geometry::edgeOf(outline, w));
      EXPECT_LT(geometry::distance(walls[w].line, walls[w].viewer.at), 1e-6);
      EXPECT_EQ(sample.shop->open().surroundings.roomAt(walls[w].viewer.stands()), r) << w;
    }
  }
}

// In the sample every door is of one or two rooms, and so on one or two walls.
TEST_F(Walls, HaveEachDoorOnceOnEitherSide) {
  std::vector<std::string> to, expected;
  for (std::size_t r = 0; r < sample.layout.rooms.size(); ++r)
    for (const RoomWall& wall : roomWalls(sample.layout, r))
      for (const std::string& behind : wall.doors_to) to.push_back(sample.layout.rooms[r].id + ">" + behind);
  for (const layout::Door& door : sample.layout.doors) {
    if (door.first != layout::kOutside) expected.push_back(door.first + ">" + door.second);
    if (door.second != layout::kOutside) expected.push_back(door.second + ">" + door.first);
  }
  std::ranges::sort(to);
  std::ranges::sort(expected);
  EXPECT_EQ(to, expected);
}

TEST_F(Walls, TheNearestIsTheOneOfLeastDistance) {
  const std::vector<RoomWall> walls = roomWalls(sample.layout, sample.room("hall"));
  for (const geometry::Point at : {geometry::Point{7000, 10}, {13990, 4000}, {7000, 7990}, {20, 3000}}) {
    const auto nearest = nearestWall(walls, at);
    ASSERT_TRUE(nearest);
    for (const RoomWall& wall : walls)
      EXPECT_LE(geometry::distance(walls[*nearest].line, at), geometry::distance(wall.line, at));
  }
  EXPECT_EQ(nearestWall({}, {0, 0}), std::nullopt);
}

TEST_F(Walls, APlaceThatWentAwayWithItsWallIsNone) {
  const std::size_t hall = sample.room("hall");
  EXPECT_TRUE(viewerStillAt(sample.layout, hall, {7000, 50}));
  EXPECT_TRUE(viewerStillAt(sample.layout, hall, {7000, kOffWall_mm - 1}));
  EXPECT_FALSE(viewerStillAt(sample.layout, hall, {7000, kOffWall_mm + 1}));
}

}  // namespace
}  // namespace stopwalk::poster
