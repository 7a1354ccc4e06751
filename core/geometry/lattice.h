#pragma once

#include <cmath>

#include "core/geometry/point.h"

// Points on a fine lattice, on which the side of a line is decided exactly. Coordinates are millimetres from
// a nearby origin: whole multiples of 2^-20 mm (a millionth), below 2^32 mm (4,295 km) in size. Differences
// of two such doubles are exact.
namespace stopwalk::geometry {

inline constexpr double kLatticeStep_mm = 1.0 / 1048576.0;

// The nearest lattice point.
Point onLattice(Point p);

// Where rounding leaves it open.
int exactOrientation(Point a, Point b, Point c);

// Positive if `c` lies to the left of the line from `a` to `b`, negative to the right, zero on it. Exact on
// the lattice.
inline int orientation(Point a, Point b, Point c) {
  const Point u = b - a, v = c - a;
  const double left = u.x * v.y, right = u.y * v.x, det = left - right;
  // The differences are exact, so the error is that of two products and one subtraction: under 3 * 2^-53 of
  // their sum.
  const double doubt = 4e-16 * (std::abs(left) + std::abs(right));
  if (det > doubt) return 1;
  if (det < -doubt) return -1;
  return exactOrientation(a, b, c);
}

// Whether `d` lies inside the circle through the counter-clockwise `a`, `b`, `c` by more than rounding could
// explain. Near the circle the answer is no: enough for flips that end and triangles that are well shaped.
inline bool surelyInCircle(Point a, Point b, Point c, Point d) {
  const Point u = a - d, v = b - d, w = c - d;
  const double uu = squaredLength(u), vv = squaredLength(v), ww = squaredLength(w);
  const double det = uu * cross(v, w) + vv * cross(w, u) + ww * cross(u, v);
  // The error is under 8 * 2^-53 of what the products sum up to in size, and that no more than this.
  return det > 2e-15 * (uu * vv + vv * ww + ww * uu);
}

}  // namespace stopwalk::geometry
