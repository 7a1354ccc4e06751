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

bool surelyInCircle(Point a, Point b, Point c, Point d) {
  const Point u = a - d, v = b - d, w = c - d;
  const double uu = squaredLength(u), vv = squaredLength(v), ww = squaredLength(w);
  const double vw = cross(v, w), wu = cross(w, u), uv = cross(u, v);
  const double det = uu * vw + vv * wu + ww * uv;
  const double size = uu * (std::abs(v.x * w.y) + std::abs(v.y * w.x)) +
                      vv * (std::abs(w.x * u.y) + std::abs(w.y * u.x)) +
                      ww * (std::abs(u.x * v.y) + std::abs(u.y * v.x));
  return det > 2e-15 * size;
}

}  // namespace stopwalk::geometry
