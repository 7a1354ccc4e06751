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
#include <stdexcept>

namespace stopwalk::outside {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Traits = CGAL::Surface_mesh_shortest_path_traits<Kernel, Mesh>;
using Paths = CGAL::Surface_mesh_shortest_path<Traits>;

struct FaceInfo {
  int crossings = -1;  // constraints between it and the outside; odd: in the piece
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
    if (straight) out.erase(out.begin() + static_cast<std::ptrdiff_t>(i));
    else ++i;
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
  using Corners = std::array<Point, 3>;

  Mesh mesh;
  std::vector<Corners> faces;

  explicit Inside(const Piece& piece) {
    Triangulation triangulation;
    addRing(piece.outer, triangulation);
    for (const Polygon& hole : piece.holes) addRing(hole, triangulation);
    countCrossings(triangulation);
    for (const auto v : triangulation.finite_vertex_handles())
      v->info() = mesh.add_vertex(Kernel::Point_3(v->point().x(), v->point().y(), 0));
    for (const auto f : triangulation.finite_face_handles()) addFace(f);
  }

  void addFace(const Triangulation::Face_handle& face) {
    if (face->info().crossings % 2 == 0) return;
    const auto made = mesh.add_face(face->vertex(0)->info(), face->vertex(1)->info(), face->vertex(2)->info());
    if (made == Mesh::null_face()) throw std::runtime_error("the piece touches itself in a point");
    // In the order in which CGAL counts barycentric coordinates: from the source of the face's halfedge on.
    const auto edge = mesh.halfedge(made);
    Corners corners;
    std::size_t i = 0;
    for (const auto v : {mesh.source(edge), mesh.target(edge), mesh.target(mesh.next(edge))})
      corners[i++] = {mesh.point(v).x(), mesh.point(v).y()};
    faces.push_back(corners);
  }

  // The face and barycentric place of the point, or of the nearest to it where it lies just outside; a hair inside the
  // face, for a source on a border edge makes CGAL step into the face that is not there.
  Paths::Face_location locate(Point p) const {
    Paths::Face_location best;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < faces.size(); ++i) {
      const auto& [a, b, c] = faces[i];
      const double whole = cross(b - a, c - a);
      std::array<double, 3> part{cross(c - b, p - b) / whole, cross(a - c, p - c) / whole, cross(b - a, p - a) / whole};
      double sum = 0;
      for (double& k : part) sum += k = std::max(k, 1e-6);
      for (double& k : part) k /= sum;
      const Point taken = part[0] * a + part[1] * b + part[2] * c;
      if (distance(taken, p) >= least) continue;
      least = distance(taken, p);
      best = {Mesh::Face_index(static_cast<Mesh::size_type>(i)), {part[0], part[1], part[2]}};
    }
    return best;
  }
};

OracleGeodesic::OracleGeodesic(const Piece& piece) : inside_(std::make_unique<Inside>(piece)) {}
OracleGeodesic::~OracleGeodesic() = default;
OracleGeodesic::OracleGeodesic(OracleGeodesic&&) noexcept = default;

std::vector<double> OracleGeodesic::lengths(Point source, const std::vector<Point>& targets) const {
  Paths paths(inside_->mesh);
  const auto from = inside_->locate(source);
  paths.add_source_point(from.first, from.second);
  paths.build_sequence_tree();
  std::vector<double> out;
  for (const Point target : targets) {
    const auto to = inside_->locate(target);
    out.push_back(paths.shortest_distance_to_source_points(to.first, to.second).first);
  }
  return out;
}

}  // namespace stopwalk::outside
