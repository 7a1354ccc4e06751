#include "core/floor/taut.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stopwalk::floor {

namespace {

// Calls `line(run, begin, end)` for each straight piece and `arc(disk, arriving, turn)` for each turn in between.
template <class Line, class Arc>
void follow(const Mesh& mesh, const Course& course, double radius, Line line, Arc arc) {
  Disk at{course.start, 0};
  Point arriving;
  for (std::size_t i = 0; i <= course.turns.size(); ++i) {
    Disk to{course.end, 0};
    if (i < course.turns.size()) to = {mesh.corners()[course.turns[i].corner], course.turns[i].sense * radius};
    // At the full radius, disks that the region was built to pass between may overlap by a hair: they touch.
    const Tangent leg = tangent(at, to, std::numeric_limits<double>::infinity()).value_or(Tangent{{1, 0}, 0});
    if (i > 0) {
      const double turn = std::atan2(cross(arriving, leg.direction), dot(arriving, leg.direction));
      arc(at, arriving, std::max(0.0, course.turns[i - 1].sense * turn));
    }
    line(leg.run, touch(at, leg.direction), touch(to, leg.direction));
    arriving = leg.direction;
    at = to;
  }
}

}  // namespace

double lengthOf(const Mesh& mesh, const Course& course, double radius) {
  double length = distance(course.from, course.start) + distance(course.end, course.to);
  follow(
      mesh, course, radius, [&](double run, Point, Point) { length += run; },
      [&](const Disk&, Point, double turn) { length += radius * turn; });
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
      [&](double, Point begin, Point end) {
        add(begin);
        add(end);
      },
      [&](const Disk& disk, Point arriving, double turn) {
        const int chords = static_cast<int>(std::ceil(turn / (5 * std::numbers::pi / 180)));
        if (chords < 2) return;
        const double a = (disk.radius > 0 ? turn : -turn) / chords, cosine = std::cos(a), sine = std::sin(a);
        Point spoke = touch(disk, arriving) - disk.centre;
        for (int c = 1; c < chords; ++c) {
          spoke = {spoke.x * cosine - spoke.y * sine, spoke.x * sine + spoke.y * cosine};
          add(disk.centre + spoke);
        }
      });
  add(course.to);
  return path;
}

}  // namespace stopwalk::floor
