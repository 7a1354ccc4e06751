#include "core/floor/contours.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace stopwalk::floor {
namespace {

// A side of a cell of four samples: from sample (column, row) to the right, or up.
struct Side {
  int column, row;
  bool up;
  auto operator<=>(const Side&) const = default;
};

// Pieces of contour of one level, by the sides on which they end; each side ends at most two.
class Pieces {
 public:
  void add(Side a, Side b) {
    const int piece = static_cast<int>(ends_.size());
    ends_.push_back({a, b});
    taken_.push_back(false);
    for (const Side side : {a, b}) {
      auto& at = of_side_.try_emplace(side, std::array{-1, -1}).first->second;
      (at[0] < 0 ? at[0] : at[1]) = piece;
    }
  }

  // Whole lines of sides: first those with ends, then the closed ones.
  std::vector<std::vector<Side>> lines() {
    std::vector<std::vector<Side>> lines;
    for (const auto& [side, pieces] : of_side_)
      if (pieces[1] < 0 && !taken_[pieces[0]]) lines.push_back(from(side));
    for (std::size_t piece = 0; piece < ends_.size(); ++piece)
      if (!taken_[piece]) lines.push_back(from(ends_[piece][0]));
    return lines;
  }

 private:
  std::vector<Side> from(Side side) {
    std::vector<Side> line{side};
    for (int piece = next(side); piece >= 0; piece = next(side)) {
      taken_[piece] = true;
      side = ends_[piece][0] == side ? ends_[piece][1] : ends_[piece][0];
      line.push_back(side);
    }
    return line;
  }
  int next(Side side) const {
    for (const int piece : of_side_.at(side))
      if (piece >= 0 && !taken_[piece]) return piece;
    return -1;
  }

  std::vector<std::array<Side, 2>> ends_;
  std::vector<bool> taken_;
  std::map<Side, std::array<int, 2>> of_side_;
};

// The lengths at a cell's corners, counter-clockwise from its lower left; none unless the cell is whole.
std::optional<std::array<double, 4>> cellAt(const ReachMap& map, int c, int r) {
  if (!map.openRight(c, r) || !map.openRight(c, r + 1) || !map.openUp(c, r) || !map.openUp(c + 1, r))
    return std::nullopt;
  const auto a = map.length_mm(c, r), b = map.length_mm(c + 1, r), d = map.length_mm(c + 1, r + 1),
             e = map.length_mm(c, r + 1);
  if (!a || !b || !d || !e) return std::nullopt;
  return std::array{*a, *b, *d, *e};
}

// Adds the pieces of the contour at `level` in the cell.
void cross(const std::array<double, 4>& corners, int c, int r, double level, Pieces& pieces) {
  const std::array<Side, 4> sides{Side{c, r, false}, Side{c + 1, r, true}, Side{c, r + 1, false},
                                  Side{c, r, true}};
  std::vector<Side> crossed;
  for (int i = 0; i < 4; ++i)
    if ((corners[i] < level) != (corners[(i + 1) % 4] < level)) crossed.push_back(sides[i]);
  if (crossed.size() == 2) pieces.add(crossed[0], crossed[1]);
  if (crossed.size() < 4) return;
  // A saddle: the middle says which opposite corners are joined.
  const double middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
  const bool first_with_middle = (corners[0] < level) == (middle < level);
  pieces.add(crossed[0], crossed[first_with_middle ? 1 : 3]);
  pieces.add(crossed[2], crossed[first_with_middle ? 3 : 1]);
}

Point placeOn(const ReachMap& map, Side side, double level) {
  const int c = side.column + (side.up ? 0 : 1), r = side.row + (side.up ? 1 : 0);
  const double from = *map.length_mm(side.column, side.row), to = *map.length_mm(c, r);
  const Point a = map.at(side.column, side.row), b = map.at(c, r);
  return a + (level - from) / (to - from) * (b - a);
}

}  // namespace

std::vector<Contour> contoursOf(const ReachMap& map, double interval_mm) {
  std::map<int, Pieces> of_level;
  for (int r = 0; r + 1 < map.rows(); ++r)
    for (int c = 0; c + 1 < map.columns(); ++c) {
      const auto corners = cellAt(map, c, r);
      if (!corners) continue;
      const auto [least, most] = std::minmax_element(corners->begin(), corners->end());
      const int last = static_cast<int>(std::floor(*most / interval_mm));
      for (int i = std::max(1, static_cast<int>(std::ceil(*least / interval_mm))); i <= last; ++i)
        cross(*corners, c, r, i * interval_mm, of_level[i]);
    }
  std::vector<Contour> contours;
  for (auto& [multiple, pieces] : of_level)
    for (const std::vector<Side>& sides : pieces.lines()) {
      Contour contour{multiple, {}};
      for (const Side& side : sides) contour.line.push_back(placeOn(map, side, multiple * interval_mm));
      contours.push_back(std::move(contour));
    }
  return contours;
}

Midway midwayOf(const std::vector<Point>& line) {
  double whole = 0;
  for (std::size_t i = 1; i < line.size(); ++i) whole += distance(line[i - 1], line[i]);
  double gone = 0;
  for (std::size_t i = 1; i < line.size(); ++i) {
    const double piece = distance(line[i - 1], line[i]);
    if (piece > 0 && gone + piece >= whole / 2) {
      const Point along = (1 / piece) * (line[i] - line[i - 1]);
      return {line[i - 1] + (whole / 2 - gone) * along, along};
    }
    gone += piece;
  }
  return {line.front(), {1, 0}};
}

}  // namespace stopwalk::floor
