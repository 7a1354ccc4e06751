#include "app/poster/viewer.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "app/plan/walls.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using geometry::Point;
using geometry::Segment;
using geometry::Stretch;

constexpr double kArm_mm = 450;     // the reader before the wall: common practice
constexpr double kReader_mm = 300;  // half of a standing circle: what a person takes, 600 mm
constexpr double kOnWall_mm = 300;
constexpr double kBeside_mm = 150;  // half of what a device on the wall takes
constexpr double kFrame_mm = 50;    // from the poster's edge to what stands beside it

struct Wall {
  Segment line;
  Point out;
  Stretch free;  // along the line, mm: the longest without doors and where one can stand before it
};

// What of the wall a thing takes that has a corner nearer to it than this.
void take(std::vector<Stretch>& taken, const Wall& wall, const geometry::Polygon& thing, double depth_mm) {
  const geometry::Frame frame = geometry::frameOf(wall.line);
  double low = std::numeric_limits<double>::infinity(), high = -low, nearest = low;
  for (const Point& corner : thing) {
    const Point p = frame.in(corner);
    low = std::min(low, p.x);
    high = std::max(high, p.x);
    nearest = std::min(nearest, std::abs(p.y));
  }
  if (nearest < depth_mm) taken.push_back({low - kFrame_mm, high + kFrame_mm});
}

geometry::Polygon around(Point p) {
  return {{p.x - kBeside_mm, p.y - kBeside_mm},
          {p.x + kBeside_mm, p.y - kBeside_mm},
          {p.x + kBeside_mm, p.y + kBeside_mm},
          {p.x - kBeside_mm, p.y + kBeside_mm}};
}

Stretch longestFree(double length, std::vector<Stretch> taken) {
  // What lies beyond the wall's ends takes nothing of it.
  for (Stretch& t : taken) t = {std::clamp(t.from, 0.0, length), std::clamp(t.to, 0.0, length)};
  taken.push_back({length, length});
  std::ranges::sort(taken, {}, &Stretch::from);
  Stretch best{0, 0};  // and so it stays where all is taken
  double free_from = 0;
  for (const Stretch& t : taken) {
    if (t.from - free_from > best.to - best.from) best = {free_from, t.from};
    free_from = std::max(free_from, t.to);
  }
  return best;
}

std::vector<Wall> wallsOf(const layout::Layout& layout, std::size_t room) {
  const geometry::Polygon outline = geometry::withoutRepeats(layout.rooms[room].outline);
  std::vector<Wall> walls;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    Wall wall{geometry::edgeOf(outline, i), {}, {}};
    wall.out = -plan::inward(outline, wall.line);
    std::vector<Stretch> taken;
    const Point along = geometry::unit(wall.line.b - wall.line.a);
    for (const layout::Door& d : layout.doors)
      take(taken, wall, {d.at - 0.5 * d.width * along, d.at + 0.5 * d.width * along}, kArm_mm);
    for (const layout::Machine& m : layout.machines)
      take(taken, wall, layout::outlineInPlan(m.footprint, m.at, m.turn), kArm_mm + kReader_mm);
    for (const layout::Fixture& f : layout.fixtures)
      take(taken, wall, layout::outlineInPlan(f.footprint, f.at, f.turn), kArm_mm + kReader_mm);
    for (const layout::Device& d : layout.devices) take(taken, wall, around(d.at), kOnWall_mm);
    for (const layout::Phone& p : layout.phones) take(taken, wall, around(p.at), kOnWall_mm);
    wall.free = longestFree(geometry::length(wall.line.b - wall.line.a), taken);
    walls.push_back(wall);
  }
  return walls;
}

double freeLength(const Wall& wall) {
  return wall.free.to - wall.free.from;
}

// Of walls that are taken whole the longest is still the best.
std::pair<double, double> roomOn(const Wall& wall) {
  return {freeLength(wall), geometry::distance(wall.line.a, wall.line.b)};
}

Point middleOfFree(const Wall& wall) {
  if (freeLength(wall) == 0) return geometry::at(wall.line, 0.5);
  const double length = geometry::distance(wall.line.a, wall.line.b);
  return geometry::at(wall.line, (wall.free.from + wall.free.to) / 2 / length);
}

// In a door's opening nothing hangs: beside it, on the nearer side that the wall has.
Point besideDoors(const layout::Layout& layout, const Wall& wall, Point at) {
  const geometry::Frame frame = geometry::frameOf(wall.line);
  const double length = geometry::distance(wall.line.a, wall.line.b);
  double x = frame.in(at).x;
  for (const layout::Door& d : layout.doors) {
    const Point door = frame.in(d.at);
    const double half = d.width / 2 + kBeside_mm;
    if (std::abs(door.y) > kArm_mm || std::abs(x - door.x) >= half) continue;
    const double left = door.x - half, right = door.x + half;
    x = right > length || (x < door.x && left >= 0) ? std::max(left, 0.0) : right;
  }
  return frame.out({x, 0});
}

}  // namespace

Point Viewer::stands() const {
  return at - kArm_mm * geometry::direction(up_deg);
}

std::optional<Viewer> viewerNear(const layout::Layout& layout, std::size_t room, geometry::Point place) {
  const std::vector<Wall> walls = wallsOf(layout, room);
  if (walls.empty()) return std::nullopt;
  const Wall& wall =
      *std::ranges::min_element(walls, {}, [&](const Wall& w) { return geometry::distance(w.line, place); });
  return Viewer{besideDoors(layout, wall, geometry::nearestPoint(wall.line, place)),
                plan::degreesOf(wall.out)};
}

std::optional<Viewer> viewerLooking(const layout::Layout& layout, std::size_t room, double up_deg) {
  const std::vector<Wall> walls = wallsOf(layout, room);
  if (walls.empty()) return std::nullopt;
  const Point up = geometry::direction(up_deg);
  // Of walls faced equally well, within a degree or two, the one with the most room for a poster.
  const Wall& wall = *std::ranges::max_element(walls, {}, [&](const Wall& w) {
    return std::pair(std::round(50 * geometry::dot(w.out, up)), roomOn(w));
  });
  return Viewer{middleOfFree(wall), up_deg};
}

std::optional<Viewer> usualViewer(const layout::Layout& layout, std::size_t room) {
  const std::vector<Wall> walls = wallsOf(layout, room);
  if (walls.empty()) return std::nullopt;
  const Wall& wall = *std::ranges::max_element(walls, {}, roomOn);
  return Viewer{middleOfFree(wall), plan::degreesOf(wall.out)};
}

std::vector<Viewer> viewersOnWalls(const layout::Layout& layout, std::size_t room) {
  std::vector<Viewer> viewers;
  for (const Wall& wall : wallsOf(layout, room))
    viewers.push_back({middleOfFree(wall), plan::degreesOf(wall.out)});
  return viewers;
}

}  // namespace stopwalk::poster
