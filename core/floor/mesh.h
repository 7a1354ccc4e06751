#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/triangulation.h"

namespace stopwalk::floor {

// Where local coordinates are counted from: the middle of all there is, in whole millimetres.
Point originOf(const Plan& plan);

// The floor cut into triangles, whatever the clearance: corners are ends of walls and corners of solids,
// edges either block or not. Coordinates are local (plan minus `origin`), on the lattice of
// core/geometry/lattice.h.
class Mesh {
 public:
  using Index = geometry::Triangulation::Index;
  static constexpr Index kNone = -1;

  struct Triangle {
    std::array<Index, 3> corner;
    std::array<Index, 3> neighbour;  // kNone where the edge opposite blocks or the floor ends
  };
  // A blocking edge, floor on its left (`left`) or right or both.
  struct Wall {
    Index a, b;
    bool left, right;
  };

  explicit Mesh(const Plan& plan) : Mesh(plan, originOf(plan)) {}
  Mesh(const Plan& plan, Point origin);

  Point local(Point in_plan) const;
  Point plan(Point in_local) const { return in_local + origin_; }

  const std::vector<Point>& corners() const { return triangulation_.corners(); }
  const std::vector<Triangle>& triangles() const { return triangles_; }
  const std::vector<Wall>& walls() const { return walls_; }
  bool isFloor(Index triangle) const { return floor_[triangle] != 0; }
  // Whether anything solid ends or turns at the corner; corners where openings meet do not stand in the way.
  bool isObstacle(Index corner) const { return obstacle_[corner] != 0; }

  // The walls that end at the corner, as indices into walls().
  std::span<const Index> wallsAt(Index corner) const {
    return {spokes_.data() + spoke_begin_[corner], spokes_.data() + spoke_begin_[corner + 1]};
  }

  // A floor triangle that holds the local lattice point (boundary included), or kNone.
  Index floorTriangle(Point p) const;
  // The triangle at `corner` in the direction `u`.
  Index triangleToward(Index corner, Point u) const;

 private:
  void classify(const Plan& plan);
  void collect();
  void gatherSpokes();
  Index locate(Point p) const;

  Point origin_;
  geometry::Triangulation triangulation_;
  std::vector<Triangle> triangles_;
  std::vector<Wall> walls_;
  std::vector<std::uint8_t> floor_;
  std::vector<std::uint8_t> obstacle_;
  std::vector<Index> spoke_begin_, spokes_;
  // Where walks through the triangles begin: one triangle for each cell of a coarse grid.
  double cell_ = 1;
  Point low_;
  int columns_ = 0, rows_ = 0;
  std::vector<Index> start_;
};

}  // namespace stopwalk::floor
