#pragma once

#include "app/plan/items/item.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {

// A distance taped on the floor between two things: a line from one to the other with its length. Not at all
// where an end does not exist.
class TapeCheckItem : public Item {
 public:
  TapeCheckItem(const layout::Layout& layout, std::size_t tape_check);
  geometry::Box bounds() const override;
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  std::optional<geometry::Segment> line_;
  QString length_;
};

}  // namespace stopwalk::plan
