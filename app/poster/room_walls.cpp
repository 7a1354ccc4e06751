#include "app/poster/room_walls.h"

#include <algorithm>

#include "core/floor/doorway.h"
#include "core/geometry/polygon.h"

namespace stopwalk::poster {

std::vector<RoomWall> roomWalls(const layout::Layout& layout, std::size_t room) {
  const geometry::Polygon outline = geometry::withoutRepeats(layout.rooms[room].outline);
  const std::vector<Viewer> viewers = viewersOnWalls(layout, room);
  std::vector<RoomWall> walls;
  for (std::size_t i = 0; i < viewers.size(); ++i)
    walls.push_back({geometry::edgeOf(outline, i), viewers[i], {}});
  const std::string& id = layout.rooms[room].id;
  for (const layout::Door& door : layout.doors) {
    if (door.first != id && door.second != id) continue;
    const auto wall = nearestWall(walls, door.at);
    if (wall && geometry::distance(walls[*wall].line, door.at) <= floor::kThickestWall_mm)
      walls[*wall].doors_to.push_back(door.first == id ? door.second : door.first);
  }
  return walls;
}

std::optional<std::size_t> nearestWall(const std::vector<RoomWall>& walls, geometry::Point place) {
  if (walls.empty()) return std::nullopt;
  const auto nearest = std::ranges::min_element(
      walls, {}, [&](const RoomWall& wall) { return geometry::distance(wall.line, place); });
  return static_cast<std::size_t>(nearest - walls.begin());
}

std::optional<Viewer> viewerStillAt(const layout::Layout& layout, std::size_t room, geometry::Point place) {
  const auto viewer = viewerNear(layout, room, place);
  if (!viewer || geometry::distance(viewer->at, place) > kOffWall_mm) return std::nullopt;
  return viewer;
}

}  // namespace stopwalk::poster
