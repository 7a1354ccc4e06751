// Where walks start and end: sources, and targets by the triangles that they are seen in.
#include <algorithm>
#include <cmath>

#include "core/floor/route_search.h"
#include "core/geometry/lattice.h"

namespace stopwalk::floor {

using geometry::after;
using geometry::before;

namespace {

// Whether the line of entries, in as many steps, meets the edge or comes very near.
bool entersBy(const Landing& landing, int steps, Segment edge) {
  const Point a = edge.a, b = edge.b;
  const double tolerance = 1e-3 * distance(a, b);
  for (int i = 0; i < steps; ++i) {
    const Point c = landing.entry(double(i) / steps), d = landing.entry(double(i + 1) / steps);
    const double c_side = cross(b - a, c - a), d_side = cross(b - a, d - a);
    const double a_side = cross(d - c, a - c), b_side = cross(d - c, b - c), slack = 1e-3 * distance(c, d);
    if (std::min(c_side, d_side) <= tolerance && std::max(c_side, d_side) >= -tolerance &&
        std::min(a_side, b_side) <= slack && std::max(a_side, b_side) >= -slack)
      return true;
  }
  return false;
}

}  // namespace

void RouteSearch::addSource(Point p, double offset, int label) {
  p = geometry::onLattice(p);
  const Index t = mesh_->floorTriangle(p);
  if (t == Mesh::kNone) return;
  const auto& tri = mesh_->triangles()[t];
  const Point centre = (1.0 / 3) * (mesh_->corners()[tri.corner[0]] + mesh_->corners()[tri.corner[1]] +
                                    mesh_->corners()[tri.corner[2]]);
  // Where openings meet, a corner stands free: start beside it.
  for (Index c : tri.corner)
    if (distance(mesh_->corners()[c], p) < 1e-4) p = geometry::onLattice(p + 1e-3 * unit(centre - p));
  sources_.push_back({p, offset, label, t});
}

void RouteSearch::addTarget(Point p, double offset, int label) {
  p = geometry::onLattice(p);
  const Index t = mesh_->floorTriangle(p);
  if (t == Mesh::kNone) return;
  const auto index = static_cast<Index>(targets_.size());
  targets_.push_back({p, offset, label, false, {}});
  note(index, t);
  // On an edge it belongs to both sides.
  const auto& tri = mesh_->triangles()[t];
  for (int e = 0; e < 3; ++e) {
    const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
    if (tri.neighbour[e] != Mesh::kNone && std::abs(cross(b - a, p - a)) <= 1e-5 * distance(a, b))
      note(index, tri.neighbour[e]);
  }
}

void RouteSearch::addLanding(const Landing& landing, int label) {
  const auto index = static_cast<Index>(targets_.size());
  targets_.push_back({geometry::onLattice(landing.entry(0)), 0, label, true, landing});
  for (const Index triangle : trianglesOf(landing)) note(index, triangle);
}

// The triangles that touch the line of entries, found by spreading.
std::vector<RouteSearch::Index> RouteSearch::trianglesOf(const Landing& landing) const {
  const Point p = geometry::onLattice(landing.entry(0)), q = geometry::onLattice(landing.entry(1));
  std::vector<Index> seen;
  const int steps = std::max(1, static_cast<int>(std::ceil(distance(p, q) / 50)));
  const auto see = [&](Index triangle) {
    if (triangle != Mesh::kNone && std::ranges::find(seen, triangle) == seen.end()) seen.push_back(triangle);
  };
  for (int i = 0; i <= steps; ++i)
    see(mesh_->floorTriangle(geometry::onLattice(landing.entry(double(i) / steps))));
  for (std::size_t next = 0; next < seen.size(); ++next) {
    const auto& tri = mesh_->triangles()[seen[next]];
    for (int e = 0; e < 3; ++e) {
      if (tri.neighbour[e] == Mesh::kNone) continue;
      const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
      if (entersBy(landing, steps, {a, b})) see(tri.neighbour[e]);
    }
  }
  return seen;
}

// The target may be seen in the triangle.
void RouteSearch::note(Index target, Index triangle) {
  target_next_.push_back(target_first_[triangle]);
  target_of_.push_back(target);
  target_first_[triangle] = static_cast<Index>(target_of_.size()) - 1;
  touched_triangles_.push_back(triangle);
}

double RouteSearch::estimate(Point p) const {
  if (!informed_) return 0;
  double least = std::numeric_limits<double>::infinity();
  for (const Target& t : targets_) {
    const double d = t.line ? distance(Segment{t.landing.a, t.landing.b}, p) : distance(p, t.at) + t.offset;
    least = std::min(least, d);
  }
  return least;
}

}  // namespace stopwalk::floor
