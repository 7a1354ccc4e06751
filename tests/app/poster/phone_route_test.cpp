// The way to the phone as it is drawn on a plan at 1:50, of a room of 10 by 6 m.
#include "app/poster/phone_route.h"

#include <gtest/gtest.h>

#include <variant>

namespace stopwalk::poster {
namespace {

const geometry::Polygon kRoom{{0, 0}, {10000, 0}, {10000, 6000}, {0, 6000}};

struct Route : testing::Test {
  PlanFrame frame{kRoom, 90, 50, QRectF(0, 0, 300, 300)};
  PhoneRoute to(geometry::Point end) const {
    return {{{5000, 3000}, {6000, 3000}, end}, frame, frame(kRoom)};
  }
};

TEST_F(Route, WithinTheRoomIsDrawnWhole) {
  const PhoneRoute route = to({9000, 3000});
  EXPECT_EQ(route.pieces().size(), 2u);
  EXPECT_LT(QLineF(route.end(), frame({9000, 3000})).length(), 1e-9);
  EXPECT_FALSE(route.outside());
}

TEST_F(Route, OutOfTheRoomEndsALittleBeyondTheWall) {
  const PhoneRoute route = to({30000, 3000});
  ASSERT_TRUE(route.outside());
  EXPECT_NEAR(QLineF(route.outside()->p1(), frame({10000, 3000})).length(), 0, 1e-6);
  EXPECT_NEAR(route.outside()->length(), 4, 1e-6);
  EXPECT_LT(QLineF(route.end(), route.outside()->p2()).length(), 1e-9);
}

TEST_F(Route, PointsTheWayThatOneGoes) {
  const std::vector<Mark> marks = to({9000, 3000}).marks();
  ASSERT_EQ(marks.size(), 2u);  // the line and its arrow
  const QRectF arrow = std::get<Shape>(marks[1]).path.boundingRect();
  EXPECT_GT(arrow.right(), frame({9000, 3000}).x());
  EXPECT_LT(arrow.width(), 4);
}

TEST_F(Route, ItsWordsStandBesideItOrNowhere) {
  const PhoneRoute route = to({9000, 3000});
  const NameBlock words{QRectF(-10, -2, 20, 4), {}};
  const auto placed = route.beside(words, [](const QRectF&) { return true; });
  ASSERT_TRUE(placed);
  for (const QLineF& piece : route.pieces())
    EXPECT_FALSE(
        QRectF(piece.p1(), piece.p2()).normalized().adjusted(0, -0.1, 0, 0.1).intersects(placed->box));
  EXPECT_FALSE(route.beside(words, [](const QRectF&) { return false; }));
}

TEST_F(Route, OfNoWayIsEmpty) {
  const PhoneRoute none({}, frame, frame(kRoom));
  EXPECT_TRUE(none.empty());
  EXPECT_TRUE(none.marks().empty());
}

}  // namespace
}  // namespace stopwalk::poster
