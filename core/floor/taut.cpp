#include "core/floor/taut.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stopwalk::floor {

// Points that fall together are one.
void CourseDrawing::add(Point local) {
  if (!draws_) return;
  const Point p = mesh_.plan(local);
  if (path_.empty() || squaredLength(path_.back() - p) > 1e-12) path_.push_back(p);
}

// The points between the ends of an arc.
void CourseDrawing::addRound(const Disk& disk, Point arriving, double turn) {
  if (!draws_) return;
  const int chords = static_cast<int>(std::ceil(turn / (5 * std::numbers::pi / 180)));
  if (chords < 2) return;
  const double a = (disk.radius > 0 ? turn : -turn) / chords, cosine = std::cos(a), sine = std::sin(a);
  Point spoke = touch(disk, arriving) - disk.centre;
  for (int c = 1; c < chords; ++c) {
    spoke = {spoke.x * cosine - spoke.y * sine, spoke.x * sine + spoke.y * cosine};
    add(disk.centre + spoke);
  }
}

// Leaves of the last course only the legs that this one begins with.
void CourseDrawing::takeOver(const Course& course, double radius) {
  std::size_t shared = 0;
  if (course.from == from_ && course.start == start_ && radius == radius_)
    while (shared < std::min(legs_.size(), course.turns.size()) && legs_[shared].to == course.turns[shared])
      ++shared;
  legs_.resize(shared);
  path_.resize(shared > 0 ? legs_.back().drawn : 0);
  from_ = course.from;
  start_ = course.start;
  radius_ = radius;
}

double CourseDrawing::follow(const Course& course, double radius) {
  takeOver(course, radius);
  if (legs_.empty()) add(course.from);
  double length = distance(course.from, course.start) + distance(course.end, course.to);
  for (const Leg& leg : legs_) {
    length += radius * leg.turned;
    length += leg.straight.run;
  }
  const auto diskOf = [&](const Turn& turn) {
    return Disk{mesh_.corners()[turn.corner], turn.sense * radius};
  };
  Disk at = legs_.empty() ? Disk{course.start, 0} : diskOf(legs_.back().to);
  for (std::size_t i = legs_.size(); i <= course.turns.size(); ++i) {
    const Disk to = i < course.turns.size() ? diskOf(course.turns[i]) : Disk{course.end, 0};
    // At the full radius, disks that the region was built to pass between may overlap by a hair: they touch.
    const Tangent straight =
        tangent(at, to, std::numeric_limits<double>::infinity()).value_or(Tangent{{1, 0}, 0});
    double turned = 0;
    if (i > 0) {
      const Point arriving = legs_.back().straight.direction;
      turned = turnRound(course.turns[i - 1].sense, arriving, straight.direction);
      addRound(at, arriving, turned);
    }
    length += radius * turned;
    length += straight.run;
    add(touch(at, straight.direction));
    add(touch(to, straight.direction));
    if (i < course.turns.size()) legs_.push_back({course.turns[i], straight, turned, path_.size()});
    at = to;
  }
  add(course.to);
  // Rounding must not make it shorter than the straight line.
  return std::max(length, distance(course.from, course.to));
}

}  // namespace stopwalk::floor
