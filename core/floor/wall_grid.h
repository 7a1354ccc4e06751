#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

#include "core/floor/mesh.h"
#include "core/geometry/box.h"
#include "core/geometry/segment.h"

namespace stopwalk::floor {

// The mesh's walls and obstacle corners by place, on one uniform grid, for questions such as "what is within
// 305 mm of here".
class WallGrid {
 public:
  using Index = Mesh::Index;

  explicit WallGrid(const Mesh& mesh);

  // Calls `see(wall)` for each wall that may come within `reach` of the segment from `p` to `q`; a wall may
  // be seen more than once.
  template <class See>
  void wallsNear(Point p, Point q, double reach, See see) const {
    cellsNear(p, q, reach, [&](int first, int last) {
      for (std::int32_t i = wall_begin_[first]; i < wall_begin_[last + 1]; ++i) see(walls_[i]);
      return true;
    });
  }

  // For each that may meet the box.
  template <class See>
  void wallsIn(const geometry::Box& box, See see) const {
    const int first = std::max(row(box.low.y), 0), last = std::min(row(box.high.y), rows_ - 1);
    for (int r = first; r <= last; ++r) wallsInRow(r, box.low.x, box.high.x, see);
  }

  // As wallsNear for obstacle corners, each once: `see(corner, at)`. Stops when it returns false.
  template <class See>
  bool cornersNear(Point p, Point q, double reach, See see) const {
    return cellsNear(p, q, reach, [&](int first, int last) {
      for (std::int32_t i = corner_begin_[first]; i < corner_begin_[last + 1]; ++i)
        if (!see(corners_[i].corner, corners_[i].at)) return false;
      return true;
    });
  }

  // Whether every obstacle corner, except for two, keeps `least` from the segment.
  bool cornersKeepFrom(Segment s, double least, Index except = Mesh::kNone, Index or_for = Mesh::kNone) const;

  // Distance from `p`, or from all of the segment, to the nearest wall if that is under `reach`, else
  // `reach`.
  double clearance(Point p, double reach) const;
  double clearance(Segment s, double reach) const;

  // Rows of cells downwards from `y`, for rays.
  int rowAt(double y) const { return std::clamp(row(y), -1, rows_); }
  double topOfRow(int row) const { return low_.y + (row + 1) * cell_; }
  template <class See>
  void wallsInRow(int row, double from_x, double to_x, See see) const {
    if (row < 0 || row >= rows_) return;
    const int first = std::max(column(from_x), 0), last = std::min(column(to_x), columns_ - 1);
    if (first > last) return;
    const std::int32_t end = wall_begin_[row * columns_ + last + 1];
    for (std::int32_t i = wall_begin_[row * columns_ + first]; i < end; ++i) see(walls_[i]);
  }

 private:
  struct Corner {
    Index corner;
    Point at;
  };

  // std::floor, without a call; what is far outside the grid stays outside, and is no more than an int holds.
  static int wholeBelow(double x) {
    const double near = std::clamp(x, -1e9, 1e9);
    const int whole = static_cast<int>(near);
    return whole - (near < whole);
  }
  int column(double x) const { return wholeBelow((x - low_.x) * cells_per_mm_); }
  int row(double y) const { return wholeBelow((y - low_.y) * cells_per_mm_); }

  // The cells that the segment, widened by `reach`, may touch: row by row, the part of the segment in that
  // row's band, as `see(first, last)`. Stops when it returns false.
  template <class See>
  bool cellsNear(Point p, Point q, double reach, See see) const {
    if (p.y > q.y) std::swap(p, q);
    const int first = std::max(row(p.y - reach), 0), last = std::min(row(q.y + reach), rows_ - 1);
    const double dy = q.y - p.y;
    const double slope = dy > 0 ? (q.x - p.x) / dy : 0;
    const double low_x = std::min(p.x, q.x), high_x = std::max(p.x, q.x);
    for (int r = first; r <= last; ++r) {
      double from = low_x, to = high_x;
      if (dy > cell_) {
        const double bottom = low_.y + r * cell_ - reach, top = low_.y + (r + 1) * cell_ + reach;
        const double x0 = p.x + slope * std::clamp(bottom - p.y, 0.0, dy),
                     x1 = p.x + slope * std::clamp(top - p.y, 0.0, dy);
        from = std::min(x0, x1);
        to = std::max(x0, x1);
      }
      const int c0 = std::max(column(from - reach), 0), c1 = std::min(column(to + reach), columns_ - 1);
      if (c0 <= c1 && !see(r * columns_ + c0, r * columns_ + c1)) return false;
    }
    return true;
  }

  const Mesh* mesh_;
  double cell_ = 1, cells_per_mm_ = 1;
  Point low_;
  int columns_ = 0, rows_ = 0;
  std::vector<std::int32_t> wall_begin_, walls_, corner_begin_;
  std::vector<Corner> corners_;
};

}  // namespace stopwalk::floor
