#include "core/floor/gate_ends.h"

#include <cmath>

#include "core/geometry/triangulation.h"

namespace stopwalk::floor {

GateEnds::GateEnds(const Mesh& mesh, const WallGrid& grid, const Region& region, const Turns& turns) {
  const double least = region.radius() - kRounding_mm;
  struct Found {
    Index arc;
    OnArc end;
  };
  std::vector<Found> found;
  const auto add = [&](Index corner, Point out, Index slot, Index mirrored) {
    const auto range = region.roundCorner(corner);
    for (Index i = range.first; i < range.last; ++i) {
      const Region::Piece& p = region.pieces()[i];
      if (!p.faces(out)) continue;
      const double angle = std::atan2(cross(p.from, out), dot(p.from, out));
      found.push_back({i, {{slot, mirrored}, angle}});
      return;
    }
  };
  for (Index t = 0; t < static_cast<Index>(mesh.triangles().size()); ++t) {
    const Mesh::Triangle& tri = mesh.triangles()[t];
    for (Index g = turns.gatesOf(t).first; g < turns.gatesOf(t).last; ++g) {
      const Turns::Gate& gate = turns.gates()[g];
      if (gate.beyond < t) continue;  // met from the other side
      int e = 0;
      while (tri.neighbour[e] != gate.beyond) ++e;
      const Index r = tri.corner[geometry::after(e)], l = tri.corner[geometry::before(e)];
      if (!grid.cornersKeepFrom({gate.right, gate.left}, least, r, l)) continue;
      add(r, gate.along, rightSlot(g), leftSlot(gate.back));
      add(l, -gate.along, leftSlot(g), rightSlot(gate.back));
    }
  }
  begin_.assign(region.pieces().size() + 1, 0);
  for (const Found& f : found) ++begin_[f.arc + 1];
  for (std::size_t i = 0; i + 1 < begin_.size(); ++i) begin_[i + 1] += begin_[i];
  ends_.resize(found.size());
  std::vector<Index> next(begin_.begin(), begin_.end() - 1);
  for (const Found& f : found) ends_[next[f.arc]++] = f.end;
}

}  // namespace stopwalk::floor
