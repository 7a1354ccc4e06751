#include "app/plan/guides.h"

#include <gtest/gtest.h>

#include <QImage>

#include "app/plan/rulers.h"

namespace stopwalk::plan {
namespace {

const QRectF kPlan(24, 24, 400, 300);

TEST(TagBox, StandsToTheRightOfThePointerAndBelowIt) {
  EXPECT_EQ(tagBox({100, 40}, {100, 100}, kPlan, 24), QRectF(110, 134, 100, 40));
}

TEST(TagBox, GoesToTheOtherSideOfThePointerAtTheEdges) {
  EXPECT_EQ(tagBox({100, 40}, {400, 300}, kPlan, 24), QRectF(290, 226, 100, 40));
}

TEST(TagBox, IsInsideWhereverThePointerIs) {
  for (double x = 24; x <= 424; x += 20)
    for (double y = 24; y <= 324; y += 20)
      for (const QSizeF size : {QSizeF(60, 20), QSizeF(300, 200), QSizeF(400, 300)})
        EXPECT_TRUE(kPlan.contains(tagBox(size, {x, y}, kPlan, 24))) << x << " " << y;
}

// A number that is cut in its middle is another number.
TEST(TagAtThePointer, IsWrappedInsideThePlan) {
  QImage image(240, 200, QImage::Format_RGB32), narrow = image;
  image.fill(Qt::white);
  narrow.fill(Qt::white);
  const auto paint = [](QImage& on, const QString& text) {
    QPainter painter(&on);
    paintTagAtPointer(painter, Theme::light(), {220, 190}, text);
  };
  const QString all =
      "Table saw, helper: now fails: stop too far; stop 3.31 m \u2192 12.2 m; phone 9 m \u2192 11 m";
  paint(image, all);
  paint(narrow, all.left(all.size() - 4));
  EXPECT_NE(image, narrow) << "the last letters are seen";
  for (int y = 0; y < 200; ++y) {
    ASSERT_EQ(image.pixel(239, y), QColor(Qt::white).rgb());
    for (int x = 0; x < static_cast<int>(kRuler_px) - 1; ++x)
      ASSERT_EQ(image.pixel(x, y), QColor(Qt::white).rgb()) << x << " " << y;
  }
}

}  // namespace
}  // namespace stopwalk::plan
