#include "core/floor/taut.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stopwalk::floor {

namespace {

// A path as it grows; points that fall together are one.
class Drawing {
 public:
  Drawing(const Mesh& mesh, std::vector<Point>* path) : mesh_(mesh), path_(path) {
    if (path_) path_->clear();
  }

  void add(Point local) {
    if (!path_) return;
    const Point p = mesh_.plan(local);
    if (path_->empty() || squaredLength(path_->back() - p) > 1e-12) path_->push_back(p);
  }

  // The points between the ends of an arc.
  void addRound(const Disk& disk, Point arriving, double turn) {
    if (!path_) return;
    const int chords = static_cast<int>(std::ceil(turn / (5 * std::numbers::pi / 180)));
    if (chords < 2) return;
    const double a = (disk.radius > 0 ? turn : -turn) / chords, cosine = std::cos(a), sine = std::sin(a);
    Point spoke = touch(disk, arriving) - disk.centre;
    for (int c = 1; c < chords; ++c) {
      spoke = {spoke.x * cosine - spoke.y * sine, spoke.x * sine + spoke.y * cosine};
      add(disk.centre + spoke);
    }
  }

 private:
  const Mesh& mesh_;
  std::vector<Point>* path_;
};

}  // namespace

double follow(const Mesh& mesh, const Course& course, double radius, std::vector<Point>* path) {
  Drawing drawing(mesh, path);
  double length = distance(course.from, course.start) + distance(course.end, course.to);
  Disk at{course.start, 0};
  Point arriving;
  drawing.add(course.from);
  for (std::size_t i = 0; i <= course.turns.size(); ++i) {
    Disk to{course.end, 0};
    if (i < course.turns.size())
      to = {mesh.corners()[course.turns[i].corner], course.turns[i].sense * radius};
    // At the full radius, disks that the region was built to pass between may overlap by a hair: they touch.
    const Tangent leg = tangent(at, to, std::numeric_limits<double>::infinity()).value_or(Tangent{{1, 0}, 0});
    if (i > 0) {
      const double turn = turnRound(course.turns[i - 1].sense, arriving, leg.direction);
      length += radius * turn;
      drawing.addRound(at, arriving, turn);
    }
    length += leg.run;
    drawing.add(touch(at, leg.direction));
    drawing.add(touch(to, leg.direction));
    arriving = leg.direction;
    at = to;
  }
  drawing.add(course.to);
  // Rounding must not make it shorter than the straight line.
  return std::max(length, distance(course.from, course.to));
}

}  // namespace stopwalk::floor
