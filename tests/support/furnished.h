#pragma once

#include <cstdint>

#include "core/layout/layout.h"

namespace stopwalk::support {

// A random layout with what the drawers of layouts leave out, each by chance: ways out of the building, of
// which some are narrow or locked after hours, a room out of doors, hazards round machines, tape checks
// between any two places, findings that are let stand. The same seed gives the same.
layout::Layout furnished(layout::Layout layout, std::uint64_t seed);

}  // namespace stopwalk::support
