#include "tests/support/plain_plan.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

namespace stopwalk::support {
namespace {

using namespace geometry;
using floor::Passage;
using floor::Plan;

// A stretch of a room's outline that is open. Its ends are the very points of the passage.
struct Opening {
  std::size_t room, edge;
  Point from, to;
  double start;  // distance of `from` along the edge
};

Segment edgeOf(const Polygon& outline, std::size_t edge) {
  return {outline[edge], outline[(edge + 1) % outline.size()]};
}

double distanceTo(const Segment& s, Point p) {
  const Point along = s.b - s.a;
  const double t =
      squaredLength(along) > 0 ? std::clamp(dot(p - s.a, along) / squaredLength(along), 0.0, 1.0) : 0;
  return distance(s.a + t * along, p);
}

double signedArea(const Polygon& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment e = edgeOf(outline, i);
    twice += cross(e.a - outline[0], e.b - outline[0]);
  }
  return twice / 2;
}

std::size_t nearestEdge(const Polygon& outline, Point p) {
  std::size_t best = 0;
  for (std::size_t i = 1; i < outline.size(); ++i)
    if (distanceTo(edgeOf(outline, i), p) < distanceTo(edgeOf(outline, best), p) - 1e-6) best = i;
  return best;
}

// How far along `ray` from `from` the line through the edge is met.
double metAt(const Segment& edge, Point from, Point ray) {
  const Point along = edge.b - edge.a;
  const double across = cross(ray, along);
  return std::abs(across) < 1e-9 * length(along) ? std::numeric_limits<double>::infinity()
                                                 : cross(edge.a - from, along) / across;
}

// The edge of `outline` that the opening a-b, carried along `ray`, meets with its whole width.
std::optional<std::size_t> edgeMet(const Polygon& outline, Segment opening, Point ray) {
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment edge = edgeOf(outline, i);
    if (distance(edge.a, edge.b) < 1) continue;
    const double ta = metAt(edge, opening.a, ray), tb = metAt(edge, opening.b, ray);
    if (std::min(ta, tb) < -1 || std::max(ta, tb) > 1000) continue;
    if (distanceTo(edge, opening.a + ta * ray) < 0.001 && distanceTo(edge, opening.b + tb * ray) < 0.001)
      return i;
  }
  return std::nullopt;
}

std::size_t roomNamed(const layout::Layout& layout, const std::string& id) {
  const auto found = std::ranges::find(layout.rooms, id, &layout::Room::id);
  return static_cast<std::size_t>(found - layout.rooms.begin());
}

bool shut(const layout::Door& door, floor::Hours hours) {
  return door.second == layout::kOutside || door.locked == layout::Locked::Always ||
         (door.locked == layout::Locked::AfterHours && hours == floor::Hours::After);
}

Opening openingIn(const Plan& plan, std::size_t room, std::size_t edge, Segment part) {
  const Segment whole = edgeOf(plan.rooms[room], edge);
  const Point along = unit(whole.b - whole.a);
  const double a = dot(part.a - whole.a, along), b = dot(part.b - whole.a, along);
  return a < b ? Opening{room, edge, part.a, part.b, a} : Opening{room, edge, part.b, part.a, b};
}

void openDoor(const layout::Layout& layout, std::size_t index, Plan& plan, std::vector<Opening>& openings) {
  const layout::Door& door = layout.doors[index];
  const std::size_t first = roomNamed(layout, door.first), second = roomNamed(layout, door.second);
  const std::size_t edge = nearestEdge(plan.rooms[first], door.at);
  const Segment wall = edgeOf(plan.rooms[first], edge);
  const Point along = unit(wall.b - wall.a);
  const Point middle = wall.a + dot(door.at - wall.a, along) * along;
  const Segment mouth{middle - door.width / 2 * along, middle + door.width / 2 * along};
  const Point out = signedArea(plan.rooms[first]) > 0 ? -leftOf(along) : leftOf(along);
  const auto met = edgeMet(plan.rooms[second], mouth, out);
  if (!met) return;
  const Segment far = edgeOf(plan.rooms[second], *met);
  Segment end{mouth.a + metAt(far, mouth.a, out) * out, mouth.b + metAt(far, mouth.b, out) * out};
  if (distance(mouth.a, end.a) < 1e-6 && distance(mouth.b, end.b) < 1e-6) end = mouth;
  plan.passages.push_back({index, mouth, end});
  openings.push_back(openingIn(plan, first, edge, mouth));
  openings.push_back(openingIn(plan, second, *met, end));
  if (!(mouth.a == end.a)) plan.walls.push_back({mouth.a, end.a});
  if (!(mouth.b == end.b)) plan.walls.push_back({mouth.b, end.b});
}

// The parts of a room's edge that stand: what lies between its openings.
void standWalls(std::size_t room, std::size_t edge, std::vector<Opening> openings, Plan& plan) {
  std::erase_if(openings, [&](const Opening& o) { return o.room != room || o.edge != edge; });
  std::ranges::sort(openings, {}, &Opening::start);
  const Segment whole = edgeOf(plan.rooms[room], edge);
  if (whole.a == whole.b) return;
  Point from = whole.a;
  for (const Opening& o : openings) {
    plan.walls.push_back({from, o.from});
    from = o.to;
  }
  plan.walls.push_back({from, whole.b});
}

}  // namespace

Plan plainPlan(const layout::Layout& layout, floor::Hours hours) {
  Plan plan;
  for (const layout::Room& room : layout.rooms) plan.rooms.push_back(room.outline);
  std::vector<Opening> openings;
  for (std::size_t i = 0; i < layout.doors.size(); ++i)
    if (!shut(layout.doors[i], hours)) openDoor(layout, i, plan, openings);
  for (std::size_t room = 0; room < plan.rooms.size(); ++room)
    for (std::size_t edge = 0; edge < plan.rooms[room].size(); ++edge) standWalls(room, edge, openings, plan);
  for (std::size_t i = 0; i < layout.machines.size(); ++i) {
    const layout::Machine& m = layout.machines[i];
    plan.solids.push_back({outlineInPlan(m.footprint, m.at, m.turn), m.height, true, i});
  }
  for (std::size_t i = 0; i < layout.fixtures.size(); ++i) {
    const layout::Fixture& f = layout.fixtures[i];
    plan.solids.push_back({outlineInPlan(f.footprint, f.at, f.turn), f.height, false, i});
  }
  return plan;
}

}  // namespace stopwalk::support
