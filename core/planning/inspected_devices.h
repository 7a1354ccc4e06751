#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/audit/places.h"
#include "core/floor/plan.h"
#include "core/inspection/reliance.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::planning {

// A device as an inspection meets it, with the machines that it is wired to stop in the order of the file.
struct InspectedDevice : inspection::DeviceNow {
  std::string kind;     // its label
  std::string room;     // id of where its user stands, else of its machine; empty: in none
  floor::Place place;   // where its user stands; empty: blocked
  std::string blocked;  // why
};

// Every device of the layout, guarded starts among them, in the order of the file.
std::vector<InspectedDevice> inspectedDevices(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                              const floor::Plan& plan);

// The same as records are held against, without the floor.
std::vector<inspection::DeviceNow> devicesNow(const layout::Layout& layout, const layout::DeviceKinds& kinds);

}  // namespace stopwalk::planning
