#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/polygon.h"

namespace stopwalk::plan {

// An opening through the wall, its leaf shut (which way it swings the layout does not say), a lock if it has
// one.
class DoorItem : public Item {
 public:
  DoorItem(const layout::Layout& layout, std::size_t door);
  geometry::Box bounds() const override { return geometry::boxOf(opening_); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paintGround(QPainter& painter, const PaintContext& context) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;

 private:
  void paintLeaf(QPainter& painter, const PaintContext& context) const;

  geometry::Polygon opening_;  // from the first room's wall, left to right, and back along the second's
  layout::Locked locked_;
  double width_;
};

}  // namespace stopwalk::plan
