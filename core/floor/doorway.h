#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/floor/plan.h"
#include "core/floor/room_walls.h"
#include "core/layout/layout.h"

namespace stopwalk::floor {

inline constexpr double kDoorOnWall_mm = 20;
inline constexpr double kThickestWall_mm = 1000;
inline constexpr double kRoomOverlap_mm = 1;

// A stretch of a room's outline that is open.
struct Opening {
  WallEdge edge;
  Point from, to;
  double from_t = 0, to_t = 0;  // along the edge
};

// A side of a passage through a thick wall.
struct Jamb {
  Segment wall;
  Point outward;  // unit
};

// A door's way through the wall, were it open.
struct Doorway {
  std::vector<Passage> passages;
  std::vector<Opening> openings;
  std::vector<Jamb> jambs;
};

struct DoorPlan {
  std::optional<Doorway> way;   // none: a fault, a door to `outside`, or one to a room that is left out
  std::string fault;            // what is wrong with it, a sentence; empty if nothing
  std::string which;            // which of its faults that is (core/layout/which.h)
  std::vector<Opening> covers;  // what it takes up of the rooms' outlines, open or not; empty if on no wall
};

// Works out one door, shut or not. `first` and `second` index the rooms; none: not a room that is built.
DoorPlan planDoor(const layout::Layout& layout, std::size_t door, std::optional<std::size_t> first,
                  std::optional<std::size_t> second, const RoomWalls& walls);

}  // namespace stopwalk::floor
