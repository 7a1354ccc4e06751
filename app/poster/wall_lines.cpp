#include "app/poster/wall_lines.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plan/walls.h"
#include "app/poster/sizes.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kThickestWall_mm = 700;  // of the shop: another room this near shares the wall
constexpr double kPiece_mm = 100;         // of the shop: how finely a wall is looked at

// Whether the ray of a wall's thickness meets another room's outline.
bool roomBehind(const layout::Layout& layout, std::size_t room, Segment through) {
  for (std::size_t r = 0; r < layout.rooms.size(); ++r) {
    if (r == room || layout.rooms[r].outdoors) continue;
    const geometry::Polygon& other = layout.rooms[r].outline;
    for (std::size_t i = 0; i < other.size(); ++i)
      if (geometry::distance(through, geometry::edgeOf(other, i)) < geometry::kTouch_mm) return true;
  }
  return false;
}

// Between two rooms behind the same wall there is the thickness of theirs: no open air.
void coverChinks(std::vector<bool>& structural) {
  const auto widest = static_cast<std::size_t>(kThickestWall_mm / kPiece_mm);
  for (std::size_t from = 1; from < structural.size(); ++from) {
    if (!structural[from] || structural[from - 1]) continue;
    std::size_t to = from;
    while (to < structural.size() && structural[to]) ++to;
    if (to == structural.size() || to - from > widest) continue;
    while (from < to) structural[from++] = false;
  }
}

WallLine drawnLine(const PlanFrame& frame, Segment stretch, bool structural) {
  const double width = structural ? kStructuralWall_mm : kPartition_mm;
  QLineF line(frame(stretch.a), frame(stretch.b));
  return {line, width};
}

}  // namespace

std::vector<WallLine> wallLines(const layout::Layout& layout, std::size_t room, const PlanFrame& frame) {
  const geometry::Polygon outline = geometry::withoutRepeats(layout.rooms[room].outline);
  std::vector<WallLine> lines;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment wall = geometry::edgeOf(outline, i);
    const Point out = -plan::inward(outline, wall);
    const double length = geometry::distance(wall.a, wall.b);
    const int pieces = std::max(1, static_cast<int>(std::ceil(length / kPiece_mm)));
    const auto structural = [&](int k) {
      const Point middle = geometry::at(wall, (k + 0.5) / pieces);
      return !roomBehind(layout, room, {middle + 1.0 * out, middle + kThickestWall_mm * out});
    };
    std::vector<bool> is_thick;
    for (int k = 0; k < pieces; ++k) is_thick.push_back(structural(k));
    coverChinks(is_thick);
    for (int from = 0; from < pieces;) {
      const bool thick = is_thick[from];
      int to = from + 1;
      while (to < pieces && is_thick[to] == thick) ++to;
      WallLine drawn = drawnLine(
          frame, {geometry::at(wall, double(from) / pieces), geometry::at(wall, double(to) / pieces)}, thick);
      // Out by half its width, and as much longer at the room's corners, where two meet.
      const QPointF outward = frame(wall.a + out) - frame(wall.a);
      drawn.line.translate(outward / std::hypot(outward.x(), outward.y()) * drawn.width / 2);
      const QPointF along = (drawn.line.p2() - drawn.line.p1()) / std::max(drawn.line.length(), 1e-9);
      if (from == 0) drawn.line.setP1(drawn.line.p1() - along * drawn.width);
      if (to == pieces) drawn.line.setP2(drawn.line.p2() + along * drawn.width);
      lines.push_back(drawn);
      from = to;
    }
  }
  return lines;
}

std::vector<DoorWay> doorWays(const layout::Layout& layout, std::size_t room, const PlanFrame& frame) {
  const geometry::Polygon outline = geometry::withoutRepeats(layout.rooms[room].outline);
  const std::string& id = layout.rooms[room].id;
  std::vector<DoorWay> ways;
  for (std::size_t d = 0; d < layout.doors.size(); ++d) {
    const layout::Door& door = layout.doors[d];
    if ((door.first != id && door.second != id) || outline.size() < 3) continue;
    Segment wall;
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i)
      if (const double away = geometry::distance(geometry::edgeOf(outline, i), door.at); away < nearest) {
        nearest = away;
        wall = geometry::edgeOf(outline, i);
      }
    if (nearest > 2 * kThickestWall_mm) continue;
    const Point middle = geometry::nearestPoint(wall, door.at);
    const Point half = 0.5 * door.width * geometry::unit(wall.b - wall.a);
    const QPointF outward = frame(middle - plan::inward(outline, wall)) - frame(middle);
    ways.push_back({d,
                    QLineF(frame(geometry::nearestPoint(wall, middle - half)),
                           frame(geometry::nearestPoint(wall, middle + half))),
                    outward / std::hypot(outward.x(), outward.y()),
                    door.first == id ? door.second : door.first});
  }
  return ways;
}

}  // namespace stopwalk::poster
