#pragma once

#include <optional>
#include <string>
#include <variant>

#include "core/floor/walks.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// An end of a walk as asked for: an id, or a point of the plan (mm).
using End = std::variant<std::string, geometry::Point>;

struct Measured {
  floor::Walk walk;
  std::string why_not;  // why there is no walk: a clause; empty where there is one
  std::string unknown;  // an id that does not exist, with the nearest that does; then there is nothing else
};

Measured measure(const layout::Layout& layout, const layout::DeviceKinds& kinds, const End& from,
                 const End& to, double clearance_mm = floor::kMeasuringClearance_mm,
                 floor::Hours hours = floor::Hours::Open);

}  // namespace stopwalk::audit
