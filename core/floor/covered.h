#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace stopwalk::floor {

// Where a straight line or a circle comes nearer than a radius to a segment: always one interval.
struct Interval {
  double from = 0, to = 0;
  bool empty() const { return !(from < to); }
};

// The stretch of s in which o + s * d (d of unit length) is nearer than `r` to the segment ab.
Interval nearSegment(geometry::Point o, geometry::Point d, geometry::Point a, geometry::Point b, double r);

// The angles, counter-clockwise from `from` to `to` (less than a full turn), at which the circle about `v` of
// radius `circle` (about as large as `r`) is nearer than `r` to the segment ab; ab must not pass through v.
Interval nearSegmentRound(geometry::Point v, double circle, geometry::Point a, geometry::Point b, double r);

// Puts into `free` what of [from, to] no interval covers, in order; pieces shorter than `least` left out.
// Sorts `covered`.
void uncovered(double from, double to, std::vector<Interval>& covered, double least,
               std::vector<Interval>& free);

}  // namespace stopwalk::floor
