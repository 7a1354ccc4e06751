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

// Calls `line(leg)` for each straight piece and `arc(corner, signed radius, arriving, turn)` for each turn in between.
template <class Line, class Arc>
void follow(const Mesh& mesh, const Course& course, double radius, Line line, Arc arc) {
  Point at = course.start, arriving;
  double at_radius = 0;
  for (std::size_t i = 0; i <= course.turns.size(); ++i) {
    const bool last = i == course.turns.size();
    const Point to = last ? course.end : mesh.corners()[course.turns[i].corner];
    const double to_radius = last ? 0 : course.turns[i].sense * radius;
    const Leg leg = tangent(at, at_radius, to, to_radius);
    if (i > 0) {
      const int sense = course.turns[i - 1].sense;
      const double turn = sense * std::atan2(cross(arriving, leg.direction), dot(arriving, leg.direction));
      arc(at, at_radius, arriving, std::max(0.0, turn));
    }
    line(leg, at - at_radius * leftOf(leg.direction), to - to_radius * leftOf(leg.direction));
    arriving = leg.direction;
    at = to;
    at_radius = to_radius;
  }
}

}  // namespace

double lengthOf(const Mesh& mesh, const Course& course, double radius) {
  double length = distance(course.from, course.start) + distance(course.end, course.to);
  follow(
      mesh, course, radius, [&](const Leg& leg, Point, Point) { length += leg.run; },
      [&](Point, double, Point, double turn) { length += radius * turn; });
  // Rounding must not make it shorter than the straight line.
  return std::max(length, distance(course.from, course.to));
}

std::vector<Point> pathOf(const Mesh& mesh, const Course& course, double radius) {
  std::vector<Point> path;
  path.reserve(4 + 6 * course.turns.size());
  const auto add = [&](Point local) {
    const Point p = mesh.plan(local);
    if (path.empty() || squaredLength(path.back() - p) > 1e-12) path.push_back(p);
  };
  add(course.from);
  follow(
      mesh, course, radius,
      [&](const Leg&, Point begin, Point end) {
        add(begin);
        add(end);
      },
      [&](Point corner, double signed_radius, Point arriving, double turn) {
        const int chords = static_cast<int>(std::ceil(turn / (5 * std::numbers::pi / 180)));
        if (chords < 2) return;
        const double a = (signed_radius > 0 ? turn : -turn) / chords, cosine = std::cos(a), sine = std::sin(a);
        Point spoke = -signed_radius * leftOf(arriving);
        for (int c = 1; c < chords; ++c) {
          spoke = {spoke.x * cosine - spoke.y * sine, spoke.x * sine + spoke.y * cosine};
          add(corner + spoke);
        }
      });
  add(course.to);
  return path;
}

}  // namespace stopwalk::floor
