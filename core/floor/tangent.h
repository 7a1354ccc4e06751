#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/geometry/point.h"

namespace stopwalk::floor {

using geometry::Point;

// A corner that a walk turns round at a radius: positive if it lies to the left of the walk, negative to the
// right. A point is a disk of no radius.
struct Disk {
  Point centre;
  double radius = 0;
};

// The straight piece of a taut walk from one disk to another: its direction, and its length between the
// points of touch.
struct Tangent {
  Point direction;
  double run = 0;
};

// None if the disks overlap so that no such line exists; an overlap of up to `slack` mm counts as touching.
inline std::optional<Tangent> tangent(const Disk& from, const Disk& to, double slack) {
  const Point d = to.centre - from.centre;
  const double k = to.radius - from.radius, size = squaredLength(d);
  double square = size - k * k;
  if (square <= 0) {
    if (size == 0 || square < -2 * slack * std::abs(k)) return std::nullopt;
    return Tangent{unit(-k * leftOf(d)), 0};
  }
  const double run = std::sqrt(square);
  return Tangent{(1 / size) * (run * d - k * leftOf(d)), run};
}

// How far a walk turns round a disk on its left (+1) or right (-1) between two directions: up to half a turn.
// By rounding, no turn may look like a hair the other way, and half a turn like half a turn the other way.
inline double turnRound(double sense, Point from, Point to) {
  const double turn = std::copysign(1.0, sense) * std::atan2(cross(from, to), dot(from, to));
  return turn < -3 ? turn + 2 * std::numbers::pi : std::max(turn, 0.0);
}

// The angle from one direction to another, counter-clockwise.
inline double turnBetween(Point from, Point to) {
  return std::atan2(cross(from, to), dot(from, to));
}

// A turn by less may be none: the corner is held against the straight line.
inline constexpr double kHardlyTurned = 1e-6;
inline bool isHardlyTurned(Point from, Point to) {
  return std::abs(cross(from, to)) <= kHardlyTurned && dot(from, to) > 0;
}

// Where the tangent in `direction` touches the disk.
inline Point touch(const Disk& disk, Point direction) {
  return disk.centre - disk.radius * leftOf(direction);
}

}  // namespace stopwalk::floor
