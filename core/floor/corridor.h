#pragma once

#include <span>
#include <vector>

#include "core/floor/door_bounds.h"
#include "core/floor/plan.h"
#include "core/floor/walks.h"

namespace stopwalk::floor {

// Two ends, and the longest walk between them that matters.
struct Span {
  DoorBounds::End from, to;
  double length = 0;
};

// Of places: each point and each line.
std::vector<DoorBounds::End> endsOf(std::span<const Place> places, const DoorBounds& doors);

// The floor with what a walk of one of the spans may come within `reach` of, by the bounds of the doors.
// Rooms left out are no floor; what is left out of the rooms is free floor.
Plan corridorOf(const Plan& plan, const DoorBounds& doors, std::span<const Span> spans, double reach);

}  // namespace stopwalk::floor
