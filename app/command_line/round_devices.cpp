#include "app/command_line/round_devices.h"

#include <algorithm>

#include "core/audit/profile.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::app {
namespace {

std::vector<std::string> walkingOrder(const std::vector<std::string>& ids, const Inspected& all) {
  std::vector<planning::InspectedDevice> devices;
  for (const std::string& id : ids) devices.push_back(*all.find(id));
  const floor::Plan plan = floor::buildPlan(*all.input.layout, floor::Hours::Open);
  const floor::Walks walks(plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  return planning::inWalkingOrder(devices, walks);
}

}  // namespace

std::string RoundScope::text() const {
  if (room.empty()) return due ? "due" : "all";
  return due ? "due in " + room : room;
}

std::string RoundScope::whyNone() const {
  return std::string("there is no device ") + (due ? "that is due" : "to inspect") +
         (room.empty() ? "" : " in " + room);
}

void addScopeOptions(CLI::App& command, RoundScope& scope) {
  command.add_option("--room", scope.room, "Only the devices of this room")
      ->check(saysSomething("a room's id"));
  command.add_flag("--due", scope.due, "Only the devices that are due that day");
}

std::optional<std::vector<std::string>> devicesIn(const RoundScope& scope, const Inspected& all,
                                                  inspection::Date day, Session& session) {
  const std::vector<layout::Room>& rooms = all.input.layout->rooms;
  if (!scope.room.empty() && std::ranges::find(rooms, scope.room, &layout::Room::id) == rooms.end()) {
    std::vector<std::string> ids;
    for (const layout::Room& r : rooms) ids.push_back(r.id);
    session.console.err << "stopwalk: --room " << scope.room << ": there is no such room"
                        << audit::nearestName(scope.room, ids) << "\n";
    return std::nullopt;
  }
  std::vector<std::string> ids;
  for (const planning::InspectedDevice& d : all.devices)
    if (scope.room.empty() || d.room == scope.room) ids.push_back(d.id);
  if (scope.due) ids = dueDevices(all, std::move(ids), day);
  return walkingOrder(ids, all);
}

}  // namespace stopwalk::app
