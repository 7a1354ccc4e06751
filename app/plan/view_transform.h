#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include "core/geometry/box.h"
#include "core/geometry/point.h"

namespace stopwalk::plan {

// Between the plan (mm, y up) and the pixels of a view (y down). The only place where the two meet.
class ViewTransform {
 public:
  static constexpr double kLeast = 1e-4;  // pixels a millimetre: 10 km on a screen
  static constexpr double kMost = 20;     // a millimetre as 20 pixels

  double pixelsPerMm() const { return scale_; }
  double mmPerPixel() const { return 1 / scale_; }

  QPointF toPixels(geometry::Point mm) const {
    return {(mm.x - origin_.x) * scale_, (origin_.y - mm.y) * scale_};
  }
  geometry::Point toPlan(QPointF pixel) const {
    return {origin_.x + pixel.x() / scale_, origin_.y - pixel.y() / scale_};
  }
  QRectF toPixels(const geometry::Box& box) const;
  geometry::Box toPlan(const QRectF& pixels) const;

  // Keeps the place of the plan under `pixel` where it is.
  void zoomAt(QPointF pixel, double factor);
  void setScaleAt(QPointF pixel, double pixels_per_mm);
  // Moves the picture by so many pixels.
  void pan(QPointF by);
  // Shows the whole box in the middle, with a margin all round.
  void fit(const geometry::Box& box, QSizeF view, double margin_px);
  bool operator==(const ViewTransform&) const = default;

 private:
  double scale_ = 0.05;
  geometry::Point origin_{-1000, 9000};  // the place at pixel (0, 0)
};

}  // namespace stopwalk::plan
