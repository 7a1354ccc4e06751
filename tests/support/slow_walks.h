#pragma once

#include "core/floor/plan.h"

namespace stopwalk::support {

// A slow twin of floor::Walks for places that lie in the region: every common tangent of every two corners is tried against
// every wall. Shares no code with it. Infinity where there is no way.
double slowWalk(const floor::Plan& plan, double clearance_mm, geometry::Point from, geometry::Point to);

// Distance from the nearest wall or solid; negative off the floor.
double slowClearance(const floor::Plan& plan, geometry::Point p);

}  // namespace stopwalk::support
