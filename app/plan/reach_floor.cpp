#include "app/plan/reach_floor.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {
namespace {

constexpr int kPieces = 4;  // of the picture to a step between samples

using Kind = ReachFloor::Kind;

// The samples round a floor, those that do not lie on it being nothing.
struct Samples {
  geometry::Point low;
  int columns = 0, rows = 0;
  std::vector<Kind> kinds;
  std::vector<double> lengths;
  std::size_t at(int column, int row) const { return static_cast<std::size_t>(row) * columns + column; }
};

Kind kindOf(floor::Sampled state) {
  switch (state) {
    case floor::Sampled::OffFloor:
      return Kind::Nothing;
    case floor::Sampled::Walk:
      return Kind::Walk;
    case floor::Sampled::OnlyNarrow:
      return Kind::Narrow;
    case floor::Sampled::NoWay:
      return Kind::NoWay;
  }
  return Kind::Nothing;
}

Samples samplesIn(const floor::ReachMap& map, const geometry::Polygon& from) {
  const geometry::Box box = geometry::boxOf(from);
  const geometry::Point low = map.at(0, 0);
  const auto cell = [&](double v, double first) {
    return static_cast<int>(std::floor((v - first) / map.step_mm()));
  };
  const int left = cell(box.low.x, low.x), bottom = cell(box.low.y, low.y);
  Samples s;
  s.low = low + map.step_mm() * geometry::Point{double(left), double(bottom)};
  s.columns = cell(box.high.x, low.x) + 2 - left;
  s.rows = cell(box.high.y, low.y) + 2 - bottom;
  s.kinds.resize(static_cast<std::size_t>(s.columns) * s.rows, Kind::Nothing);
  s.lengths.resize(s.kinds.size(), 0);
  const geometry::IndexedPolygon floor(from);
  for (int r = 0; r < s.rows; ++r)
    for (int c = 0; c < s.columns; ++c) {
      const int column = left + c, row = bottom + r;
      if (column < 0 || row < 0 || column >= map.columns() || row >= map.rows()) continue;
      if (!floor.holds(map.at(column, row))) continue;
      s.kinds[s.at(c, r)] = kindOf(map.state(column, row));
      s.lengths[s.at(c, r)] = map.length_mm(column, row).value_or(0);
    }
  return s;
}

// A sample off the floor takes the mean of its neighbours.
void spread(Samples& s) {
  const std::vector<Kind> known = s.kinds;
  for (int r = 0; r < s.rows; ++r)
    for (int c = 0; c < s.columns; ++c) {
      if (known[s.at(c, r)] != Kind::Nothing) continue;
      double sum = 0;
      int walks = 0;
      for (int y = std::max(0, r - 1); y <= std::min(s.rows - 1, r + 1); ++y)
        for (int x = std::max(0, c - 1); x <= std::min(s.columns - 1, c + 1); ++x) {
          const Kind kind = known[s.at(x, y)];
          if (kind == Kind::Walk) sum += s.lengths[s.at(x, y)], ++walks;
          if (kind != Kind::Nothing && s.kinds[s.at(c, r)] != Kind::Walk) s.kinds[s.at(c, r)] = kind;
        }
      if (walks > 0) s.lengths[s.at(c, r)] = sum / walks;
    }
}

// Of the four samples round a piece: what most of it is, and its length.
void addPiece(ReachFloor& out, const Samples& s, int column, int row) {
  const int c = column / kPieces, r = row / kPieces;
  const double x = (column % kPieces + 0.5) / kPieces, y = (row % kPieces + 0.5) / kPieces;
  std::array<double, 4> weight_of{};  // by kind
  double length = 0;
  for (const auto& [dc, dr, weight] : {std::tuple{0, 0, (1 - x) * (1 - y)}, std::tuple{1, 0, x * (1 - y)},
                                       std::tuple{0, 1, (1 - x) * y}, std::tuple{1, 1, x * y}}) {
    const Kind kind = s.kinds[s.at(c + dc, r + dr)];
    if (kind != Kind::Nothing) weight_of[kind] += weight;
    if (kind == Kind::Walk) length += weight * s.lengths[s.at(c + dc, r + dr)];
  }
  const auto most = std::max_element(weight_of.begin() + 1, weight_of.end());
  out.kinds.push_back(*most > 0 ? static_cast<Kind>(most - weight_of.begin()) : Kind::Nothing);
  const double walked = weight_of[Kind::Walk];
  out.lengths.push_back(static_cast<float>(walked > 0 ? length / walked : 0));
}

}  // namespace

ReachFloor reachFloor(const floor::ReachMap& map, const geometry::Polygon& outline,
                      const geometry::Polygon& from) {
  ReachFloor out;
  out.outline = outline;
  if (map.columns() == 0 || map.rows() == 0) return out;
  Samples s = samplesIn(map, from);
  for (int ring = 0; ring < 2; ++ring) spread(s);
  out.columns = (s.columns - 1) * kPieces;
  out.rows = (s.rows - 1) * kPieces;
  out.box.low = s.low;
  out.box.high = s.low + map.step_mm() * geometry::Point{s.columns - 1.0, s.rows - 1.0};
  for (int row = 0; row < out.rows; ++row)
    for (int column = 0; column < out.columns; ++column) addPiece(out, s, column, row);
  return out;
}

}  // namespace stopwalk::plan
