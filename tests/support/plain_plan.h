#pragma once

#include "core/floor/plan.h"
#include "core/layout/layout.h"

namespace stopwalk::support {

// The floor of a layout, built the slow and obvious way from the definitions: the twin that buildPlan is held
// against, and what the walks are tested on without it. Only for layouts whose doors can all be built; it
// finds no faults.
floor::Plan plainPlan(const layout::Layout& layout, floor::Hours hours = floor::Hours::Open);

}  // namespace stopwalk::support
