// How the context calls things.
#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::string lowered(std::string text) {
  if (text.size() > 1 && text[0] >= 'A' && text[0] <= 'Z' && text[1] >= 'a' && text[1] <= 'z')
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

std::string labelOf(const DeviceEntry& device) {
  return lowered(device.kind->label.empty() ? device.kind->key : device.kind->label);
}

// Its own id, where the machine has another of the kind.
std::string toldApart(const layout::Machine& machine, const DeviceEntry& device) {
  const auto same = std::ranges::count_if(
      machine.devices, [&](const layout::Device& d) { return d.kind == device.device->kind; });
  return same > 1 ? " (" + device.device->id + ")" : "";
}

}  // namespace

std::string Context::name(const layout::Machine& machine) const {
  return machine_names_.of(machine);
}

std::string Context::name(const StationEntry& station) const {
  const layout::Machine& m = machine(station);
  const auto same = std::ranges::count_if(
      m.stations, [&](const layout::Station& s) { return s.role == station.station->role; });
  return name(m) + ", " + std::string(word(station.station->role)) +
         (same > 1 ? " (" + station.station->id + ")" : "");
}

std::string Context::deviceName(std::size_t device) const {
  const DeviceEntry& d = devices[device];
  if (!d.machine) return "the " + labelOf(d) + " (" + d.id + ")";
  const layout::Machine& m = layout.machines[*d.machine];
  return "the " + labelOf(d) + toldApart(m, d) + " of " + name(m);
}

std::string Context::deviceName(std::size_t device, std::size_t seen_from_machine) const {
  const DeviceEntry& d = devices[device];
  if (d.machine != seen_from_machine) return deviceName(device);
  return "its own " + labelOf(d) + toldApart(layout.machines[seen_from_machine], d);
}

std::string Context::phoneName(std::size_t phone) const {
  const layout::Phone& p = layout.phones[phone];
  return p.name.empty() ? "the phone (" + p.id + ")" : phone_names_.of(p);
}

std::string Context::roomName(std::size_t room) const {
  return room_names_.of(layout.rooms[room]);
}

Finding Context::about(std::string subject, std::optional<std::size_t> room) const {
  Finding f;
  f.subject = std::move(subject);
  f.room = roomId(room);
  return f;
}

Finding Context::aboutStation(std::size_t station) const {
  return about(stations[station].id, stations[station].room);
}
Finding Context::aboutMachine(std::size_t machine) const {
  return about(layout.machines[machine].id, machine_rooms[machine]);
}
Finding Context::aboutRoom(std::size_t room) const {
  return about(layout.rooms[room].id, room);
}

// A machine's device is where the machine is; another is where one stands to use it.
Finding Context::aboutDevice(std::size_t device) const {
  const auto& machine = devices[device].machine;
  return about(devices[device].id, machine ? machine_rooms[*machine] : placed[device].standing.room);
}

std::string Context::length(double length_m) const {
  return lengthText(length_m, layout.unit);
}
std::string Context::limit(double limit_m) const {
  return limitText(limit_m, layout.unit);
}
std::string Context::limit(double limit_m, std::optional<double> measured_m) const {
  return measured_m ? limitText(limit_m, *measured_m, layout.unit) : limit(limit_m);
}
std::string Context::length(double length_m, double limit_m) const {
  return lengthText(length_m, limit_m, layout.unit);
}

}  // namespace stopwalk::audit
