#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {

// The footprint, with a notch on the side that the operator stands at, and the hazard outline.
class MachineItem : public Item {
 public:
  MachineItem(const layout::Layout& layout, std::size_t machine);
  geometry::Box bounds() const override;
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  geometry::IndexedPolygon outline_;
  geometry::Polygon notched_;
  geometry::Polygon hazard_;
  QString name_;
};

}  // namespace stopwalk::plan
