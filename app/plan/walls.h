#pragma once

#include <cstddef>
#include <optional>
#include <string>

#include "core/layout/layout.h"

// What hangs on walls and footprints finds its place there.
namespace stopwalk::plan {

// So near a wall, a thing goes onto it; farther out it stands on a post.
inline constexpr double kFromWall_mm = 600;

// The unit vector to the inside of a polygon's side.
geometry::Point inward(const geometry::Polygon& outline, geometry::Segment side);
// A direction in degrees from +x, in [0, 360); whole where it is within rounding of it.
double degreesOf(geometry::Point direction);

// A place on the inside face of a room's wall.
struct OnWall {
  std::size_t room = 0;
  geometry::Segment wall;  // the whole side
  geometry::Point at;
  double faces = 0;  // degrees, into the room
};

// The wall nearest to `at` and within `most_mm`; of two that share a line, the one whose room `at` is in.
std::optional<OnWall> nearestWall(const layout::Layout& layout, geometry::Point at, double most_mm);

// The id of the room behind the wall there, or `outside`.
std::string roomBehind(const layout::Layout& layout, const OnWall& place);

// A door of this width moved along the wall so that it does not run past the wall's ends.
geometry::Point doorWithin(const OnWall& place, double width);

// A place on the side of a footprint, in its own frame, and the direction that looks away from it.
struct OnFootprint {
  geometry::Point at;
  double faces = 270;
};
OnFootprint nearestSide(const layout::Footprint& footprint, geometry::Point in_frame);

}  // namespace stopwalk::plan
