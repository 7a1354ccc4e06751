#pragma once

#include "core/geometry/point.h"

namespace stopwalk::floor {

using geometry::Point;

// A stretch of places from which a walk steps in: the place at parameter s in [0, 1] is a + s (b - a), and it
// is reached from a point of the region's boundary, or is itself in the region.
struct Landing {
  enum class Kind { Inside, Straight, Round };
  Kind kind = Kind::Inside;
  Point a, b;      // the places
  Point from, to;  // Straight: the point of the region for a and for b
  Point centre;    // Round: the arc's
  double radius = 0;

  Point place(double s) const { return a + s * (b - a); }
  // The point of the region from which the place at s is reached.
  Point entry(double s) const {
    if (kind == Kind::Inside) return place(s);
    if (kind == Kind::Straight) return from + s * (to - from);
    return centre + radius * unit(place(s) - centre);
  }
  double step(double s) const { return distance(entry(s), place(s)); }
};

}  // namespace stopwalk::floor
