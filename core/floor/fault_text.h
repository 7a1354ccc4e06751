#pragma once

#include <string>

#include "core/geometry/point.h"

// Numbers as the sentences of drawing faults give them, the same in every locale.
namespace stopwalk::floor {

// Such as `1.234 m`.
std::string metres(double mm);
// Such as `(9.000, 3.500) m`.
std::string place(geometry::Point in_mm);

}  // namespace stopwalk::floor
