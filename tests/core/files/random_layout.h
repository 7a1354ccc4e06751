#pragma once

#include <cstdint>

#include "core/layout/layout.h"

namespace stopwalk::files {

// A layout that may be read, with awkward numbers and texts; it need not be one that can be built.
layout::Layout randomLayout(std::uint64_t seed, layout::LengthUnit unit);

}  // namespace stopwalk::files
