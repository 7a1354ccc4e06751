#include "core/planning/inspected_devices.h"

#include "core/audit/stop_relation.h"
#include "core/floor/surroundings.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::planning {
namespace {

// `room_of`: for each machine the room that it is in.
std::vector<inspection::DeviceNow> devicesNow(const layout::Layout& layout,
                                              const std::vector<audit::DeviceEntry>& devices,
                                              const std::vector<std::optional<std::size_t>>& room_of) {
  const audit::StopRelation relation(layout, devices, room_of);
  std::vector<inspection::DeviceNow> all;
  for (std::size_t d = 0; d < devices.size(); ++d) {
    const layout::DeviceKind& kind = *devices[d].kind;
    all.push_back({devices[d].id, {}, kind.latches, kind.counts_as_stop});
    for (const std::size_t m : relation.machinesOf(d)) all.back().machines.push_back(layout.machines[m].id);
  }
  return all;
}

}  // namespace

std::vector<InspectedDevice> inspectedDevices(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                              const floor::Plan& plan) {
  const floor::Surroundings around(layout, plan);
  std::vector<std::optional<std::size_t>> rooms;
  for (const layout::Machine& m : layout.machines) rooms.push_back(around.roomAt(m.at));
  const std::vector<audit::DeviceEntry> devices = audit::devicesOf(layout, kinds);
  std::vector<inspection::DeviceNow> now = devicesNow(layout, devices, rooms);

  std::vector<InspectedDevice> all;
  for (std::size_t d = 0; d < devices.size(); ++d) {
    const audit::DeviceEntry& entry = devices[d];
    floor::Standing standing = around.standing(around.placed(*entry.device, *entry.kind, entry.machine));
    InspectedDevice one{std::move(now[d]),
                        entry.kind->label.empty() ? entry.kind->key : entry.kind->label,
                        {},
                        std::move(standing.place),
                        std::move(standing.reason)};
    const auto room = standing.room ? standing.room : entry.machine ? rooms[*entry.machine] : std::nullopt;
    if (room) one.room = layout.rooms[*room].id;
    all.push_back(std::move(one));
  }
  return all;
}

std::vector<inspection::DeviceNow> devicesNow(const layout::Layout& layout,
                                              const layout::DeviceKinds& kinds) {
  std::vector<geometry::IndexedPolygon> outlines;
  for (geometry::Polygon& room : floor::roomsOf(layout)) outlines.emplace_back(std::move(room));
  const geometry::IndexedPolygons rooms(std::move(outlines));
  std::vector<std::optional<std::size_t>> room_of;
  for (const layout::Machine& m : layout.machines) room_of.push_back(rooms.firstHolding(m.at));
  return devicesNow(layout, audit::devicesOf(layout, kinds), room_of);
}

}  // namespace stopwalk::planning
