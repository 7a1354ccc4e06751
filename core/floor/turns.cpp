#include "core/floor/turns.h"

#include <cmath>

#include "core/geometry/lattice.h"

namespace stopwalk::floor {

using geometry::after;
using geometry::before;

namespace {

// From one direction to another counter-clockwise, in quarter turns from 0 to 4: whole ones exactly, between
// them not evenly but in order.
double quartersTo(Point from, Point to) {
  const double along = dot(from, to), aside = cross(from, to);
  const double share = along / (std::abs(along) + std::abs(aside));
  return aside >= 0 ? 1 - share : 3 + share;
}

}  // namespace

Turns::Turns(const Mesh& mesh, const Region& region) {
  cutGates(mesh, region.radius());
  const auto count = static_cast<Index>(region.pieces().size());
  arc_begin_.reserve(static_cast<std::size_t>(count) + 1);
  for (Index i = 0; i < count; ++i) {
    arc_begin_.push_back(static_cast<Index>(spans_.size()));
    if (region.pieces()[i].arc) follow(mesh, region, i);
  }
  arc_begin_.push_back(static_cast<Index>(spans_.size()));
  triangle_begin_.assign(mesh.triangles().size() + 1, 0);
  for (const Span& s : spans_) ++triangle_begin_[s.triangle + 1];
  for (std::size_t t = 0; t + 1 < triangle_begin_.size(); ++t) triangle_begin_[t + 1] += triangle_begin_[t];
  sorted_.resize(spans_.size());
  std::vector<Index> next(triangle_begin_.begin(), triangle_begin_.end() - 1);
  for (const Span& s : spans_) sorted_[next[s.triangle]++] = s;
}

void Turns::cutGates(const Mesh& mesh, double radius) {
  const auto& pts = mesh.corners();
  const double keep = radius - kRounding_mm;
  gates_.resize(3 * mesh.triangles().size());
  for (std::size_t t = 0; t < mesh.triangles().size(); ++t) {
    const auto& tri = mesh.triangles()[t];
    for (int e = 0; e < 3; ++e) {
      if (tri.neighbour[e] == Mesh::kNone) continue;
      const Index r = tri.corner[after(e)], l = tri.corner[before(e)];
      const double size = distance(pts[r], pts[l]);
      const double from_r = mesh.isObstacle(r) ? keep : 0, from_l = mesh.isObstacle(l) ? keep : 0;
      if (from_r + from_l > size) continue;
      const Point along = (1 / size) * (pts[l] - pts[r]);
      const Index n = tri.neighbour[e];
      int entered = 0;
      while (mesh.triangles()[n].neighbour[entered] != static_cast<Index>(t)) ++entered;
      gates_[3 * t + e] = {pts[r] + from_r * along, pts[l] - from_l * along, along, n, entered};
    }
  }
}

// Walks along the arc from triangle to triangle.
void Turns::follow(const Mesh& mesh, const Region& region, Index arc) {
  const Region::Piece& piece = region.pieces()[arc];
  const auto& pts = mesh.corners();
  const double r = region.radius(), hair = kRounding_mm / r;
  const Point v = pts[piece.corner];
  Point at = piece.from;
  const auto ahead = [&](Point u) {
    const double quarters = quartersTo(at, u);
    return quarters > 4 - hair ? 0 : quarters;  // it began beyond there, by rounding
  };
  Index t = mesh.floorTriangle(geometry::onLattice(v + r * at));
  for (int steps = 0; t != Mesh::kNone && steps < 10000; ++steps) {
    // Within a triangle the arc leaves through each edge in one direction only.
    Point leave = piece.to;
    double least = ahead(leave);
    int through = -1;
    for (int e = 0; e < 3; ++e) {
      const Point a = pts[mesh.triangles()[t].corner[after(e)]],
                  b = pts[mesh.triangles()[t].corner[before(e)]];
      const Point out = -leftOf(unit(b - a));
      const double height = dot(out, a - v) / r;
      if (std::abs(height) >= 1) continue;
      const Point u = height * out - std::sqrt((1 - height) * (1 + height)) * leftOf(out);
      if (const double quarters = ahead(u); quarters < least) {
        least = quarters;
        leave = least > 0 ? u : at;
        through = e;
      }
    }
    const bool is_wide = least > 1 + 1e-9;  // than a quarter turn
    if (is_wide) spans_.push_back({arc, t, piece.corner, v, at, leftOf(at)});
    spans_.push_back({arc, t, piece.corner, v, is_wide ? leftOf(at) : at, leave});
    if (through < 0) break;
    at = leave;
    t = mesh.triangles()[t].neighbour[through];
  }
  if (arc_begin_.back() < static_cast<Index>(spans_.size())) spans_.back().to = piece.to;
}

}  // namespace stopwalk::floor
