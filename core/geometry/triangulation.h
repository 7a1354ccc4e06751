#pragma once

#include <array>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/geometry/point.h"

namespace stopwalk::geometry {

// A constrained Delaunay triangulation of lines drawn anyhow: they may cross, touch, overlap and repeat.
// Where two cross, a corner is added; a line that passes a corner nearer than a hundred-thousandth of a
// millimetre goes through it. Exact predicates on the lattice of lattice.h, so collinear and touching lines
// are routine. Cost about n log n.
class Triangulation {
 public:
  using Index = std::int32_t;
  static constexpr Index kNone = -1;

  enum Mark : std::uint8_t { kFree = 0, kDrawn = 1, kBlocking = 2 };

  // Edge i lies opposite corner i, from corner i+1 to corner i+2, counter-clockwise.
  struct Triangle {
    std::array<Index, 3> corner;
    std::array<Index, 3> neighbour;
    std::array<std::uint8_t, 3> mark;  // kDrawn, kBlocking or both
  };

  struct Line {
    Point a, b;
    Mark mark = kBlocking;
  };

  // Coordinates below 2^30 mm in size: the corners about them all lie up to three times as far out.
  explicit Triangulation(const std::vector<Line>& lines);

  const std::vector<Point>& corners() const { return corners_; }
  const std::vector<Triangle>& triangles() const { return triangles_; }
  // One triangle at each corner.
  Index triangleAt(Index corner) const { return at_[corner]; }
  // A triangle that holds `p` (boundary included), found by walking from `hint`; kNone outside the hull. `p`
  // on the lattice.
  Index locate(Point p, Index hint) const;

 private:
  Index insert(Point p, Index hint);
  Index insertInTriangle(Point p, Index t);
  Index insertOnEdge(Point p, Index t, int edge);
  // The corner that a drawn edge is split at for a crossing at about `p`.
  Index splitEdge(Point p, Index t, int edge);
  // Which edges of two triangles that were turned may be wrong then: after a corner was put in, only those
  // opposite it.
  enum class Doubt { OppositeTheCorner, All };
  void legalize(Doubt doubt);
  void flip(Index t, int edge);
  void draw(Index a, Index b, Mark mark);
  // The next corner on the way from `a` to `b` after freeing or meeting what is in the way.
  Index drawStep(Index a, Index b, Mark mark);
  // A triangle and the ends of the edge by which a line leaves it.
  struct Gap {
    Index triangle, right, left;
  };
  Gap leave(Index a, Index b, Index& along) const;
  Index meet(Index a, Index b, const Gap& gap, int edge);
  bool markEdge(Index a, Index b, Mark mark);
  void clearWay(Index a, Index b, std::vector<std::pair<Index, Index>> crossed);
  bool findEdge(Index a, Index b, Index& t, int& edge) const;
  void setNeighbour(Index t, Index old, Index now);
  bool nearLine(Index a, Index b, Index c) const;

  std::vector<Point> corners_;
  std::vector<Triangle> triangles_;
  std::vector<Index> at_;
  std::vector<std::pair<Index, int>> suspects_;  // edges to be held against the circle; none between calls
};

inline int after(int i) {
  return i == 2 ? 0 : i + 1;
}
inline int before(int i) {
  return i == 0 ? 2 : i - 1;
}

}  // namespace stopwalk::geometry
