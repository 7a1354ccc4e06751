#pragma once

#include <cstdint>

#include "core/layout/layout.h"

namespace stopwalk::support {

// A random layout with what shops neglect, each by chance: starts without their pins, stops that stop another
// machine or nothing, no emergency stop, devices too high or of unknown height, cut-offs that stop one room
// only and let machines run on for longer, tools that are held, setters, doors that are narrow or locked
// after hours; every third has no phone. The same seed gives the same.
layout::Layout neglected(layout::Layout layout, std::uint64_t seed);

}  // namespace stopwalk::support
