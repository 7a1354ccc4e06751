#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/geometry/point.h"
#include "core/layout/layout.h"

// Where a poster hangs, and so what its reader faces.
namespace stopwalk::poster {

struct Viewer {
  geometry::Point at;              // on the wall's inside face
  double up_deg = 90;              // the direction that the reader looks in, in the plan
  geometry::Point stands() const;  // an arm's length before the wall
};

// On the wall of the room that is nearest to the place. Nothing if the room has no walls.
std::optional<Viewer> viewerNear(const layout::Layout& layout, std::size_t room, geometry::Point place);
// On the wall that is faced when looking that way, as near as there is one, in the middle of its longest free
// stretch; the drawing is turned by the direction asked for.
std::optional<Viewer> viewerLooking(const layout::Layout& layout, std::size_t room, double up_deg);
// Where nothing was said: the middle of the longest stretch of wall that no door, machine or fixture takes.
std::optional<Viewer> usualViewer(const layout::Layout& layout, std::size_t room);
// On each wall, in the order of the outline without repeats, in the middle of its longest free stretch.
std::vector<Viewer> viewersOnWalls(const layout::Layout& layout, std::size_t room);

}  // namespace stopwalk::poster
