#include "tests/outside/oracle_geodesic.h"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>

#include <algorithm>
#include <array>
#include <limits>
#include <optional>
#include <stdexcept>

namespace stopwalk::outside {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Traits = CGAL::Surface_mesh_shortest_path_traits<Kernel, Mesh>;
using Paths = CGAL::Surface_mesh_shortest_path<Traits>;

struct FaceInfo {
  int crossings = -1;  // constraints between it and the outside; odd: in a piece
  Mesh::Face_index face;
  bool inPiece() const { return crossings % 2 == 1; }
};
using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<Mesh::Vertex_index, Kernel>;
using FaceInfoBase = CGAL::Triangulation_face_base_with_info_2<FaceInfo, Kernel>;
using FaceBase = CGAL::Constrained_triangulation_face_base_2<Kernel, FaceInfoBase>;
using Structure = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
using Triangulation = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure>;

// Without hair-thin edges and corners that do not turn: CGAL's inexact constructions stumble over them.
Polygon cleaned(const Polygon& ring) {
  constexpr double kShort_mm = 0.002, kStraight_mm = 1e-6;
  Polygon out;
  for (const Point p : ring)
    if (out.empty() || distance(out.back(), p) > kShort_mm) out.push_back(p);
  while (out.size() > 3 && distance(out.back(), out.front()) <= kShort_mm) out.pop_back();
  for (std::size_t i = 0; i < out.size() && out.size() > 3;) {
    const Point a = out[(i + out.size() - 1) % out.size()], b = out[(i + 1) % out.size()];
    const bool straight = std::abs(cross(out[i] - a, b - a)) <= kStraight_mm * distance(a, b);
    if (straight)
      out.erase(out.begin() + static_cast<std::ptrdiff_t>(i));
    else
      ++i;
  }
  return out;
}

void addRing(const Polygon& ring, Triangulation& triangulation) {
  std::vector<Kernel::Point_2> points;
  for (const Point p : cleaned(ring)) points.emplace_back(p.x, p.y);
  triangulation.insert_constraint(points.begin(), points.end(), true);
}

// Flood from outside, one more crossing behind each constrained edge.
void countCrossings(Triangulation& triangulation) {
  std::vector<Triangulation::Face_handle> now{triangulation.infinite_face()}, next;
  for (int crossings = 0; !now.empty(); ++crossings, now.swap(next), next.clear())
    while (!now.empty()) {
      const auto face = now.back();
      now.pop_back();
      if (face->info().crossings >= 0) continue;
      face->info().crossings = crossings;
      for (int i = 0; i < 3; ++i)
        (triangulation.is_constrained({face, i}) ? next : now).push_back(face->neighbor(i));
    }
}

}  // namespace

struct OracleGeodesic::Inside {
  Triangulation triangulation;
  Mesh mesh;

  explicit Inside(const std::vector<Piece>& pieces) {
    for (const Piece& piece : pieces) {
      addRing(piece.outer, triangulation);
      for (const Polygon& hole : piece.holes) addRing(hole, triangulation);
    }
    countCrossings(triangulation);
    for (const auto v : triangulation.finite_vertex_handles())
      v->info() = mesh.add_vertex(Kernel::Point_3(v->point().x(), v->point().y(), 0));
    for (const auto f : triangulation.finite_face_handles()) {
      if (!f->info().inPiece()) continue;
      f->info().face = mesh.add_face(f->vertex(0)->info(), f->vertex(1)->info(), f->vertex(2)->info());
      if (f->info().face == Mesh::null_face()) throw std::runtime_error("a piece touches itself in a point");
    }
  }

  // A face of the pieces that holds the point.
  std::optional<Mesh::Face_index> faceAt(Point p) const {
    const auto found = triangulation.locate(Kernel::Point_2(p.x, p.y));
    if (found == nullptr || triangulation.is_infinite(found) || !found->info().inPiece()) return std::nullopt;
    return found->info().face;
  }

  struct Location {
    Paths::Face_location at;
    double off = 0;  // from the point asked for
  };

  // The place in the face, or the nearest to it; a hair inside, for a source on a border edge is too much for
  // CGAL.
  Location locationIn(Mesh::Face_index face, Point p) const {
    // CGAL counts barycentric coordinates from the source of the face's halfedge on.
    const auto edge = mesh.halfedge(face);
    std::array<Point, 3> corner;
    std::size_t i = 0;
    for (const auto v : {mesh.source(edge), mesh.target(edge), mesh.target(mesh.next(edge))})
      corner[i++] = {mesh.point(v).x(), mesh.point(v).y()};
    const auto& [a, b, c] = corner;
    const double whole = cross(b - a, c - a);
    std::array<double, 3> part{cross(c - b, p - b) / whole, cross(a - c, p - c) / whole,
                               cross(b - a, p - a) / whole};
    double sum = 0;
    for (double& k : part) sum += k = std::max(k, 1e-6);
    for (double& k : part) k /= sum;
    return {{face, {part[0], part[1], part[2]}}, distance(part[0] * a + part[1] * b + part[2] * c, p)};
  }

  Paths::Face_location locate(Point p) const {
    if (const auto face = faceAt(p)) return locationIn(*face, p).at;
    Location best;
    best.off = std::numeric_limits<double>::infinity();
    for (const auto face : mesh.faces())
      if (const Location here = locationIn(face, p); here.off < best.off) best = here;
    return best.at;
  }
};

OracleGeodesic::OracleGeodesic(const std::vector<Piece>& pieces)
    : inside_(std::make_unique<Inside>(pieces)) {}
OracleGeodesic::~OracleGeodesic() = default;
OracleGeodesic::OracleGeodesic(OracleGeodesic&&) noexcept = default;

bool OracleGeodesic::holds(Point p) const {
  return inside_->faceAt(p).has_value();
}

std::vector<double> OracleGeodesic::lengths(const std::vector<Point>& sources,
                                            const std::vector<Point>& targets) const {
  Paths paths(inside_->mesh);
  for (const Point source : sources) {
    const auto from = inside_->locate(source);
    paths.add_source_point(from.first, from.second);
  }
  paths.build_sequence_tree();
  std::vector<double> out;
  for (const Point target : targets) {
    const auto to = inside_->locate(target);
    out.push_back(paths.shortest_distance_to_source_points(to.first, to.second).first);
  }
  return out;
}

}  // namespace stopwalk::outside
