#include "app/edits/references.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "core/layout/which.h"

namespace stopwalk::edits {
namespace {

constexpr const char* kBetween = ", ";  // ids, where a finding is about several

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

// "saw/stop, cut-off"; a word stays as it is.
bool followWhich(std::string& which, const NewId& new_id) {
  if (layout::isWhichWord(which)) return true;
  std::string followed;
  for (std::size_t at = 0; at < which.size();) {
    const std::size_t end = std::min(which.find(kBetween, at), which.size());
    std::string id = which.substr(at, end - at);
    if (!follow(id, new_id)) return false;
    followed += (followed.empty() ? "" : kBetween) + id;
    at = end + std::string_view(kBetween).size();
  }
  which = std::move(followed);
  return true;
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
  std::erase_if(layout.accepted_findings, [&](layout::AcceptedFinding& accepted) {
    return !follow(accepted.subject, new_id) || !followWhich(accepted.which, new_id);
  });
  std::erase_if(layout.tape_checks, [&](layout::TapeCheck& check) {
    return !follow(check.from, new_id) || !follow(check.to, new_id);
  });
}

}  // namespace stopwalk::edits
