#pragma once

#include <cstddef>
#include <string>

#include "app/edits/edit.h"

// The shape of a room. Corners count from 0 in the outline's order; wall `i` runs from corner `i` to the
// next. Doors that the room carries stay on the walls that change, at the same distance from the end that
// stays, though not past the wall's ends. What is not there changes nothing.
namespace stopwalk::edits {

Edit moveCorner(const layout::Layout& layout, const std::string& room, std::size_t corner,
                geometry::Point to);
// Parts a wall in two with a corner at `at`, on the wall or off it.
Edit addCorner(const layout::Layout& layout, const std::string& room, std::size_t wall, geometry::Point at);
// Not below three.
Edit removeCorner(const layout::Layout& layout, const std::string& room, std::size_t corner);
// Both corners of a wall.
Edit moveWall(const layout::Layout& layout, const std::string& room, std::size_t wall, geometry::Point by);

}  // namespace stopwalk::edits
