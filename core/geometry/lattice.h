#pragma once

#include "core/geometry/point.h"

// Points on a fine lattice, on which the side of a line is decided exactly. Coordinates are millimetres from
// a nearby origin: whole multiples of 2^-20 mm (a millionth), below 2^32 mm (4,295 km) in size. Differences
// of two such doubles are exact.
namespace stopwalk::geometry {

inline constexpr double kLatticeStep_mm = 1.0 / 1048576.0;

// The nearest lattice point.
Point onLattice(Point p);

// Positive if `c` lies to the left of the line from `a` to `b`, negative to the right, zero on it. Exact on
// the lattice.
int orientation(Point a, Point b, Point c);

// Whether `d` lies inside the circle through the counter-clockwise `a`, `b`, `c` by more than rounding could
// explain. Near the circle the answer is no: enough for flips that end and triangles that are well shaped.
bool surelyInCircle(Point a, Point b, Point c, Point d);

}  // namespace stopwalk::geometry
