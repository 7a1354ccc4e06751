#pragma once

#include <cstddef>
#include <optional>
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
  // Of a door to an outdoor room: where one comes out, `inwards` straight into the open.
  struct Beyond {
    geometry::Segment opening;
    geometry::Point inwards;
  };
  std::optional<Beyond> beyond = {};
};

std::vector<Exit> exitsOf(const Context& context);

// Where a body so wide stands that gets out by the exit: before a door to `outside`, with nothing where it
// passes; in the outdoor room, just beyond the door to one, so that the way there leads through the door.
// Places every 20 mm across the opening are looked at.
std::vector<geometry::Point> gatesBefore(const Context& context, const Exit& exit, double width_mm);

}  // namespace stopwalk::audit
