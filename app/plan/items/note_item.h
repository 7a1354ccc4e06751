#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// A text, with a leader to what it speaks of.
class NoteItem : public Item {
 public:
  NoteItem(const layout::Layout& layout, std::size_t note);
  geometry::Box bounds() const override;
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  std::optional<Label> label(const PaintContext& context) const override;

 private:
  geometry::Point at_;
  std::optional<geometry::Point> points_to_;
  QString text_;
};

}  // namespace stopwalk::plan
