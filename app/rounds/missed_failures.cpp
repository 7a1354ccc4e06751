#include "app/rounds/missed_failures.h"

#include <algorithm>

namespace stopwalk::rounds {

void addMissedFailures(std::vector<inspection::DeviceState>& states,
                       std::span<const inspection::FailedDevice> failed) {
  for (const inspection::FailedDevice& f : failed) {
    auto at = std::ranges::lower_bound(states, f.device, {}, &inspection::DeviceState::device);
    if (at == states.end() || at->device != f.device)
      at = states.insert(at, inspection::DeviceState{.device = f.device});
    at->failed = f;
    if (!at->last_on || *at->last_on < f.on) at->last_on = f.on;
  }
}

}  // namespace stopwalk::rounds
