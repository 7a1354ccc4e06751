#include "app/command_line/round_devices.h"

#include <algorithm>

#include "core/audit/profile.h"
#include "core/files/printable.h"

namespace stopwalk::app {
std::string RoundScope::whyNone() const {
  return std::string("there is no device ") + (due ? "that is due" : "to inspect") +
         (room.empty() ? "" : " in " + room);
}

void addScopeOptions(CLI::App& command, RoundScope& scope) {
  command.add_option("--room", scope.room, "Only the devices of this room")
      ->check(saysSomething("a room's id"));
  command.add_flag("--due", scope.due, "Only the devices that are due that day");
}

std::optional<planning::RoundOrder> devicesIn(const RoundScope& scope, const WalkOptions& walk,
                                              const Inspected& all, const inspection::Now& day,
                                              Session& session) {
  const std::vector<layout::Room>& rooms = all.input.layout->rooms;
  if (!scope.room.empty() && std::ranges::find(rooms, scope.room, &layout::Room::id) == rooms.end()) {
    std::vector<std::string> ids;
    for (const layout::Room& r : rooms) ids.push_back(r.id);
    session.console.err << "stopwalk: --room " << scope.room << ": there is no such room"
                        << audit::nearestName(scope.room, ids) << "\n";
    return std::nullopt;
  }
  const auto ids = planning::devicesIn(scope, all.devices, all.records(), all.schedule, day);
  planning::RoundOrder order = planning::asWalked(ids, walk.how(), *all.input.layout, all.input.kinds);
  if (order.no_start.empty()) return order;
  tellNoStart(walk.start, order.no_start, session);
  return std::nullopt;
}

std::string leftOutText(const planning::InspectionWalk& walk) {
  std::string text;
  for (const auto& left : walk.left_out)
    text += "Not on the walk: " + files::printable(left.id + ": " + left.why, "") + ".\n";
  return text;
}

}  // namespace stopwalk::app
