#pragma once

#include <optional>
#include <string>

#include "core/layout/device_kind.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::planning {

struct FoundStart {
  std::optional<WalkStart> start;
  std::string why;  // a clause: it cannot be begun there
};

// A station, device or phone, by its id.
FoundStart findStart(const std::string& id, const layout::Layout& layout, const layout::DeviceKinds& kinds,
                     const floor::Plan& plan);

}  // namespace stopwalk::planning
