#include "app/plan/reach_layer.h"

#include <gtest/gtest.h>

#include "app/plan/catalogue.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::plan {
namespace {

using What = audit::ReachTarget::What;

ReachLayer layerOf(const layout::Layout& layout, const audit::ReachTarget& target) {
  return {std::make_shared<const audit::Reach>(
              audit::reachOf(layout, bundledCatalogue().kinds, floor::Hours::Open, target, 2000)),
          layout};
}

TEST(ReachLayer, SaysWhatItShowsInTheUnitOfTheLayout) {
  layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  EXPECT_EQ(layerOf(layout, {What::Phone, ""}).title(), "Walk to the phone, metres");
  layout.machines[0].name = "Wide planer";
  layout.unit = layout::LengthUnit::Foot;
  EXPECT_EQ(layerOf(layout, {What::MachineStop, layout.machines[0].id}).title(),
            "Walk to the stop of Wide planer, feet");
}

TEST(ReachLayer, TheScaleEndsBeyondTheLongestWalk) {
  const ReachLayer layer = layerOf(support::shopLayout(support::kShopSizes[0]), {What::Phone, ""});
  EXPECT_GE(layer.top_mm(), *layer.reach()->map.longest_mm());
  EXPECT_LT(layer.top_mm(), *layer.reach()->map.longest_mm() + 10000);
}

// The floor at a sample has the colour of its length, whatever stands beside it.
TEST(ReachLayer, ColoursTheFloorByTheWalk) {
  const layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  const ReachLayer layer = layerOf(layout, {What::Phone, ""});
  const floor::ReachMap& map = layer.reach()->map;
  for (const Theme& theme : {Theme::light(), Theme::darkened()}) {
    ViewTransform view;
    geometry::Box box;
    for (const auto& room : layout.rooms) box.add(geometry::boxOf(room.outline));
    view.fit(box, QSizeF(1600, 900), 10);
    QImage image(1600, 900, QImage::Format_ARGB32_Premultiplied);
    image.fill(theme.floor);
    QPainter painter(&image);
    layer.paint(painter, view, theme, true);
    painter.end();
    int seen = 0, like = 0;
    for (int row = 1; row + 1 < map.rows(); ++row)
      for (int column = 1; column + 1 < map.columns(); ++column) {
        const auto length = map.length_mm(column, row);
        if (!length) continue;
        const QColor is = image.pixelColor(view.toPixels(map.at(column, row)).toPoint());
        const QColor wanted = theme.reachAt(*length / layer.top_mm());
        ++seen;
        like += std::abs(is.red() - wanted.red()) < 12 && std::abs(is.blue() - wanted.blue()) < 12;
      }
    EXPECT_GT(seen, 300);
    EXPECT_GT(like, 0.8 * seen);  // the others lie under a contour or its label
  }
}

TEST(ReachLayer, OfAnEmptyLayoutPaintsNothing) {
  QImage image(100, 100, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::white);
  QPainter painter(&image);
  layerOf({}, {What::AnyStop, ""}).paint(painter, ViewTransform(), Theme::light(), true);
  EXPECT_EQ(image.pixelColor(50, 50), QColor(Qt::white));
}

}  // namespace
}  // namespace stopwalk::plan
