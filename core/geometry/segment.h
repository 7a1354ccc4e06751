#pragma once

#include <optional>

#include "core/geometry/point.h"

namespace stopwalk::geometry {

// Lengths that differ by less are the same to a user: a stop exactly in reach is in reach, a touch is not a
// crossing. Far above the rounding of coordinates 10 km from the origin (2e-9 mm), far below what is drawn.
inline constexpr double kTouch_mm = 0.001;
// How far from an outline a point counts as on it.
inline constexpr double kOnOutline_mm = 1e-6;

// A stretch of a line, by a parameter or by a length.
struct Stretch {
  double from = 0;
  double to = 0;
  bool operator==(const Stretch&) const = default;
};

// Coordinates along a direction (x) and to the left of it (y).
struct Frame {
  Point origin;
  Point along{1, 0};  // unit

  Point in(Point p) const { return {dot(along, p - origin), cross(along, p - origin)}; }
  Point out(Point p) const { return origin + p.x * along + p.y * leftOf(along); }
};
// From `s.a` towards `s.b`; along +x if they are one point.
Frame frameOf(Segment s);

// The point at `t` from a (0) to b (1); the ends exactly, also for `t` outside.
Point at(Segment s, double t);
// Where on the segment, 0 to 1, its nearest point to `p` is.
double nearestParameter(Segment s, Point p);
Point nearestPoint(Segment s, Point p);
double distance(Segment s, Point p);
double distance(Segment s, Segment t);

// Whether each runs through the other, both ends of each being more than `touch` from the other's line.
bool crossProperly(Segment s, Segment t, double touch = kTouch_mm);

// The parameters of `line`, 0 to 1, within `radius` of `other`: always one stretch.
std::optional<Stretch> stretchWithin(Segment line, Segment other, double radius);

// What of the segment, in coordinates of its own, lies in low <= x <= high; none if nothing does.
std::optional<Segment> clippedByX(Segment s, double low, double high);
std::optional<Segment> clippedByY(Segment s, double low, double high);

}  // namespace stopwalk::geometry
