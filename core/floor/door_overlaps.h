#pragma once

#include <cstddef>
#include <tuple>
#include <utility>
#include <vector>

#include "core/floor/doorway.h"
#include "core/floor/room_walls.h"

namespace stopwalk::floor {

inline constexpr double kDoorOverlap_mm = 1;  // doors that share no more of a wall stand side by side

// Which doors take up the same stretch of a room's outline, as a door does that was copied and given another
// lock.
class DoorOverlaps {
 public:
  DoorOverlaps(const std::vector<DoorPlan>& doors, const RoomWalls& walls);

  // Pairs of doors that lie over one another, the lesser index first, sorted: each door that begins within
  // another is in one. Cost n log n, however many lie in one opening.
  std::vector<std::pair<std::size_t, std::size_t>> pairs() const;

  // For each door, whether one of `marked` lies over it, itself or another.
  std::vector<bool> underAny(const std::vector<bool>& marked) const;

 private:
  struct Cover {
    std::size_t room, edge;
    double from, to;  // mm along the edge
    std::size_t door;
    auto operator<=>(const Cover&) const = default;
  };
  std::size_t doors_;
  std::vector<Cover> covers_;  // sorted
};

}  // namespace stopwalk::floor
