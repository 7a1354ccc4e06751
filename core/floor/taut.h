#pragma once

#include <vector>

#include "core/floor/mesh.h"
#include "core/floor/route_search.h"

namespace stopwalk::floor {

// The taut walk from `start` round the turns to `end` at a radius, in closed form: tangents and arcs.
struct Taut {
  double length = 0;
  std::vector<Point> path;  // arcs as chords of 5 degrees or finer
};
Taut taut(const Mesh& mesh, Point start, const std::vector<Turn>& turns, Point end, double radius);

}  // namespace stopwalk::floor
