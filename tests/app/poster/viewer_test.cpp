#include "app/poster/viewer.h"

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

TEST(Viewer, ScalesAreRoundAndNotTooSmall) {
  EXPECT_EQ(scaleFor({12000, 9000}, {240, 180}), 50);  // derived: 12 x 9 m is 240 x 180 mm
  EXPECT_EQ(scaleFor({12000, 9000}, {239.9, 180}), 60);
  EXPECT_EQ(scaleFor({60000, 9000}, {239.9, 180}), 0);
}

}  // namespace
}  // namespace stopwalk::poster
