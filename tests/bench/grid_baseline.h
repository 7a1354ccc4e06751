#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "core/floor/plan.h"

namespace stopwalk::bench {

using floor::Point;

// What many would write first: the floor in square cells, of which those are free whose middle keeps the
// clearance, and Dijkstra's search over the eight neighbours of each.
class GridBaseline {
 public:
  using Cell = std::uint32_t;

  GridBaseline(const floor::Plan& plan, double clearance_mm, double cell_mm);

  // Lengths in mm, the straight steps to the nearest free cells included; infinity where there is no way.
  std::vector<double> lengths(Point from, const std::vector<Point>& to) const;

  double cell_mm() const { return cell_mm_; }
  Point low() const { return low_; }
  Cell columns() const { return columns_; }
  Cell rows() const { return rows_; }
  bool isFree(Cell column, Cell row) const { return free_[row * columns_ + column] != 0; }

 private:
  void fill(const floor::Polygon& outline, bool free);
  void keepAwayFrom(const floor::Segment& edge, double clearance_mm);
  Point middleOf(Cell column, Cell row) const;
  std::optional<Cell> nearestFree(Point p) const;
  std::vector<float> search(Cell from) const;

  double cell_mm_;
  Point low_;
  Cell columns_ = 0, rows_ = 0;
  std::vector<std::uint8_t> free_;
};

}  // namespace stopwalk::bench
