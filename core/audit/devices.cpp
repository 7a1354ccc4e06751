#include <algorithm>

#include "core/audit/stop_relation.h"

namespace stopwalk::audit {
namespace {

// Whether the file's text has the devices on walls before the machines.
bool wallDevicesComeFirst(const layout::Layout& layout) {
  if (!layout.kept.text) return false;
  const auto& entries = layout.kept.text->entries;
  const auto at = [&](const char* key) { return std::ranges::find(entries, key, &layout::KeptEntry::key); };
  return at("devices") < at("machines");
}

}  // namespace

std::vector<DeviceEntry> devicesOf(const layout::Layout& layout, const layout::DeviceKinds& kinds) {
  std::vector<DeviceEntry> devices;
  const auto add = [&](std::string id, const layout::Device& d, std::optional<std::size_t> machine) {
    if (const layout::DeviceKind* kind = kinds.find(d.kind))
      devices.push_back({std::move(id), &d, kind, machine});
  };
  const auto addWallDevices = [&] {
    for (const layout::Device& d : layout.devices) add(d.id, d, std::nullopt);
  };
  const bool wall_first = wallDevicesComeFirst(layout);
  if (wall_first) addWallDevices();
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (const layout::Device& d : layout.machines[m].devices) add(layout.machines[m].id + "/" + d.id, d, m);
  if (!wall_first) addWallDevices();
  return devices;
}

}  // namespace stopwalk::audit
