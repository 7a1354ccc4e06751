#pragma once

#include <optional>
#include <string>

#include "core/geometry/point.h"
#include "core/layout/layout.h"

namespace stopwalk::app {

// `x,y` in this unit, or in feet and inches where the layout is drawn in them, as a point of the plan.
std::optional<geometry::Point> pointOf(const std::string& text, layout::LengthUnit unit);

}  // namespace stopwalk::app
