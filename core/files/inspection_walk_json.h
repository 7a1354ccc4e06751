#pragma once

#include <string>

#include "core/floor/plan.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::files {

// One object with a line end: `start`, `closed`, `hours`, `length_m`, `bound_m`, `shortest`, `stops` with
// `leg_m`, `left_out` with `why`. Lengths as docs/command-line.md has them.
std::string inspectionWalkJson(const planning::InspectionWalk& walk, const std::string& start, bool closed,
                               floor::Hours hours);

}  // namespace stopwalk::files
