#pragma once

#include <cstdint>
#include <vector>

#include "core/floor/covered.h"
#include "core/floor/mesh.h"
#include "core/floor/wall_grid.h"
#include "core/geometry/box.h"

namespace stopwalk::floor {

// Built this much smaller than asked, so that a gap of exactly twice the clearance, or a thousandth of a
// millimetre less, is open; lengths are measured at the clearance asked for.
inline constexpr double kBuildLess_mm = 0.0005;
// What rounding may take from a distance: far below kBuildLess_mm, far above double precision at 10 km.
inline constexpr double kRounding_mm = 1e-5;

// The clearance that a region for `clearance` is built with; never zero, so that touching things stay shut.
double builtAt(double clearance);

// Whether `u` lies counter-clockwise between the unit vectors `from` and `to`, which are at most half a turn
// apart.
inline bool between(Point from, Point u, Point to, double slack) {
  return cross(from, u) >= -slack && cross(u, to) >= -slack && dot(u, from) + dot(u, to) >= -slack;
}

// W(c): the points of the floor at least c from every wall, jamb and solid; its boundary as straight pieces
// and true arcs. Local coordinates of the mesh. Cost n log n. The mesh and grid must outlive it.
class Region {
 public:
  using Index = Mesh::Index;
  static constexpr Index kNone = -1;

  struct Piece {
    bool arc = false;
    Index corner = kNone;  // arc: its centre; straight: the wall's end where it begins
    Index other = kNone;   // straight: the wall's other end
    // Arc: unit vectors from the centre, counter-clockwise from `from` to `to`, under half a turn. It is
    // travelled, with the region on the left, from `to` to `from`. Straight: the ends of the piece.
    Point from, to;
    double angle = 0;  // of an arc
    // Whether an arc faces `u`, a vector from its centre, or comes as near to it as `slack` radians.
    bool faces(Point u, double slack = 1e-9) const { return between(from, u, to, slack * length(u)); }
    Index next = kNone;  // the piece that follows along the boundary
    Index part = kNone;  // of the region: pieces of one connected part have one number
  };

  Region(const Mesh& mesh, const WallGrid& grid, double clearance);

  double radius() const { return radius_; }
  const std::vector<Piece>& pieces() const { return pieces_; }
  Index parts() const { return parts_; }

  // Whether the point lies in the region (closed).
  bool holds(Point p) const;
  // The connected part that a point of the region lies in; kNone if it is alone (no boundary below it).
  Index partAt(Point p) const;
  // Where a piece ends and begins, as points.
  Point beginOf(const Piece& piece) const;
  Point endOf(const Piece& piece) const;
  // Pieces along the wall, or round the corner.
  struct Range {
    Index first, last;
  };
  Range alongWall(Index wall) const { return {wall_first_[wall], wall_first_[wall + 1]}; }
  Range roundCorner(Index corner) const { return {corner_first_[corner], corner_first_[corner + 1]}; }

 private:
  void addAlong(Index wall, Index a, Index b);
  void addRound(Index corner);
  bool gapsRound(Index corner);
  geometry::Box boxOfGaps(Point v) const;
  void link();
  void join();
  Index pieceBelow(Point p) const;
  Index pieceAt(Index wall, Point place) const;

  const Mesh* mesh_;
  const WallGrid* grid_;
  double radius_;
  std::vector<Piece> pieces_;
  std::vector<Index> wall_first_, corner_first_;
  Index parts_ = 0;
  // Of the circle round a corner: the angles, and the unit vectors at both.
  struct Gap {
    Interval angles;
    Point from, to;
  };
  // Kept between calls only to spare their memory.
  std::vector<Interval> covered_, unrolled_, free_;
  std::vector<Gap> gaps_;
};

}  // namespace stopwalk::floor
