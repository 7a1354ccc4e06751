#pragma once

#include "core/audit/profile.h"
#include "core/audit/report.h"
#include "core/floor/plan.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Holds a layout against a profile at the given hours. The same input gives the same report to the last bit.
Report audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
             floor::Hours hours = floor::Hours::Open);

}  // namespace stopwalk::audit
