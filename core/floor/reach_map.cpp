#include "core/floor/reach_map.h"

#include <algorithm>
#include <cmath>

namespace stopwalk::floor {
namespace {

using geometry::Box;

Box boxOfFloor(const Plan& plan) {
  Box box;
  for (const Polygon& room : plan.rooms) box.add(geometry::boxOf(room));
  for (const Passage& passage : plan.passages) box.add(geometry::boxOf(outlineOf(passage)));
  return box;
}

// Walls tend to stand at round numbers; samples stand beside them.
constexpr double kAside = 0.37;  // of the step

// The samples within [low, high]: the first and their count.
struct Row {
  double first;
  int count;
};
Row samplesIn(double low, double high, double step) {
  const double first = std::ceil(low / step - kAside), last = std::floor(high / step - kAside);
  return {(first + kAside) * step, std::max(0, static_cast<int>(last - first) + 1)};
}

Sampled sampledOf(const Reach& reach) {
  switch (reach.status) {
    case WalkStatus::Walk:
      return Sampled::Walk;
    case WalkStatus::Narrow:
      return Sampled::OnlyNarrow;
    case WalkStatus::Unmeasured:
      return Sampled::OffFloor;
    case WalkStatus::Unreachable:
      return Sampled::NoWay;
  }
  return Sampled::NoWay;
}

// Calls `cross(line, along)` for each whole number `line` that the segment from (a, s) to (b, t) crosses in
// its first coordinate; `along` is the second one there.
template <class Cross>
void eachLineCrossed(double a, double s, double b, double t, int lines, Cross cross) {
  if (a > b) std::swap(a, b), std::swap(s, t);
  const int first = std::max(0, static_cast<int>(std::ceil(a)));
  const int last = std::min(lines - 1, static_cast<int>(std::floor(b)));
  for (int i = first; i <= last; ++i) {
    if (a == b) {  // along the line: both its ends are crossings
      cross(i, s);
      cross(i, t);
    } else {
      cross(i, s + (i - a) / (b - a) * (t - s));
    }
  }
}

}  // namespace

ReachMap::ReachMap(const Plan& plan, const Walks& walks, std::span<const Place> to, double step_mm)
    : step_(step_mm) {
  const Box box = boxOfFloor(plan);
  if (box.empty()) return;
  const Row x = samplesIn(box.low.x, box.high.x, step_), y = samplesIn(box.low.y, box.high.y, step_);
  if (x.count == 0 || y.count == 0) return;
  low_ = {x.first, y.first};
  columns_ = x.count;
  rows_ = y.count;
  std::vector<Point> samples;
  samples.reserve(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_));
  for (int row = 0; row < rows_; ++row)
    for (int column = 0; column < columns_; ++column) samples.push_back(at(column, row));
  for (const Reach& reach : walks.reachForAll(samples, to)) {
    states_.push_back(sampledOf(reach));
    lengths_.push_back(reach.length_mm);
    if (states_.back() == Sampled::Walk) longest_ = std::max(longest_.value_or(0), reach.length_mm);
  }
  markCrossed(plan);
}

std::optional<double> ReachMap::length_mm(int column, int row) const {
  const std::size_t i = index(column, row);
  return states_[i] == Sampled::Walk ? std::optional<double>(lengths_[i]) : std::nullopt;
}

void ReachMap::markCrossed(const Plan& plan) {
  shut_right_.assign(states_.size(), false);
  shut_up_.assign(states_.size(), false);
  for (const Segment& wall : plan.walls) markCrossed(wall);
  for (const Solid& solid : plan.solids)
    for (std::size_t i = 0; i < solid.outline.size(); ++i)
      markCrossed({solid.outline[i], solid.outline[(i + 1) % solid.outline.size()]});
}

void ReachMap::markCrossed(Segment wall) {
  const Point a = (1 / step_) * (wall.a - low_), b = (1 / step_) * (wall.b - low_);
  // What goes through a sample stands on both sides of it.
  const auto shut = [](double at, int count, auto mark) {
    for (const double before : {std::floor(at), std::ceil(at) - 1})
      if (before >= 0 && before < count) mark(static_cast<int>(before));
  };
  eachLineCrossed(a.y, a.x, b.y, b.x, rows_, [&](int row, double x) {
    shut(x, columns_, [&](int column) { shut_right_[index(column, row)] = true; });
  });
  eachLineCrossed(a.x, a.y, b.x, b.y, columns_, [&](int column, double y) {
    shut(y, rows_, [&](int row) { shut_up_[index(column, row)] = true; });
  });
}

double stepFor(const Plan& plan, std::size_t most_samples) {
  const Box box = boxOfFloor(plan);
  constexpr double kRound[] = {50, 100, 200, 250};
  if (box.empty()) return kRound[0];
  const auto fits = [&](double step) {
    const double columns = samplesIn(box.low.x, box.high.x, step).count;
    return columns * samplesIn(box.low.y, box.high.y, step).count <= static_cast<double>(most_samples);
  };
  for (const double step : kRound)
    if (fits(step)) return step;
  double step = 500;
  while (!fits(step)) step *= 2;
  return step;
}

}  // namespace stopwalk::floor
