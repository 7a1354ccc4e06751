#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {

// The floor of a room and the line of its outline.
class RoomItem : public Item {
 public:
  RoomItem(const layout::Layout& layout, std::size_t room);
  geometry::Box bounds() const override { return outline_.box(); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:

  geometry::IndexedPolygon outline_;
  bool outdoors_;
  QString name_;
};

}  // namespace stopwalk::plan
