#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>

#include "core/geometry/point.h"

namespace stopwalk::poster {

// From the plan, mm of the shop, to the page, mm of paper: turned so that `up_deg` is up, at 1:`scale`.
class PlanFrame {
 public:
  // The outline comes to lie in the middle of `middle_of`.
  PlanFrame(const geometry::Polygon& outline, double up_deg, int scale, QRectF middle_of);

  QPointF operator()(geometry::Point p) const;
  QPolygonF operator()(const geometry::Polygon& polygon) const;  // closed
  int scale() const { return scale_; }

 private:
  double turn_deg_;
  int scale_;
  QPointF shift_;
};

// How large the outline is when turned, mm of the shop.
QSizeF turnedSize(const geometry::Polygon& outline, double up_deg);

// The largest of the usual scales (1:20 to 1:250) at which the room fits in the box; 0: none.
int scaleFor(QSizeF room_mm, QSizeF box_mm);

}  // namespace stopwalk::poster
