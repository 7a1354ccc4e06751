#pragma once

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
  // inside looking out.
  struct Gate {
    Point right, left;
    Point along;                 // unit, from right to left
    Index beyond = Mesh::kNone;  // the triangle it leads to; kNone if no walk can pass
    int entered = 0;             // which of that triangle's edges it is
  };
  const Gate& gate(Index triangle, int edge) const {
    return gates_[3 * static_cast<std::size_t>(triangle) + edge];
  }

  struct Range {
    const Span* first;
    const Span* last;
    const Span* begin() const { return first; }
    const Span* end() const { return last; }
  };
  // In counter-clockwise order.
  Range ofArc(Index arc) const {
    return {spans_.data() + arc_begin_[arc], spans_.data() + arc_begin_[arc + 1]};
  }
  Range inTriangle(Index t) const {
    return {sorted_.data() + triangle_begin_[t], sorted_.data() + triangle_begin_[t + 1]};
  }

 private:
  void cutGates(const Mesh& mesh, double radius);
  void follow(const Mesh& mesh, const Region& region, Index arc);

  std::vector<Span> spans_, sorted_;
  std::vector<Index> arc_begin_, triangle_begin_;
  std::vector<Gate> gates_;
};

}  // namespace stopwalk::floor
