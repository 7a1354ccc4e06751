#pragma once

#include <string>

#include "app/edits/edit.h"
#include "core/geometry/point.h"

// New places for what hangs on something: it takes its facing from there.
namespace stopwalk::edits {

// A place of the plan in the frame of a machine.
geometry::Point inFrame(const layout::Machine& machine, geometry::Point at);

// A wall device or phone.
Edit hangOnWall(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces);
// A door, in the wall of room `first`, to room `second` or outside.
Edit hangDoor(const layout::Layout& layout, const std::string& id, geometry::Point at,
              const std::string& first, const std::string& second);
// A device on a machine; place and facing in the machine's frame.
Edit hangOnMachine(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces);

}  // namespace stopwalk::edits
