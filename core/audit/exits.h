#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/segment.h"

namespace stopwalk::audit {

class Context;

// A door by which one gets out of a room into the open: to `outside` or to an outdoor room, built and not
// shut.
struct Exit {
  std::size_t door = 0;
  std::size_t room = 0;  // indoors
  geometry::Segment opening;
  geometry::Point inwards;  // the unit vector from it straight into the room
};

std::vector<Exit> exitsOf(const Context& context);

// Where a body so wide stands before it gets straight out by the exit: nothing stands where it passes. Places
// every 20 mm across the opening are looked at.
std::vector<geometry::Point> gatesBefore(const Context& context, const Exit& exit, double width_mm);

}  // namespace stopwalk::audit
