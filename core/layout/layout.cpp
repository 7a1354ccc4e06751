#include "core/layout/layout.h"

namespace stopwalk::layout {

Point toPlan(Point at, double turn, Point in_frame) {
  return at + geometry::turned(in_frame, turn);
}

geometry::Polygon outlineInPlan(const Footprint& footprint, Point at, double turn) {
  geometry::Polygon corners;
  if (const auto* r = std::get_if<Rectangle>(&footprint)) {
    const double w = r->width / 2, d = r->depth / 2;
    corners = {{-w, -d}, {w, -d}, {w, d}, {-w, d}};
  } else {
    corners = std::get<geometry::Polygon>(footprint);
  }
  for (Point& p : corners) p = toPlan(at, turn, p);
  return corners;
}

}  // namespace stopwalk::layout
