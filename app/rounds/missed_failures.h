#pragma once

#include <span>
#include <vector>

#include "core/inspection/schedule.h"

namespace stopwalk::rounds {

// What failed by records that are missed is failed whatever `states`, which come from what is left, say.
void addMissedFailures(std::vector<inspection::DeviceState>& states,
                       std::span<const inspection::FailedDevice> failed);

}  // namespace stopwalk::rounds
