#include "app/poster/viewer.h"

#include <algorithm>
#include <cmath>

#include "app/poster/plan_frame.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

double turn(double deg) {
  return std::remainder(deg, 360);
}

TEST(Viewer, FacesTheWallThatIsNearest) {
  const Sample sample(Sample::fileText("tram-depot"));
  const auto south = viewerNear(sample.layout, sample.room("hall"), {7000, 100});
  ASSERT_TRUE(south);
  EXPECT_NEAR(turn(south->up_deg - 270), 0, 1e-9);
  EXPECT_EQ(south->at, (geometry::Point{7000, 0}));
  const auto east = viewerNear(sample.layout, sample.room("hall"), {13900, 6500});
  EXPECT_NEAR(turn(east->up_deg), 0, 1e-9);
}

TEST(Viewer, NeverHangsInADoorway) {
  const Sample sample(Sample::fileText("tram-depot"));
  for (const layout::Door& d : sample.layout.doors)
    for (const std::string& id : {d.first, d.second}) {
      if (id == layout::kOutside) continue;
      const auto viewer = viewerNear(sample.layout, sample.room(id), d.at);
      ASSERT_TRUE(viewer);
      EXPECT_GE(geometry::distance(viewer->at, d.at), d.width / 2) << d.id << " " << id;
    }
}

TEST(Viewer, UpOnThePageIsWhatTheReaderFaces) {
  const geometry::Polygon outline{{0, 0}, {9000, 0}, {9000, 6000}, {0, 6000}};
  for (const double up : {0.0, 37.0, 90.0, 180.0, 270.0}) {
    const PlanFrame frame(outline, up, 50, QRectF(0, 0, 300, 300));
    const QPointF ahead = frame(1000 * geometry::direction(up)) - frame({0, 0});
    EXPECT_NEAR(ahead.x(), 0, 1e-9);
    EXPECT_NEAR(ahead.y(), -20, 1e-9);  // 1 m at 1:50
  }
}

TEST(Viewer, NothingIsMirrored) {
  const geometry::Polygon outline{{0, 0}, {9000, 0}, {9000, 6000}, {0, 6000}};
  const PlanFrame frame(outline, 90, 50, QRectF(0, 0, 300, 300));
  EXPECT_GT(frame({9000, 0}).x(), frame({0, 0}).x());
  EXPECT_LT(frame({0, 6000}).y(), frame({0, 0}).y());
}

TEST(Viewer, UsuallyHangsOnAFreeStretchOfWall) {
  for (const char* name : {"tram-depot", "scene-shop", "school-wing"}) {
    const Sample sample(Sample::fileText(name));
    for (std::size_t r = 0; r < sample.layout.rooms.size(); ++r) {
      const auto viewer = usualViewer(sample.layout, r);
      ASSERT_TRUE(viewer);
      for (const layout::Door& d : sample.layout.doors)
        if (geometry::distance(d.at, viewer->at) < d.width / 2)
          ADD_FAILURE() << sample.layout.rooms[r].id << ": in the door " << d.id << " at " << viewer->at.x
                        << "," << viewer->at.y;
    }
  }
}

Sample shopWith(const std::string& things) {
  return Sample(
      "stopwalk_layout: 1\nunits: mm\nsite: {name: A shop}\nrooms:\n  - {id: a, name: Hall, outline: "
      "[[0, 0], [12000, 0], [12000, 9000], [0, 9000]]}\n" +
      things + "...\n");
}

std::string machine(const std::string& id, int x, int y, int width, int depth) {
  const auto number = [](int n) { return std::to_string(n); };
  return "  - {id: " + id + ", name: Saw, at: [" + number(x) + ", " + number(y) +
         "], footprint: {width: " + number(width) + ", depth: " + number(depth) +
         "}, devices: [{id: stop, kind: mushroom-button, at: [0, 0], height: 1000}]}\n";
}

// The long walls are full of machines, the east wall but for a metre, the west wall with a gap behind them.
TEST(Viewer, UsuallyStandsWhereOneCanStand) {
  const Sample sample = shopWith(
      "machines:\n" + machine("south", 6000, 500, 11800, 900) + machine("north", 6000, 8500, 11800, 900) +
      machine("west", 900, 4500, 600, 6000) + machine("east", 11500, 3800, 900, 4400));
  const auto viewer = usualViewer(sample.layout, 0);
  ASSERT_TRUE(viewer);
  EXPECT_NEAR(viewer->at.x, 12000, 1e-6);
  EXPECT_TRUE(sample.shop->open().walks.onFloor(viewer->stands()));
}

TEST(Viewer, WhereNobodyCanStandIsTold) {
  const Sample sample = shopWith("machines:\n" + machine("south", 6000, 500, 6000, 900));
  const auto told = [&](geometry::Point at) {
    const Poster poster = sample.shop->poster(0, viewerNear(sample.layout, 0, at), wishFor("a3"));
    return std::ranges::any_of(poster.shortfalls,
                               [](const Shortfall& s) { return s.text.contains("nobody can stand there"); });
  };
  EXPECT_TRUE(told({6000, 0}));
  EXPECT_FALSE(told({6000, 9000}));
}

TEST(Viewer, ScalesAreRoundAndNotTooSmall) {
  EXPECT_EQ(scaleFor({12000, 9000}, {240, 180}), 50);  // derived: 12 x 9 m is 240 x 180 mm
  EXPECT_EQ(scaleFor({12000, 9000}, {239.9, 180}), 60);
  EXPECT_EQ(scaleFor({60000, 9000}, {239.9, 180}), 0);
}

}  // namespace
}  // namespace stopwalk::poster
