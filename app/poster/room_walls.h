#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "app/poster/viewer.h"
#include "core/geometry/segment.h"

// The walls of a room, as one chooses among them where its poster hangs.
namespace stopwalk::poster {

struct RoomWall {
  geometry::Segment line;             // a side of the outline
  Viewer viewer;                      // in the middle of its longest free stretch
  std::vector<std::string> doors_to;  // ids of the rooms behind, or `outside`
};

// In the order of the outline, repeats left out; none if it has no sides.
std::vector<RoomWall> roomWalls(const layout::Layout& layout, std::size_t room);
// The nearest to a place; nothing if there are no walls.
std::optional<std::size_t> nearestWall(const std::vector<RoomWall>& walls, geometry::Point place);

// A place hangs on the room's walls no more if they are all farther than this: it was of another drawing.
inline constexpr double kOffWall_mm = 1000;
// Where a poster hangs that was hung at the place: on the nearest wall, or, where that has gone away,
// nothing.
std::optional<Viewer> viewerStillAt(const layout::Layout& layout, std::size_t room, geometry::Point place);

}  // namespace stopwalk::poster
