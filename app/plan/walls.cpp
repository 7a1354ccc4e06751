#include "app/plan/walls.h"

#include <cmath>
#include <limits>
#include <numbers>

#include "core/floor/doorway.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

constexpr double kProbe_mm = 20;

bool holds(const Polygon& outline, Point p) {
  return outline.size() >= 3 && geometry::IndexedPolygon(outline).holds(p);
}

}  // namespace

Point inward(const Polygon& outline, Segment side) {
  const Point left = geometry::unit(geometry::leftOf(side.b - side.a));
  return geometry::signedArea(outline) >= 0 ? left : -left;
}

double degreesOf(Point direction) {
  double deg = std::atan2(direction.y, direction.x) * 180 / std::numbers::pi;
  if (deg < 0) deg += 360;
  return std::abs(deg - std::round(deg)) < 1e-9 ? std::round(deg) : deg;
}

std::optional<OnWall> nearestWall(const layout::Layout& layout, Point at, double most_mm) {
  std::optional<OnWall> best;
  double least = most_mm;
  bool best_holds = false;
  for (std::size_t r = 0; r < layout.rooms.size(); ++r) {
    const Polygon& outline = layout.rooms[r].outline;
    std::optional<bool> inside;
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Segment side = geometry::edgeOf(outline, i);
      if (side.a == side.b) continue;
      const Point foot = geometry::nearestPoint(side, at);
      const double off = geometry::distance(at, foot);
      if (off > least + geometry::kTouch_mm) continue;
      if (!inside) inside = holds(outline, at);
      if (best && off > least - geometry::kTouch_mm && (best_holds || !*inside)) continue;
      best = OnWall{r, side, foot, degreesOf(inward(outline, side))};
      best_holds = *inside;
      least = std::min(least, off);
    }
  }
  return best;
}

std::string roomBehind(const layout::Layout& layout, const OnWall& place) {
  const Point out = -geometry::direction(place.faces);
  for (double far = kProbe_mm; far <= floor::kThickestWall_mm; far += kProbe_mm)
    for (std::size_t r = 0; r < layout.rooms.size(); ++r)
      if (r != place.room && holds(layout.rooms[r].outline, place.at + far * out)) return layout.rooms[r].id;
  return layout::kOutside;
}

Point doorWithin(const OnWall& place, double width) {
  const double long_mm = geometry::distance(place.wall.a, place.wall.b);
  if (long_mm <= width) return geometry::at(place.wall, 0.5);
  const double t = geometry::nearestParameter(place.wall, place.at);
  const double half = width / 2 / long_mm;
  return geometry::at(place.wall, std::min(std::max(t, half), 1 - half));
}

OnFootprint nearestSide(const layout::Footprint& footprint, Point in_frame) {
  const Polygon outline = layout::outlineInPlan(footprint, {0, 0}, 0);
  OnFootprint best{in_frame, 270};
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment side = geometry::edgeOf(outline, i);
    if (side.a == side.b) continue;
    const Point foot = geometry::nearestPoint(side, in_frame);
    if (const double off = geometry::distance(in_frame, foot); off < least) {
      least = off;
      best = {foot, degreesOf(-inward(outline, side))};
    }
  }
  return best;
}

}  // namespace stopwalk::plan
