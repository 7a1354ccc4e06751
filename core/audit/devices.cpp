#include "core/audit/stop_relation.h"

namespace stopwalk::audit {

std::vector<DeviceEntry> devicesOf(const layout::Layout& layout, const layout::DeviceKinds& kinds) {
  std::vector<DeviceEntry> devices;
  const auto add = [&](std::string id, const layout::Device& d, std::optional<std::size_t> machine) {
    if (const layout::DeviceKind* kind = kinds.find(d.kind))
      devices.push_back({std::move(id), &d, kind, machine});
  };
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (const layout::Device& d : layout.machines[m].devices) add(layout.machines[m].id + "/" + d.id, d, m);
  for (const layout::Device& d : layout.devices) add(d.id, d, std::nullopt);
  return devices;
}

}  // namespace stopwalk::audit
