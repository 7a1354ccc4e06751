#include "core/floor/mesh.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "core/geometry/box.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/lattice.h"

namespace stopwalk::floor {

namespace {

using geometry::after;
using geometry::before;
using geometry::orientation;
using geometry::Triangulation;

std::vector<Triangulation::Line> linesOf(const Plan& plan, Point origin) {
  std::vector<Triangulation::Line> lines;
  for (const Segment& wall : plan.walls)
    lines.push_back({wall.a - origin, wall.b - origin, Triangulation::kBlocking});
  for (const Solid& solid : plan.solids) {
    for (std::size_t i = 0; i < solid.outline.size(); ++i) {
      const Point a = solid.outline[i], b = solid.outline[(i + 1) % solid.outline.size()];
      lines.push_back({a - origin, b - origin, Triangulation::kBlocking});
    }
  }
  for (const Passage& p : plan.passages) {
    for (const Segment& s : {p.first, p.second})
      lines.push_back({s.a - origin, s.b - origin, Triangulation::kDrawn});
  }
  return lines;
}

// The outlines in local coordinates.
geometry::IndexedPolygons localOutlines(const std::vector<Polygon>& outlines, Point origin) {
  std::vector<geometry::IndexedPolygon> local;
  local.reserve(outlines.size());
  for (Polygon outline : outlines) {
    for (Point& p : outline) p = p - origin;
    local.emplace_back(std::move(outline));
  }
  return geometry::IndexedPolygons(std::move(local));
}

}  // namespace

Point originOf(const Plan& plan) {
  geometry::Box box;
  for (const Polygon& room : plan.rooms)
    for (Point p : room) box.add(p);
  for (const Segment& wall : plan.walls) {
    box.add(wall.a);
    box.add(wall.b);
  }
  for (const Solid& solid : plan.solids)
    for (Point p : solid.outline) box.add(p);
  if (box.empty()) return {0, 0};
  return {std::round((box.low.x + box.high.x) / 2), std::round((box.low.y + box.high.y) / 2)};
}

Mesh::Mesh(const Plan& plan, Point origin) : origin_(origin), triangulation_(linesOf(plan, origin)) {
  classify(plan);
  collect();
  gatherSpokes();
}

void Mesh::gatherSpokes() {
  spoke_begin_.assign(corners().size() + 1, 0);
  for (const Wall& w : walls_)
    for (Index c : {w.a, w.b}) ++spoke_begin_[c + 1];
  for (std::size_t i = 0; i + 1 < spoke_begin_.size(); ++i) spoke_begin_[i + 1] += spoke_begin_[i];
  spokes_.resize(2 * walls_.size());
  std::vector<Index> next(spoke_begin_.begin(), spoke_begin_.end() - 1);
  for (std::size_t i = 0; i < walls_.size(); ++i)
    for (Index c : {walls_[i].a, walls_[i].b}) spokes_[next[c]++] = static_cast<Index>(i);
}

Point Mesh::local(Point in_plan) const {
  return geometry::onLattice(in_plan - origin_);
}

void Mesh::classify(const Plan& plan) {
  std::vector<Polygon> open = plan.rooms, solid;
  for (const Passage& p : plan.passages) open.push_back(outlineOf(p));
  for (const Solid& s : plan.solids) solid.push_back(s.outline);
  const geometry::IndexedPolygons walkable = localOutlines(open, origin_),
                                  blocked = localOutlines(solid, origin_);
  const auto& tris = triangulation_.triangles();
  const auto& pts = triangulation_.corners();
  floor_.assign(tris.size(), 2);
  std::vector<Index> patch;
  // Triangles not parted by a drawn line are floor or not together; the roundest of them is asked.
  for (std::size_t seed = 0; seed < tris.size(); ++seed) {
    if (floor_[seed] != 2) continue;
    patch = {static_cast<Index>(seed)};
    floor_[seed] = 0;
    Point inside;
    double best = -1;
    for (std::size_t next = 0; next < patch.size(); ++next) {
      const auto& t = tris[patch[next]];
      const Point a = pts[t.corner[0]], b = pts[t.corner[1]], c = pts[t.corner[2]];
      const double size = cross(b - a, c - a) / std::max({distance(a, b), distance(b, c), distance(c, a)});
      if (size > best) {
        best = size;
        inside = (1.0 / 3) * (a + b + c);
      }
      for (int e = 0; e < 3; ++e) {
        const Index n = t.neighbour[e];
        if (n == kNone || t.mark[e] != Triangulation::kFree || floor_[n] != 2) continue;
        floor_[n] = 0;
        patch.push_back(n);
      }
    }
    if (walkable.firstHolding(inside) && !blocked.anyInside(inside))
      for (Index t : patch) floor_[t] = 1;
  }
}

void Mesh::collect() {
  const auto& tris = triangulation_.triangles();
  const auto& pts = triangulation_.corners();
  triangles_.resize(tris.size());
  obstacle_.assign(pts.size(), 0);
  geometry::Box box;
  for (std::size_t i = 0; i < tris.size(); ++i) {
    triangles_[i].corner = tris[i].corner;
    for (int e = 0; e < 3; ++e) {
      const Index n = tris[i].neighbour[e];
      const bool blocks =
          (tris[i].mark[e] & Triangulation::kBlocking) != 0 || n == kNone || floor_[n] != floor_[i];
      triangles_[i].neighbour[e] = blocks || !floor_[i] ? kNone : n;
      if (!floor_[i] || !blocks) continue;
      Index a = tris[i].corner[after(e)], b = tris[i].corner[before(e)];
      obstacle_[a] = obstacle_[b] = 1;
      const bool both = n != kNone && floor_[n];
      // One with floor on both sides is taken the same way round whatever the triangles' order.
      if (both && std::tie(pts[b].x, pts[b].y) < std::tie(pts[a].x, pts[a].y)) std::swap(a, b);
      if (!both || static_cast<Index>(i) < n) walls_.push_back({a, b, true, both});
    }
    if (floor_[i])
      for (Index c : tris[i].corner) box.add(pts[c]);
  }
  if (box.empty()) return;
  low_ = box.low;
  const double width = box.high.x - box.low.x, depth = box.high.y - box.low.y;
  cell_ = std::max(1.0, std::sqrt(std::max(width * depth, 1.0) / static_cast<double>(tris.size())) * 2);
  columns_ = static_cast<int>(width / cell_) + 1;
  rows_ = static_cast<int>(depth / cell_) + 1;
  start_.assign(static_cast<std::size_t>(columns_) * rows_, kNone);
  for (std::size_t i = 0; i < tris.size(); ++i) {
    if (!floor_[i]) continue;
    const Point c = (1.0 / 3) * (pts[tris[i].corner[0]] + pts[tris[i].corner[1]] + pts[tris[i].corner[2]]);
    start_[static_cast<int>((c.y - low_.y) / cell_) * columns_ + static_cast<int>((c.x - low_.x) / cell_)] =
        static_cast<Index>(i);
  }
}

Mesh::Index Mesh::locate(Point p) const {
  Index hint = 0;
  if (p.x >= low_.x && p.y >= low_.y && columns_ > 0) {
    const int x = static_cast<int>((p.x - low_.x) / cell_), y = static_cast<int>((p.y - low_.y) / cell_);
    if (x < columns_ && y < rows_) {
      for (int back = 0; back <= x; ++back) {
        if (start_[y * columns_ + x - back] != kNone) {
          hint = start_[y * columns_ + x - back];
          break;
        }
      }
    }
  }
  return triangulation_.locate(p, hint);
}

Mesh::Index Mesh::floorTriangle(Point p) const {
  const Index t = locate(p);
  if (t == kNone || floor_[t]) return t;
  // On an edge or at a corner another triangle may be the floor's.
  const auto& tris = triangulation_.triangles();
  const auto& pts = triangulation_.corners();
  std::vector<Index> around = {t};
  for (std::size_t next = 0; next < around.size(); ++next) {
    const auto& tri = tris[around[next]];
    if (floor_[around[next]]) return around[next];
    for (int e = 0; e < 3; ++e) {
      const Index n = tri.neighbour[e];
      if (n == kNone || std::find(around.begin(), around.end(), n) != around.end()) continue;
      const Point a = pts[tri.corner[after(e)]], b = pts[tri.corner[before(e)]];
      if (std::abs(cross(b - a, p - a)) <= 1e-5 * distance(a, b)) around.push_back(n);
    }
    if (around.size() > 64) break;
  }
  return kNone;
}

Mesh::Index Mesh::triangleToward(Index corner, Point u) const {
  const auto& tris = triangulation_.triangles();
  const auto& pts = triangulation_.corners();
  const Index start = triangulation_.triangleAt(corner);
  Index t = start;
  const Point v = pts[corner];
  do {
    const auto& tri = tris[t];
    const int i = tri.corner[0] == corner ? 0 : tri.corner[1] == corner ? 1 : 2;
    if (cross(pts[tri.corner[after(i)]] - v, u) >= 0 && cross(pts[tri.corner[before(i)]] - v, u) <= 0)
      return t;
    t = tri.neighbour[after(i)];
  } while (t != kNone && t != start);
  return kNone;
}

}  // namespace stopwalk::floor
