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
  std::vector<Span> spans;
  spans.reserve(2 * static_cast<std::size_t>(count));  // about as many
  arc_begin_.reserve(static_cast<std::size_t>(count) + 1);
  for (Index i = 0; i < count; ++i) {
    arc_begin_.push_back(static_cast<Index>(spans.size()));
    if (region.pieces()[i].arc) follow(mesh, region, i, spans);
  }
  arc_begin_.push_back(static_cast<Index>(spans.size()));
  sort(spans, mesh.triangles().size());
}

// By triangle; where each of them was is kept.
void Turns::sort(const std::vector<Span>& spans, std::size_t triangles) {
  triangle_begin_.assign(triangles + 1, 0);
  for (const Span& s : spans) ++triangle_begin_[s.triangle + 1];
  for (std::size_t t = 0; t < triangles; ++t) triangle_begin_[t + 1] += triangle_begin_[t];
  spans_.resize(spans.size());
  in_arc_.reserve(spans.size());
  std::vector<Index> next(triangle_begin_.begin(), triangle_begin_.end() - 1);
  for (const Span& s : spans) {
    in_arc_.push_back(next[s.triangle]++);
    spans_[in_arc_.back()] = s;
  }
}

void Turns::cutGates(const Mesh& mesh, double radius) {
  const auto& pts = mesh.corners();
  const double keep = radius - kRounding_mm;
  gate_begin_.reserve(mesh.triangles().size() + 1);
  gates_.reserve(3 * mesh.triangles().size());  // at most
  for (const Mesh::Triangle& tri : mesh.triangles()) {
    gate_begin_.push_back(static_cast<Index>(gates_.size()));
    for (int e = 0; e < 3; ++e) {
      if (tri.neighbour[e] == Mesh::kNone) continue;
      const Index r = tri.corner[after(e)], l = tri.corner[before(e)];
      const double size = distance(pts[r], pts[l]);
      const double from_r = mesh.isObstacle(r) ? keep : 0, from_l = mesh.isObstacle(l) ? keep : 0;
      if (from_r + from_l > size) continue;
      const Point along = (1 / size) * (pts[l] - pts[r]);
      gates_.push_back({pts[r] + from_r * along, pts[l] - from_l * along, along, tri.neighbour[e]});
    }
  }
  gate_begin_.push_back(static_cast<Index>(gates_.size()));
  pair();
}

void Turns::pair() {
  for (Index t = 0; t + 1 < static_cast<Index>(gate_begin_.size()); ++t) {
    for (Index g = gatesOf(t).first; g < gatesOf(t).last; ++g) {
      Index back = gatesOf(gates_[g].beyond).first;
      while (gates_[back].beyond != t) ++back;
      gates_[g].back = back;
    }
  }
}

// Walks along the arc from triangle to triangle.
void Turns::follow(const Mesh& mesh, const Region& region, Index arc, std::vector<Span>& spans) const {
  const Region::Piece& piece = region.pieces()[arc];
  const double r = region.radius(), hair = kRounding_mm / r;
  const Point v = mesh.corners()[piece.corner];
  Point at = piece.from;
  const auto ahead = [&](Point u) {
    const double quarters = quartersTo(at, u);
    return quarters > 4 - hair ? 0 : quarters;  // it began beyond there, by rounding
  };
  Index t = mesh.floorTriangle(geometry::onLattice(v + r * at));
  for (int steps = 0; t != Mesh::kNone && steps < 10000; ++steps) {
    // Within a triangle the arc leaves through each gate in one direction only.
    Point leave = piece.to;
    double least = ahead(leave);
    Index beyond = Mesh::kNone;
    for (Index g = gatesOf(t).first; g < gatesOf(t).last; ++g) {
      const Point out = -leftOf(gates_[g].along);
      const double height = dot(out, gates_[g].right - v) / r;
      if (std::abs(height) >= 1) continue;
      const Point u = height * out - std::sqrt((1 - height) * (1 + height)) * leftOf(out);
      if (const double quarters = ahead(u); quarters < least) {
        least = quarters;
        leave = least > 0 ? u : at;
        beyond = gates_[g].beyond;
      }
    }
    const bool is_wide = least > 1 + 1e-9;  // than a quarter turn
    if (is_wide) spans.push_back({arc, t, piece.corner, v, at, leftOf(at)});
    spans.push_back({arc, t, piece.corner, v, is_wide ? leftOf(at) : at, leave});
    if (beyond == Mesh::kNone) break;
    at = leave;
    t = beyond;
  }
  if (arc_begin_.back() < static_cast<Index>(spans.size())) spans.back().to = piece.to;
}

}  // namespace stopwalk::floor
