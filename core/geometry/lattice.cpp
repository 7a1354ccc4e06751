#include "core/geometry/lattice.h"

#include <cmath>
#include <cstdint>

namespace stopwalk::geometry {

namespace {

__extension__ using Wide = __int128;

Wide steps(double v) {
  return static_cast<std::int64_t>(v * 1048576.0);
}

}  // namespace

Point onLattice(Point p) {
  return {std::nearbyint(p.x * 1048576.0) * kLatticeStep_mm,
          std::nearbyint(p.y * 1048576.0) * kLatticeStep_mm};
}

int exactOrientation(Point a, Point b, Point c) {
  const Point u = b - a, v = c - a;
  const Wide exact = steps(u.x) * steps(v.y) - steps(u.y) * steps(v.x);
  return exact > 0 ? 1 : exact < 0 ? -1 : 0;
}

}  // namespace stopwalk::geometry
