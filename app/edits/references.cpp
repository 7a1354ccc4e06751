#include "app/edits/references.h"

#include <utility>

namespace stopwalk::edits {
namespace {

// False: it is gone.
bool follow(std::string& id, const NewId& new_id) {
  auto fresh = new_id(id);
  if (!fresh) return false;
  id = std::move(*fresh);
  return true;
}

void followStops(layout::Device& device, const NewId& new_id) {
  if (device.stops) std::erase_if(device.stops->ids, [&](std::string& id) { return !follow(id, new_id); });
  std::erase_if(device.run_down_each, [&](auto& each) { return !follow(each.first, new_id); });
}

void followHeldAt(layout::Device& device, const std::string& machine, const NewId& new_id) {
  if (!device.held_at) return;
  std::erase_if(*device.held_at, [&](std::string& station) {
    std::string full = machine + "/" + station;
    if (!follow(full, new_id)) return true;
    station = full.substr(full.find('/') + 1);
    return false;
  });
}

}  // namespace

void followIds(layout::Layout& layout, const NewId& new_id) {
  std::erase_if(layout.doors, [&](layout::Door& door) {
    return !follow(door.first, new_id) || (door.second != layout::kOutside && !follow(door.second, new_id));
  });
  for (layout::Machine& machine : layout.machines)
    for (layout::Device& device : machine.devices) {
      followStops(device, new_id);
      followHeldAt(device, machine.id, new_id);
    }
  for (layout::Device& device : layout.devices) followStops(device, new_id);
  std::erase_if(layout.tape_checks, [&](layout::TapeCheck& check) {
    return !follow(check.from, new_id) || !follow(check.to, new_id);
  });
}

}  // namespace stopwalk::edits
