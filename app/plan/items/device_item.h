#pragma once

#include "app/plan/items/symbol_item.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {

// A device on a machine or on a wall. A bar or cord is drawn at its true length, the symbol at its middle.
class DeviceItem : public SymbolItem {
 public:
  // `thing`: a MachineDevice or WallDevice of the layout.
  DeviceItem(const layout::Layout& layout, const layout::DeviceKinds& kinds, const edits::Thing& device);
  geometry::Box bounds() const override { return geometry::boxOf(line_); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  std::optional<QRectF> checked(const PaintContext& context) const override { return square(context); }

 private:
  geometry::Segment line_;  // of what is no bar or cord: a point
  bool by_foot_ = false;
  bool pin_missing_ = false;  // of a guarded start, as recorded
};

}  // namespace stopwalk::plan
