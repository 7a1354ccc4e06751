#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {

// A scan or photo to draw over; its lower left corner lies at `at`. A picture that cannot be read is a frame
// with its name.
class UnderlayItem : public Item {
 public:
  UnderlayItem(const layout::Layout& layout, const Pictures& pictures);
  geometry::Box bounds() const override { return frame_.box(); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  layout::Underlay underlay_;
  QImage image_;
  geometry::IndexedPolygon frame_;  // from the lower left, counter-clockwise
};

}  // namespace stopwalk::plan
