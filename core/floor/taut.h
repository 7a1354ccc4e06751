#pragma once

#include <span>
#include <vector>

#include "core/floor/mesh.h"
#include "core/floor/route_search.h"
#include "core/floor/tangent.h"

namespace stopwalk::floor {

// A taut walk in closed form: from a place, by a step to `start` where that is another point, by tangents and
// arcs of a radius round the turns to `end`, and by a step in. Local coordinates.
struct Course {
  Point from, start;
  std::span<const Turn> turns;
  Point end, to;
};
// Its length. Unless `path` is null, the course is drawn there too, in plan coordinates: arcs as chords of 5
// degrees or finer.
double follow(const Mesh& mesh, const Course& course, double radius, std::vector<Point>* path);

}  // namespace stopwalk::floor
