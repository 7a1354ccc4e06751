#include "tests/bench/grid_baseline.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "tests/outside/oracle_region.h"

namespace stopwalk::bench {
namespace {

constexpr double kFar = std::numeric_limits<double>::infinity();
constexpr double kLongestStep_mm = 1000;

double squaredDistance(const floor::Segment& s, Point p) {
  const Point along = s.b - s.a;
  const double whole = dot(along, along);
  const double t = whole > 0 ? std::clamp(dot(p - s.a, along) / whole, 0.0, 1.0) : 0;
  const Point away = s.a + t * along - p;
  return dot(away, away);
}

}  // namespace

GridBaseline::GridBaseline(const floor::Plan& plan, double clearance_mm, double cell_mm)
    : cell_mm_(cell_mm), low_{kFar, kFar} {
  const std::vector<floor::Segment> edges = outside::everyEdge(plan);
  Point high{-kFar, -kFar};
  for (const floor::Segment& edge : edges)
    for (const Point p : {edge.a, edge.b}) {
      low_ = {std::min(low_.x, p.x), std::min(low_.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
  // One row of cells more on each side, never free: a neighbour is always there.
  low_ = low_ - Point{cell_mm, cell_mm};
  columns_ = static_cast<Cell>((high.x - low_.x) / cell_mm) + 2;
  rows_ = static_cast<Cell>((high.y - low_.y) / cell_mm) + 2;
  free_.assign(std::size_t{columns_} * rows_, 0);
  for (const floor::Polygon& room : plan.rooms) fill(room, true);
  for (const floor::Passage& passage : plan.passages) fill(outlineOf(passage), true);
  for (const floor::Solid& solid : plan.solids) fill(solid.outline, false);
  for (const floor::Segment& edge : edges) keepAwayFrom(edge, clearance_mm);
}

Point GridBaseline::middleOf(Cell column, Cell row) const {
  return low_ + Point{(column + 0.5) * cell_mm_, (row + 0.5) * cell_mm_};
}

// Row by row between the outline's crossings.
void GridBaseline::fill(const floor::Polygon& outline, bool free) {
  std::vector<double> crossings;
  const auto cellOf = [&](double at, double low) {
    return static_cast<Cell>(std::max(0.0, std::ceil((at - low) / cell_mm_ - 0.5)));
  };
  double bottom = kFar, top = -kFar;
  for (const Point p : outline) bottom = std::min(bottom, p.y), top = std::max(top, p.y);
  if (outline.empty()) return;
  for (Cell row = cellOf(bottom, low_.y); row < std::min(rows_, cellOf(top, low_.y)); ++row) {
    const double y = middleOf(0, row).y;
    crossings.clear();
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
      const Point a = outline[i], b = outline[j];
      if ((a.y > y) != (b.y > y)) crossings.push_back(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y));
    }
    std::ranges::sort(crossings);
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
      const auto begin = free_.begin() + std::size_t{row} * columns_;
      std::fill(begin + cellOf(crossings[i], low_.x), begin + cellOf(crossings[i + 1], low_.x), free);
    }
  }
}

void GridBaseline::keepAwayFrom(const floor::Segment& edge, double clearance_mm) {
  const auto cellsOf = [&](double a, double b, double low, Cell count) {
    const double first = (std::min(a, b) - clearance_mm - low) / cell_mm_;
    const double last = (std::max(a, b) + clearance_mm - low) / cell_mm_;
    return std::array{static_cast<Cell>(std::max(0.0, first)), std::min(count, static_cast<Cell>(last) + 1)};
  };
  const auto [left, right] = cellsOf(edge.a.x, edge.b.x, low_.x, columns_);
  const auto [bottom, top] = cellsOf(edge.a.y, edge.b.y, low_.y, rows_);
  for (Cell row = bottom; row < top; ++row)
    for (Cell column = left; column < right; ++column)
      if (squaredDistance(edge, middleOf(column, row)) < clearance_mm * clearance_mm)
        free_[std::size_t{row} * columns_ + column] = 0;
}

std::optional<GridBaseline::Cell> GridBaseline::nearestFree(Point p) const {
  const auto round = [&](double at, double low) { return static_cast<std::int64_t>((at - low) / cell_mm_); };
  const std::int64_t column = round(p.x, low_.x), row = round(p.y, low_.y);
  const auto reach = static_cast<std::int64_t>(kLongestStep_mm / cell_mm_);
  std::optional<Cell> best;
  double shortest = kFar;
  for (std::int64_t y = std::max<std::int64_t>(0, row - reach); y <= row + reach && y < rows_; ++y)
    for (std::int64_t x = std::max<std::int64_t>(0, column - reach); x <= column + reach && x < columns_;
         ++x) {
      const auto cell = static_cast<Cell>(y * columns_ + x);
      const double away = distance(p, middleOf(static_cast<Cell>(x), static_cast<Cell>(y)));
      if (free_[cell] && away < shortest) shortest = away, best = cell;
    }
  return best;
}

// Lengths in cells. No step is shorter than a cell, so what lies in one bucket, a cell wide, is settled
// together, and three buckets in turn hold all that waits.
std::vector<float> GridBaseline::search(Cell from) const {
  struct Step {
    std::int64_t to;
    float length;
  };
  const std::int64_t row = columns_;
  constexpr float kDiagonal = std::numbers::sqrt2_v<float>;
  const Step steps[] = {{1, 1},
                        {-1, 1},
                        {row, 1},
                        {-row, 1},
                        {row + 1, kDiagonal},
                        {row - 1, kDiagonal},
                        {-row + 1, kDiagonal},
                        {-row - 1, kDiagonal}};
  std::vector<float> length(free_.size(), std::numeric_limits<float>::infinity());
  std::array<std::vector<Cell>, 3> buckets;
  length[from] = 0;
  buckets[0].push_back(from);
  for (std::size_t at = 0; !(buckets[0].empty() && buckets[1].empty() && buckets[2].empty()); ++at) {
    std::vector<Cell>& settled = buckets[at % 3];
    for (const Cell cell : settled) {
      if (static_cast<std::size_t>(length[cell]) < at) continue;  // was reached by a shorter way before
      for (const Step& step : steps) {
        const auto next = static_cast<Cell>(cell + step.to);
        const float there = length[cell] + step.length;
        if (!free_[next] || there >= length[next]) continue;
        length[next] = there;
        buckets[static_cast<std::size_t>(there) % 3].push_back(next);
      }
    }
    settled.clear();
  }
  return length;
}

std::vector<double> GridBaseline::lengths(Point from, const std::vector<Point>& to) const {
  std::vector<double> all(to.size(), kFar);
  const std::optional<Cell> source = nearestFree(from);
  if (!source) return all;
  const std::vector<float> cells = search(*source);
  const auto stepTo = [&](Point p, Cell cell) {
    return distance(p, middleOf(cell % columns_, cell / columns_));
  };
  for (std::size_t i = 0; i < to.size(); ++i)
    if (const std::optional<Cell> target = nearestFree(to[i]))
      all[i] = stepTo(from, *source) + cells[*target] * cell_mm_ + stepTo(to[i], *target);
  return all;
}

}  // namespace stopwalk::bench
