#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// Two footprints on a ring; the ring and the sign at it say how the station stands in the audit, a letter
// whose it is.
class StationItem : public Item {
 public:
  StationItem(const layout::Layout& layout, std::size_t machine, std::size_t station);
  geometry::Box bounds() const override { return geometry::boxOf(at_); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  void paintSign(QPainter& painter, const PaintContext& context) const override;
  void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const override;

 private:
  bool isLettered(double radius) const;
  void paintFeet(QPainter& painter, const PaintContext& context, double radius) const;

  geometry::Point at_;
  double looks_;  // degrees in the plan, towards the machine
  layout::Role role_;
  QString letter_;
};

}  // namespace stopwalk::plan
