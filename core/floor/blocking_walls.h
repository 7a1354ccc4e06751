#pragma once

#include <vector>

#include "core/floor/doorway.h"
#include "core/floor/room_walls.h"

namespace stopwalk::floor {

// All walls that block: the rooms' outlines without the openings, and the jambs of passages. Where two
// passages meet, side by side or crossing, the jamb between them does not stand.
std::vector<Segment> blockingWalls(const RoomWalls& walls, const std::vector<const Doorway*>& open);

}  // namespace stopwalk::floor
