#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {

// A bench, column or rack: hatched, since it is no machine.
class FixtureItem : public Item {
 public:
  FixtureItem(const layout::Layout& layout, std::size_t fixture);
  geometry::Box bounds() const override { return outline_.box(); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  geometry::IndexedPolygon outline_;
  geometry::Point at_;
  QString name_;
};

}  // namespace stopwalk::plan
