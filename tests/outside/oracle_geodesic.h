#pragma once

#include <memory>
#include <vector>

#include "tests/outside/geos_shapes.h"

namespace stopwalk::outside {

// Shortest ways inside pieces of the plane, from CGAL alone: its constrained Delaunay triangulation, and on
// that its exact geodesics (window propagation, Surface_mesh_shortest_path).
class OracleGeodesic {
 public:
  explicit OracleGeodesic(const std::vector<Piece>& pieces);
  ~OracleGeodesic();
  OracleGeodesic(OracleGeodesic&&) noexcept;

  bool holds(Point p) const;
  // From the nearest of the sources to each target; places outside are taken to the nearest point of the
  // pieces first.
  std::vector<double> lengths(const std::vector<Point>& sources, const std::vector<Point>& targets) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace stopwalk::outside
