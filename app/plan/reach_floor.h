#pragma once

#include <vector>

#include "core/floor/reach_map.h"
#include "core/geometry/box.h"

namespace stopwalk::plan {

// What lies between the samples of a reach map on one floor, in pieces smaller than a step; lengths in mm.
struct ReachFloor {
  enum Kind : signed char { Nothing, Walk, Narrow, NoWay };
  geometry::Polygon outline;
  geometry::Box box;  // of the pieces
  int columns = 0, rows = 0;
  std::vector<Kind> kinds;
  std::vector<float> lengths;
};

// Of the samples that lie in `from`: between them lengths are interpolated, beyond the last the nearest goes
// on.
ReachFloor reachFloor(const floor::ReachMap& map, const geometry::Polygon& outline,
                      const geometry::Polygon& from);

}  // namespace stopwalk::plan
