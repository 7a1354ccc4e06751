#pragma once

#include <string>

#include "core/geometry/point.h"
#include "core/layout/layout.h"

// Numbers as the sentences of drawing faults give them, the same in every locale.
namespace stopwalk::floor {

// Such as `1.234 m`, or feet and inches where the layout is drawn in them.
std::string lengthOf(double mm, layout::LengthUnit unit, double limit_mm = 0);
// Such as `(9.000, 3.500) m`, or `(29' 6", 11' 6")`.
std::string place(geometry::Point in_mm, layout::LengthUnit unit);

}  // namespace stopwalk::floor
