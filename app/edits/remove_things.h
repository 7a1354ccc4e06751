#pragma once

#include <string>
#include <vector>

#include "app/edits/edit.h"
#include "core/layout/device_kind.h"

namespace stopwalk::edits {

// Takes things away, with what is on a machine. In the same step what speaks of them is mended: they leave
// the lists of what a device stops, where it is held and of its run-downs, a list that becomes empty staying
// empty; doors of a room, and tape checks from or to a place, go with it, and the step's name counts them:
// "Remove Wood room and 2 doors".
Edit removeThings(const layout::Layout& layout, const std::vector<std::string>& ids,
                  const layout::DeviceKinds& kinds);

}  // namespace stopwalk::edits
