#pragma once

#include <cstddef>
#include <vector>

#include "core/audit/context.h"
#include "core/geometry/point.h"

namespace stopwalk::audit {

// A door by which one gets out of a room into the open: to `outside` or to an outdoor room, built and not
// shut.
struct Exit {
  std::size_t door = 0;
  std::size_t room = 0;  // indoors
  geometry::Segment opening;
  geometry::Point inside;  // its middle, just within the room
};

std::vector<Exit> exitsOf(const Context& context);

}  // namespace stopwalk::audit
