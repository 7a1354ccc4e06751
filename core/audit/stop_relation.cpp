#include "core/audit/stop_relation.h"

#include <algorithm>
#include <numeric>

namespace stopwalk::audit {
namespace {

void sortOnce(std::vector<std::size_t>& v) {
  std::ranges::sort(v);
  v.erase(std::unique(v.begin(), v.end()), v.end());
}

bool holds(const std::vector<std::size_t>& sorted, std::size_t value) {
  return std::ranges::binary_search(sorted, value);
}

}  // namespace

StopRelation::StopRelation(const layout::Layout& layout, std::span<const DeviceEntry> devices,
                           std::span<const std::optional<std::size_t>> rooms, std::vector<bool> out_of_order)
    : layout_(layout),
      devices_(devices.begin(), devices.end()),
      rooms_(rooms.begin(), rooms.end()),
      out_of_order_(std::move(out_of_order)),
      reach_(devices.size()),
      machines_in_(layout.rooms.size()),
      by_machine_(layout.machines.size()),
      by_room_(layout.rooms.size()) {
  for (std::size_t m = 0; m < layout.machines.size(); ++m) {
    machine_of_id_.emplace(layout.machines[m].id, m);
    if (rooms_[m]) machines_in_[*rooms_[m]].push_back(m);
  }
  for (std::size_t r = 0; r < layout.rooms.size(); ++r) room_of_id_.emplace(layout.rooms[r].id, r);
  for (std::size_t d = 0; d < devices_.size(); ++d) {
    const DeviceEntry& entry = devices_[d];
    if (entry.device->stops)
      readStops(d, *entry.device->stops);
    else if (entry.machine)
      reach_[d].machines = {*entry.machine};
    addByDevice(d);
  }
}

void StopRelation::readStops(std::size_t device, const layout::Stops& stops) {
  Reach& reach = reach_[device];
  reach.all = stops.all;
  for (const std::string& id : stops.ids) {
    if (const auto m = machine_of_id_.find(id); m != machine_of_id_.end())
      reach.machines.push_back(m->second);
    else if (const auto r = room_of_id_.find(id); r != room_of_id_.end())
      reach.rooms.push_back(r->second);
    else if (id == layout::kAll)
      reach.all = true;
  }
  sortOnce(reach.machines);
  sortOnce(reach.rooms);
}

void StopRelation::addByDevice(std::size_t device) {
  const Reach& reach = reach_[device];
  if (reach.all) by_all_.push_back(device);
  for (const std::size_t m : reach.machines) by_machine_[m].push_back(device);
  for (const std::size_t r : reach.rooms) by_room_[r].push_back(device);
}

bool StopRelation::stops(std::size_t device, std::size_t machine) const {
  const Reach& reach = reach_[device];
  return reach.all || holds(reach.machines, machine) ||
         (rooms_[machine] && holds(reach.rooms, *rooms_[machine]));
}

bool StopRelation::stopsNothing(std::size_t device) const {
  const Reach& reach = reach_[device];
  if (reach.all) return layout_.machines.empty();
  return reach.machines.empty() &&
         std::ranges::all_of(reach.rooms, [&](std::size_t r) { return machines_in_[r].empty(); });
}

std::vector<std::size_t> StopRelation::machinesOf(std::size_t device) const {
  const Reach& reach = reach_[device];
  std::vector<std::size_t> found = reach.machines;
  for (const std::size_t r : reach.rooms)
    found.insert(found.end(), machines_in_[r].begin(), machines_in_[r].end());
  if (reach.all) {
    found.resize(layout_.machines.size());
    std::iota(found.begin(), found.end(), 0);
  }
  sortOnce(found);
  return found;
}

std::vector<std::size_t> StopRelation::candidates(std::size_t machine) const {
  std::vector<std::size_t> found = by_machine_[machine];
  if (rooms_[machine])
    found.insert(found.end(), by_room_[*rooms_[machine]].begin(), by_room_[*rooms_[machine]].end());
  found.insert(found.end(), by_all_.begin(), by_all_.end());
  sortOnce(found);
  const bool only_held = layout_.machines[machine].hand_held;
  std::erase_if(found,
                [&](std::size_t d) { return !countsAsStop(d) || (only_held && !devices_[d].kind->held); });
  return found;
}

std::vector<std::size_t> StopRelation::cutOffs(std::size_t room) const {
  const std::vector<std::size_t>& machines = machines_in_[room];
  if (machines.empty()) return {};
  // What stops them all stops the first.
  std::vector<std::size_t> found = by_machine_[machines.front()];
  found.insert(found.end(), by_room_[room].begin(), by_room_[room].end());
  found.insert(found.end(), by_all_.begin(), by_all_.end());
  sortOnce(found);
  std::erase_if(found, [&](std::size_t d) {
    return !countsAsStop(d) || devices_[d].kind->held ||
           !std::ranges::all_of(machines, [&](std::size_t m) { return stops(d, m); });
  });
  return found;
}

std::optional<double> StopRelation::runDown(std::size_t device, std::size_t machine) const {
  const layout::Device& d = *devices_[device].device;
  for (const auto& [id, seconds] : d.run_down_each)
    if (id == layout_.machines[machine].id) return seconds;
  return d.run_down ? d.run_down : layout_.machines[machine].run_down;
}

bool StopRelation::countsAsEmergencyStop(std::size_t device) const {
  const DeviceEntry& d = devices_[device];
  return countsAsStop(device) && d.device->emergency.value_or(d.kind->counts_as_emergency_stop);
}

bool StopRelation::isHeldAt(std::size_t device, std::size_t machine, const layout::Station& station) const {
  const DeviceEntry& d = devices_[device];
  if (!d.kind->held || d.machine != machine) return false;
  if (d.device->held_at) return std::ranges::find(*d.device->held_at, station.id) != d.device->held_at->end();
  return station.id == layout_.machines[machine].stations.front().id;
}

}  // namespace stopwalk::audit
