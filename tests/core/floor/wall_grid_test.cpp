#include "core/floor/wall_grid.h"

#include <gtest/gtest.h>

#include <set>

namespace stopwalk::floor {
namespace {

struct Square {
  Square() : mesh(plan()), grid(mesh) {}
  static Plan plan() {
    Plan plan;
    plan.rooms = {{{-4000, -4000}, {4000, -4000}, {4000, 4000}, {-4000, 4000}}};
    for (int i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
    return plan;
  }
  Mesh mesh;
  WallGrid grid;
};

// What lies farther out than cells can be counted is still left or right, above or below of all.
class WallGridFarOut : public testing::TestWithParam<double> {};

TEST_P(WallGridFarOut, SeesAllThatLiesBetween) {
  const double far = GetParam();
  const Square room;
  std::set<WallGrid::Index> in_box, in_rows, near;
  room.grid.wallsIn({{-far, -far}, {far, far}}, [&](WallGrid::Index w) { in_box.insert(w); });
  EXPECT_EQ(in_box.size(), 4u);
  for (int row = room.grid.rowAt(far); row >= room.grid.rowAt(-far); --row)
    room.grid.wallsInRow(row, -far, far, [&](WallGrid::Index w) { in_rows.insert(w); });
  EXPECT_EQ(in_rows.size(), 4u);
  room.grid.wallsNear({0, 0}, {0, 0}, far, [&](WallGrid::Index w) { near.insert(w); });
  EXPECT_EQ(near.size(), 4u);
  EXPECT_DOUBLE_EQ(room.grid.clearance(Point{1000, 0}, far), 3000);
  EXPECT_EQ(room.grid.clearance(Segment{{-far, 1000}, {far, 1000}}, 305), 0);
  EXPECT_EQ(room.grid.clearance(Segment{{1000, -far}, {1000, far}}, 305), 0);
  EXPECT_FALSE(room.grid.cornersKeepFrom({{-far, 4000}, {far, 4000}}, 305));
}

TEST_P(WallGridFarOut, SeesNothingBeside) {
  const double far = GetParam();
  const Square room;
  for (const Point p : {Point{far, 0}, {-far, 0}, {0, far}, {0, -far}}) {
    EXPECT_EQ(room.grid.clearance(p, 305), 305) << p.x << "," << p.y;
    EXPECT_TRUE(room.grid.cornersKeepFrom({p, p}, 305)) << p.x << "," << p.y;
    room.grid.wallsNear(p, p, 305,
                        [&](WallGrid::Index w) { ADD_FAILURE() << p.x << "," << p.y << " sees " << w; });
  }
}

INSTANTIATE_TEST_SUITE_P(Millimetres, WallGridFarOut, testing::Values(1e7, 1e12, 1e15, 1e100));

}  // namespace
}  // namespace stopwalk::floor
