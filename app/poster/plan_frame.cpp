#include "app/poster/plan_frame.h"

#include "app/poster/sizes.h"

namespace stopwalk::poster {
namespace {

QRectF turnedBox(const geometry::Polygon& outline, double turn_deg) {
  QPolygonF turned;
  for (const geometry::Point& p : outline) {
    const geometry::Point t = geometry::turned(p, turn_deg);
    turned << QPointF(t.x, -t.y);
  }
  return turned.boundingRect();
}

}  // namespace

PlanFrame::PlanFrame(const geometry::Polygon& outline, double up_deg, int scale, QRectF middle_of)
    : turn_deg_(90 - up_deg), scale_(scale) {
  shift_ = middle_of.center() - turnedBox(outline, turn_deg_).center() / scale_;
}

QPointF PlanFrame::operator()(geometry::Point p) const {
  const geometry::Point t = geometry::turned(p, turn_deg_);
  return QPointF(t.x, -t.y) / scale_ + shift_;
}

QPolygonF PlanFrame::operator()(const geometry::Polygon& polygon) const {
  QPolygonF on_page;
  for (const geometry::Point& p : polygon) on_page << (*this)(p);
  if (!on_page.isEmpty()) on_page << on_page.front();
  return on_page;
}

QSizeF turnedSize(const geometry::Polygon& outline, double up_deg) {
  return turnedBox(outline, 90 - up_deg).size();
}

int scaleFor(QSizeF room_mm, QSizeF box_mm) {
  for (const int scale : {20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200, kSmallestScale})
    if (room_mm.width() / scale <= box_mm.width() && room_mm.height() / scale <= box_mm.height())
      return scale;
  return 0;
}

}  // namespace stopwalk::poster
