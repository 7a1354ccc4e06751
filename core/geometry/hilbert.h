#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/point.h"

namespace stopwalk::geometry {

// The points' indices in an order in which neighbours in the list are near each other in the plan.
std::vector<std::size_t> hilbertOrder(const std::vector<Point>& points);

}  // namespace stopwalk::geometry
