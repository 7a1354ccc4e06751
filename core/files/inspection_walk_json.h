#pragma once

#include <string>

#include "core/planning/round_order.h"

namespace stopwalk::files {

// One object: `start`, `closed`, `hours`, `length_m`, `bound_m`, `shortest`, `stops` with `leg_m`, `left_out`
// with `why`. Lengths as docs/command-line.md has them.
std::string inspectionWalkJson(const planning::InspectionWalk& walk, const inspection::RoundWalk& how);

}  // namespace stopwalk::files
