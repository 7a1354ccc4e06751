#include "core/floor/taut.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace stopwalk::floor {

namespace {

struct Leg {
  Point direction;
  double run = 0;
};

// The common tangent of two signed disks: each is passed on its own side.
Leg tangent(Point from, double from_radius, Point to, double to_radius) {
  const Point d = to - from;
  const double k = to_radius - from_radius, size = squaredLength(d);
  if (size == 0) return {{1, 0}, 0};
  const double run = std::sqrt(std::max(0.0, size - k * k));
  const Point direction = run * d - k * leftOf(d);
  return {squaredLength(direction) > 0 ? unit(direction) : unit(d), run};
}

}  // namespace

Taut taut(const Mesh& mesh, Point start, const std::vector<Turn>& turns, Point end, double radius) {
  Taut result;
  result.path.push_back(start);
  Point at = start;
  double at_radius = 0;
  Point arriving;
  for (std::size_t i = 0; i <= turns.size(); ++i) {
    const bool last = i == turns.size();
    const Point to = last ? end : mesh.corners()[turns[i].corner];
    const double to_radius = last ? 0 : turns[i].sense * radius;
    const Leg leg = tangent(at, at_radius, to, to_radius);
    if (i > 0 && radius > 0) {
      const int sense = turns[i - 1].sense;
      const double turn =
          std::max(0.0, sense * std::atan2(cross(arriving, leg.direction), dot(arriving, leg.direction)));
      result.length += radius * turn;
      const int chords = static_cast<int>(std::ceil(turn / (5 * std::numbers::pi / 180)));
      const double a = chords > 1 ? sense * turn / chords : 0, cosine = std::cos(a), sine = std::sin(a);
      Point spoke = -at_radius * leftOf(arriving);
      for (int c = 1; c < chords; ++c) {
        spoke = {spoke.x * cosine - spoke.y * sine, spoke.x * sine + spoke.y * cosine};
        result.path.push_back(at + spoke);
      }
      result.path.push_back(at - at_radius * leftOf(leg.direction));
    }
    result.length += leg.run;
    result.path.push_back(to - to_radius * leftOf(leg.direction));
    arriving = leg.direction;
    at = to;
    at_radius = to_radius;
  }
  return result;
}

}  // namespace stopwalk::floor
