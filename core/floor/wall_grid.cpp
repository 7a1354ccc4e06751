#include "core/floor/wall_grid.h"

namespace stopwalk::floor {

namespace {

// From (cell, item) pairs to one list with the beginnings of each cell's part.
void pack(const std::vector<std::pair<std::int32_t, std::int32_t>>& pairs, int cells,
          std::vector<std::int32_t>& begin, std::vector<std::int32_t>& items) {
  begin.assign(static_cast<std::size_t>(cells) + 1, 0);
  for (const auto& p : pairs) ++begin[p.first + 1];
  for (int c = 0; c < cells; ++c) begin[c + 1] += begin[c];
  items.resize(pairs.size());
  std::vector<std::int32_t> next(begin.begin(), begin.end() - 1);
  for (const auto& p : pairs) items[next[p.first]++] = p.second;
}

}  // namespace

WallGrid::WallGrid(const Mesh& mesh) : mesh_(&mesh) {
  const auto& pts = mesh.corners();
  Point low{1e300, 1e300}, high{-1e300, -1e300};
  for (const Mesh::Wall& w : mesh.walls()) {
    for (Index c : {w.a, w.b}) {
      low = {std::min(low.x, pts[c].x), std::min(low.y, pts[c].y)};
      high = {std::max(high.x, pts[c].x), std::max(high.y, pts[c].y)};
    }
  }
  if (mesh.walls().empty()) low = high = {0, 0};
  low_ = low;
  const double width = high.x - low.x, depth = high.y - low.y;
  // About one wall a cell, yet not finer than a body nor so fine that long walls fill the memory.
  cell_ = std::max({500.0, std::sqrt(width * depth / static_cast<double>(4 * mesh.walls().size() + 64))});
  cells_per_mm_ = 1 / cell_;
  columns_ = column(high.x) + 1;
  rows_ = row(high.y) + 1;
  wall_begin_.assign(static_cast<std::size_t>(columns_) * rows_ + 1, 0);
  std::vector<std::pair<std::int32_t, std::int32_t>> pairs;
  pairs.reserve(mesh.walls().size() * 4);
  for (std::size_t i = 0; i < mesh.walls().size(); ++i) {
    const Mesh::Wall& w = mesh.walls()[i];
    cellsNear(pts[w.a], pts[w.b], 1e-3, [&](int first, int last) {
      for (int cell = first; cell <= last; ++cell) pairs.emplace_back(cell, static_cast<std::int32_t>(i));
      return true;
    });
  }
  pack(pairs, columns_ * rows_, wall_begin_, walls_);
  pairs.clear();
  for (std::size_t i = 0; i < pts.size(); ++i) {
    if (!mesh.isObstacle(static_cast<Index>(i))) continue;
    const int cell =
        std::clamp(row(pts[i].y), 0, rows_ - 1) * columns_ + std::clamp(column(pts[i].x), 0, columns_ - 1);
    pairs.emplace_back(cell, static_cast<std::int32_t>(i));
  }
  std::vector<std::int32_t> corners;
  pack(pairs, columns_ * rows_, corner_begin_, corners);
  corners_.reserve(corners.size());
  for (const Index c : corners) corners_.push_back({c, pts[c]});
}

bool WallGrid::cornersKeepFrom(Segment s, double least, Index except, Index or_for) const {
  const Point along = s.b - s.a;
  const double size = squaredLength(along), square = least * least;
  return cornersNear(s.a, s.b, least, [&](Index corner, Point at) {
    if (corner == except || corner == or_for) return true;
    const Point v = at - s.a;
    const double off = cross(along, v);
    if (off * off > square * size) return true;
    const double t = size > 0 ? std::clamp(dot(v, along) / size, 0.0, 1.0) : 0.0;
    return squaredLength(v - t * along) >= square;
  });
}

double WallGrid::clearance(Point p, double reach) const {
  double least = reach;
  const auto& pts = mesh_->corners();
  wallsNear(p, p, reach, [&](std::int32_t w) {
    const Mesh::Wall& wall = mesh_->walls()[w];
    least = std::min(least, distance(Segment{pts[wall.a], pts[wall.b]}, p));
  });
  return least;
}

double WallGrid::clearance(Segment s, double reach) const {
  double least = reach;
  const auto& pts = mesh_->corners();
  wallsNear(s.a, s.b, reach, [&](std::int32_t w) {
    const Mesh::Wall& wall = mesh_->walls()[w];
    least = std::min(least, distance(Segment{pts[wall.a], pts[wall.b]}, s));
  });
  return least;
}

}  // namespace stopwalk::floor
