#pragma once

#include <cstddef>
#include <vector>

#include "core/planning/tour.h"

// The parts of the search for the shortest tour. All work on rings, which come back to where they began.
namespace stopwalk::planning {

using Ring = std::vector<std::size_t>;

double lengthOf(const Legs& legs, const Ring& ring);

// The shortest ring. Time n^2 2^n.
Ring exactRing(const Legs& legs);

// A short ring: the nearest next, then stretches turned round and moved elsewhere while that shortens it, and
// again from rings that were cut and joined otherwise. Always the same for the same legs.
Ring searchedRing(const Legs& legs);

// No ring is shorter: 1-trees with their places weighted (Held and Karp 1970, 1971, from memory).
// `length_mm` of a ring sets how far each step goes.
double ringBound(const Legs& legs, double length_mm);

}  // namespace stopwalk::planning
