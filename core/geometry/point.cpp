#include "core/geometry/point.h"

#include <numbers>

namespace stopwalk::geometry {

Point direction(double deg) {
  double turn = std::fmod(deg, 360.0);
  if (turn < 0) turn += 360.0;
  const double quarters = turn / 90.0;
  const auto whole = static_cast<int>(std::floor(quarters));
  const double rest = (turn - 90.0 * whole) * std::numbers::pi / 180.0;
  Point p{std::cos(rest), std::sin(rest)};
  for (int i = 0; i < whole % 4; ++i) p = leftOf(p);
  return p;
}

Point turned(Point p, double deg) {
  const Point u = direction(deg);
  return {p.x * u.x - p.y * u.y, p.x * u.y + p.y * u.x};
}

}  // namespace stopwalk::geometry
