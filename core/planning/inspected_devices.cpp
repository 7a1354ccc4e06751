#include "core/planning/inspected_devices.h"

#include "core/audit/stop_relation.h"
#include "core/floor/surroundings.h"

namespace stopwalk::planning {

std::vector<InspectedDevice> inspectedDevices(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                              const floor::Plan& plan) {
  const floor::Surroundings around(layout, plan);
  std::vector<std::optional<std::size_t>> rooms;
  for (const layout::Machine& m : layout.machines) rooms.push_back(around.roomAt(m.at));
  const std::vector<audit::DeviceEntry> devices = audit::devicesOf(layout, kinds);
  const audit::StopRelation relation(layout, devices, rooms);

  std::vector<InspectedDevice> all;
  for (std::size_t d = 0; d < devices.size(); ++d) {
    const audit::DeviceEntry& entry = devices[d];
    floor::Standing standing = around.standing(around.placed(*entry.device, *entry.kind, entry.machine));
    InspectedDevice one{entry.id,
                        entry.kind->label.empty() ? entry.kind->key : entry.kind->label,
                        {},
                        {},
                        std::move(standing.place),
                        std::move(standing.reason),
                        entry.kind->latches};
    for (std::size_t m = 0; m < layout.machines.size(); ++m)
      if (relation.stops(d, m)) one.machines.push_back(layout.machines[m].id);
    const auto room = standing.room ? standing.room : entry.machine ? rooms[*entry.machine] : std::nullopt;
    if (room) one.room = layout.rooms[*room].id;
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace stopwalk::planning
