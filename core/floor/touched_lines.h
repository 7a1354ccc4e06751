#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/floor/plan.h"

namespace stopwalk::floor {

// The lines of the plan that the outlines meet otherwise than end to end, those that these meet, and so on. A
// line that is met is cut there, on the lattice: so each piece of it may lie another millionth of a
// millimetre off, however far from the outlines. Solids with one of the outlines are left out. None: very
// many.
std::optional<std::vector<Segment>> linesTouched(const Plan& plan, std::span<const Polygon> outlines);

}  // namespace stopwalk::floor
