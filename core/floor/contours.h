#pragma once

#include <vector>

#include "core/floor/reach_map.h"

namespace stopwalk::floor {

// A line of places that are equally far to walk, drawn between the samples of a map: where it passes between
// two of them is interpolated, not measured.
struct Contour {
  int multiple = 0;         // of the interval: the walk is multiple * interval
  std::vector<Point> line;  // at least two; a closed one ends where it begins
  bool closed() const { return line.front() == line.back(); }
};

// The lines at all whole multiples of `interval_mm` from 1 on, by rising multiple. None passes where one of
// the four samples round it has no walk, or where something stands between two of them.
std::vector<Contour> contoursOf(const ReachMap& map, double interval_mm);

// The place half way along a line, and the direction (unit) that it has there: where a label may stand.
struct Midway {
  Point at;
  Point along;
};
Midway midwayOf(const std::vector<Point>& line);

}  // namespace stopwalk::floor
