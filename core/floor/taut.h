#pragma once

#include <vector>

#include "core/floor/mesh.h"
#include "core/floor/route_search.h"
#include "core/floor/tangent.h"

namespace stopwalk::floor {

// A taut walk in closed form: from a place, by a step to `start` where that is another point, by tangents and arcs of a radius
// round the turns to `end`, and by a step in. Local coordinates.
struct Course {
  Point from, start;
  std::vector<Turn> turns;
  Point end, to;
};
double lengthOf(const Mesh& mesh, const Course& course, double radius);
// For drawing, in plan coordinates: arcs as chords of 5 degrees or finer.
std::vector<Point> pathOf(const Mesh& mesh, const Course& course, double radius);

}  // namespace stopwalk::floor
