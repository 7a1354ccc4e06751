#include "core/floor/gate_ends.h"

#include <cmath>

#include "core/geometry/triangulation.h"

namespace stopwalk::floor {

GateEnds::GateEnds(const Mesh& mesh, const WallGrid& grid, const Region& region, const Turns& turns) {
  const auto& pts = mesh.corners();
  const double least = (region.radius() - kRounding_mm) * (region.radius() - kRounding_mm);
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
    for (int e = 0; e < 3; ++e) {
      const Turns::Gate& gate = turns.gate(t, e);
      if (gate.beyond < t) continue;  // shut, or met from the other side
      const Index r = mesh.triangles()[t].corner[geometry::after(e)],
                  l = mesh.triangles()[t].corner[geometry::before(e)];
      const Point u = gate.left - gate.right;
      const double size = squaredLength(u);
      const bool clear = grid.cornersNear(gate.right, gate.left, region.radius(), [&](Index c) {
        if (c == r || c == l) return true;
        const Point v = pts[c] - gate.right;
        const double s = size > 0 ? std::clamp(dot(v, u) / size, 0.0, 1.0) : 0.0;
        return squaredLength(v - s * u) >= least;
      });
      if (!clear) continue;
      const Index slot = slotOf(t, e), mirrored = slotOf(gate.beyond, gate.entered);
      add(r, gate.along, slot, mirrored + 1);
      add(l, -gate.along, slot + 1, mirrored);
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
