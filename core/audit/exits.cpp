#include "core/audit/exits.h"

#include <limits>
#include <string>
#include <unordered_map>

#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::audit {
namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kWithin_mm = 1;

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

Exit exitAt(std::size_t door, std::size_t room, const geometry::Polygon& outline, Point at, double width) {
  const Segment wall = wallAt(outline, at);
  const Point middle = geometry::nearestPoint(wall, at), along = geometry::unit(wall.b - wall.a);
  const Point inwards =
      geometry::signedArea(outline) > 0 ? geometry::leftOf(along) : -geometry::leftOf(along);
  return {door,
          room,
          {middle - (width / 2) * along, middle + (width / 2) * along},
          middle + kWithin_mm * inwards};
}

}  // namespace

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
    if (outline.size() >= 3) exits.push_back(exitAt(i, room, outline, door.at, door.width));
  }
  return exits;
}

}  // namespace stopwalk::audit
