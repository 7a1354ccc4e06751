#include "app/plan/view_transform.h"

#include <algorithm>

namespace stopwalk::plan {

QRectF ViewTransform::toPixels(const geometry::Box& box) const {
  return QRectF(toPixels(geometry::Point{box.low.x, box.high.y}),
                toPixels(geometry::Point{box.high.x, box.low.y}));
}

geometry::Box ViewTransform::toPlan(const QRectF& pixels) const {
  const geometry::Point a = toPlan(pixels.bottomLeft()), b = toPlan(pixels.topRight());
  return {a, b};
}

void ViewTransform::zoomAt(QPointF pixel, double factor) {
  setScaleAt(pixel, scale_ * factor);
}

void ViewTransform::setScaleAt(QPointF pixel, double pixels_per_mm) {
  const geometry::Point held = toPlan(pixel);
  scale_ = std::clamp(pixels_per_mm, kLeast, kMost);
  origin_ = {held.x - pixel.x() / scale_, held.y + pixel.y() / scale_};
}

void ViewTransform::pan(QPointF by) {
  origin_ = toPlan(-by);
}

void ViewTransform::fit(const geometry::Box& box, QSizeF view, double margin_px) {
  const double width = std::max(box.high.x - box.low.x, 1.0), height = std::max(box.high.y - box.low.y, 1.0);
  const double across = std::max(view.width() - 2 * margin_px, 1.0);
  const double down = std::max(view.height() - 2 * margin_px, 1.0);
  scale_ = std::clamp(std::min(across / width, down / height), kLeast, kMost);
  const geometry::Point middle = 0.5 * (box.low + box.high);
  origin_ = {middle.x - view.width() / 2 / scale_, middle.y + view.height() / 2 / scale_};
}

}  // namespace stopwalk::plan
