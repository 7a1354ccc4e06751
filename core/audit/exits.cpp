#include "core/audit/exits.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <unordered_map>

#include "core/audit/context.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::audit {
namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kWithin_mm = 1;  // beyond the clearance, so that rounding does not take the place away
constexpr double kApart_mm = 20;  // between two places looked at

// The wall of the room that carries the door.
Segment wallAt(const geometry::Polygon& room, Point at) {
  Segment best;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < room.size(); ++i) {
    const Segment edge = geometry::edgeOf(room, i);
    if (const double d = geometry::distance(edge, at); d < least) least = d, best = edge;
  }
  return best;
}

// The opening as wide as the door in the wall of a room that is nearest, and the way into the room.
Exit::Beyond openingInto(const geometry::Polygon& room, const layout::Door& door) {
  const Segment wall = wallAt(room, door.at);
  const Point middle = geometry::nearestPoint(wall, door.at), along = geometry::unit(wall.b - wall.a);
  const Point inwards = geometry::signedArea(room) > 0 ? geometry::leftOf(along) : -geometry::leftOf(along);
  return {{middle - (door.width / 2) * along, middle + (door.width / 2) * along}, inwards};
}

// What a body covers between the opening and the place before it.
geometry::IndexedPolygon way(const Exit::Beyond& door, Point at_opening, double width_mm) {
  const Point along = geometry::unit(door.opening.b - door.opening.a);
  const Point side = (width_mm / 2) * along, in = (width_mm / 2) * door.inwards;
  return geometry::IndexedPolygon(
      {at_opening - side, at_opening + side, at_opening + side + in, at_opening - side + in});
}

// The solids near enough to stand in the way.
std::vector<geometry::IndexedPolygon> solidsBefore(const Context& c, const Exit::Beyond& door,
                                                   double width_mm) {
  geometry::Box near = geometry::boxOf(door.opening);
  near = near.grown(width_mm);
  std::vector<geometry::IndexedPolygon> solids;
  for (const floor::Solid& solid : c.plan.solids)
    if (geometry::overlap(geometry::boxOf(solid.outline), near)) solids.emplace_back(solid.outline);
  return solids;
}

}  // namespace

std::vector<Point> gatesBefore(const Context& c, const Exit& exit, double width_mm) {
  const Exit::Beyond door = exit.beyond.value_or(Exit::Beyond{exit.opening, exit.inwards});
  const auto solids = solidsBefore(c, door, width_mm);
  const double opening_mm = geometry::distance(door.opening.a, door.opening.b);
  const double play_mm = std::max(opening_mm - width_mm, 0.0);
  const int gaps = static_cast<int>(std::ceil(play_mm / kApart_mm));
  std::vector<Point> gates;
  for (int i = 0; i <= gaps; ++i) {
    const double from_a = width_mm / 2 + (gaps > 0 ? play_mm * i / gaps : 0);
    const Point at_opening = geometry::at(door.opening, std::min(from_a / opening_mm, 1.0));
    const Point gate = at_opening + (width_mm / 2 + kWithin_mm) * door.inwards;
    if (!c.walks.keeps(gate, width_mm / 2)) continue;
    const auto passed = way(door, at_opening, width_mm);
    const auto stands = [&](const auto& solid) { return geometry::overlapDeeper(passed, solid, kWithin_mm); };
    if (std::ranges::none_of(solids, stands)) gates.push_back(gate);
  }
  return gates;
}

std::vector<Exit> exitsOf(const Context& c) {
  std::unordered_map<std::string, std::size_t> room_of;
  for (std::size_t r = 0; r < c.layout.rooms.size(); ++r) room_of.emplace(c.layout.rooms[r].id, r);

  std::vector<Exit> exits;
  for (std::size_t i = 0; i < c.layout.doors.size(); ++i) {
    const layout::Door& door = c.layout.doors[i];
    const auto first = room_of.find(door.first), second = room_of.find(door.second);
    if (first == room_of.end() || c.plan.shut[i]) continue;
    const bool first_out = c.layout.rooms[first->second].outdoors;
    const bool second_out = second == room_of.end() || c.layout.rooms[second->second].outdoors;
    if (first_out == second_out) continue;
    // What is out of doors on either side, seen from the room within.
    const std::size_t room = first_out ? second->second : first->second;
    const geometry::Polygon& outline = c.plan.rooms[room];
    if (outline.size() < 3) continue;
    const Exit::Beyond into = openingInto(outline, door);
    Exit exit{i, room, into.opening, into.inwards};
    if (second != room_of.end()) {
      const geometry::Polygon& outdoors = c.plan.rooms[first_out ? first->second : second->second];
      if (outdoors.size() < 3) continue;
      exit.beyond = openingInto(outdoors, door);
    }
    exits.push_back(std::move(exit));
  }
  return exits;
}

}  // namespace stopwalk::audit
