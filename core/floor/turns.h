#pragma once

#include <span>
#include <vector>

#include "core/floor/region.h"

namespace stopwalk::floor {

// The arcs of a region, which are the only places where a shortest walk turns, by the triangles that they run
// through.
class Turns {
 public:
  using Index = Mesh::Index;

  // The part of an arc in one triangle: unit normals counter-clockwise from `from` to `to`, at most a quarter
  // turn.
  struct Span {
    Index arc = 0;  // into the region's pieces
    Index triangle = 0;
    Index corner = 0;
    Point centre;  // the corner
    Point from, to;
  };

  Turns(const Mesh& mesh, const Region& region);

  // An edge of a triangle cut to what a walk can pass: no nearer to its ends than the radius. Seen from
  // inside looking out. Edges that no walk can pass have none.
  struct Gate {
    Point right, left;
    Point along;                 // unit, from right to left
    Index beyond = Mesh::kNone;  // the triangle it leads to
    Index back = Mesh::kNone;    // the same gate as that triangle sees it
  };
  const std::vector<Gate>& gates() const { return gates_; }
  // Of one triangle, as indices into gates().
  struct Range {
    Index first, last;
  };
  Range gatesOf(Index triangle) const { return {gate_begin_[triangle], gate_begin_[triangle + 1]}; }

  std::span<const Span> inTriangle(Index triangle) const {
    return {spans_.data() + triangle_begin_[triangle], spans_.data() + triangle_begin_[triangle + 1]};
  }
  // Calls `see(span)` for each span of the arc in counter-clockwise order.
  template <class See>
  void ofArc(Index arc, See see) const {
    for (Index i = arc_begin_[arc]; i < arc_begin_[arc + 1]; ++i) see(spans_[in_arc_[i]]);
  }

 private:
  void cutGates(const Mesh& mesh, double radius);
  void pair();
  void follow(const Mesh& mesh, const Region& region, Index arc, std::vector<Span>& spans) const;
  void sort(const std::vector<Span>& spans, std::size_t triangles);

  std::vector<Span> spans_;  // by triangle
  std::vector<Index> triangle_begin_, in_arc_, arc_begin_;
  std::vector<Gate> gates_;
  std::vector<Index> gate_begin_;
};

}  // namespace stopwalk::floor
