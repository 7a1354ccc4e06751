#pragma once

#include "app/edits/edit.h"
#include "core/geometry/point.h"

namespace stopwalk::edits {

// Makes the distance between two places of the underlay picture, given in the plan, `true_mm`; the first
// stays where it is.
Edit scaleUnderlay(const layout::Layout& layout, geometry::Point first, geometry::Point second,
                   double true_mm);

}  // namespace stopwalk::edits
