#pragma once

#include <memory>
#include <vector>

#include "tests/outside/geos_shapes.h"

namespace stopwalk::outside {

// Shortest ways inside one piece, from CGAL alone: its constrained Delaunay triangulation, and on that its exact geodesics
// (window propagation, Surface_mesh_shortest_path).
class OracleGeodesic {
 public:
  explicit OracleGeodesic(const Piece& piece);
  ~OracleGeodesic();
  OracleGeodesic(OracleGeodesic&&) noexcept;

  // From the source to each target; all are taken to the nearest point of the piece first.
  std::vector<double> lengths(Point source, const std::vector<Point>& targets) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace stopwalk::outside
