#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/polygon.h"

namespace stopwalk::plan {

// The walls outwards of a room's inside faces. The layout gives no thickness: a nominal band, and solid to
// the next room where one stands within a metre. The floors are painted over it. No thing of its own.
class WallItem : public Item {
 public:
  static constexpr double kNominal_mm = 120;

  WallItem(const layout::Layout& layout, std::size_t room);
  geometry::Box bounds() const override;
  std::optional<double> distanceTo(geometry::Point, double) const override { return std::nullopt; }
  void paint(QPainter& painter, const PaintContext& context) const override;
  void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const override;

 private:
  geometry::Polygon outline_;
  std::vector<geometry::Polygon> solid_;  // between this room and the next
};

}  // namespace stopwalk::plan
