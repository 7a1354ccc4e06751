#pragma once

#include <memory>
#include <vector>

#include "core/audit/context.h"

// What a context has inside.
namespace stopwalk::audit {

// The phones at the hours that are not audited.
struct Context::OtherHours {
  floor::Plan plan;
  floor::Surroundings around;
  std::shared_ptr<floor::Walks> walks;
  std::vector<PlacedEntry> phones;
  Ways ways;
};

struct Context::Openings {
  std::vector<DoorOpening> all;
  geometry::BoxTree boxes;
};

// A move while it is made.
struct Context::Moving {
  Changed changed;
  std::vector<geometry::Box> footprints;  // before and after, of solids
  std::vector<std::size_t> machines;
  bool phones_changed = false;
};

std::vector<PlacedEntry> placedPhones(const layout::Layout& layout, const floor::Surroundings& around);
PlacedEntry placedDevice(const DeviceEntry& device, const floor::Surroundings& around);

}  // namespace stopwalk::audit
