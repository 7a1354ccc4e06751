#include "app/plan/rulers.h"

#include <gtest/gtest.h>

#include <QImage>

namespace stopwalk::plan {
namespace {

QImage gridOn(const QPolygonF& area) {
  QImage image(400, 300, QImage::Format_RGB32);
  image.fill(Theme::light().floor);
  QPainter painter(&image);
  ViewTransform view;
  view.fit({{0, 0}, {8000, 6000}}, QSizeF(400, 300), 0);
  paintGrid(painter, view, Theme::light(), Theme::light().floor, area, layout::LengthUnit::Millimetre);
  return image;
}

TEST(Grid, LiesOnItsAreaAlone) {
  // An L, so that lines come in and go out again.
  const QPolygonF area{{{20, 20}, {380, 20}, {380, 120}, {200, 120}, {200, 280}, {20, 280}}};
  const QImage with = gridOn(area), everywhere = gridOn(QRectF(0, 0, 400, 300));
  const QRgb floor = Theme::light().floor.rgb();
  int lines = 0;
  for (int y = 0; y < 300; ++y)
    for (int x = 0; x < 400; ++x) {
      const bool inside = area.containsPoint(QPointF(x + 0.5, y + 0.5), Qt::OddEvenFill);
      const QRgb expected = inside ? everywhere.pixel(x, y) : floor;
      ASSERT_EQ(with.pixel(x, y), expected) << x << ", " << y;
      lines += expected != floor;
    }
  EXPECT_GT(lines, 1000);
}

}  // namespace
}  // namespace stopwalk::plan
