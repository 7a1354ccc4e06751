#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/round_time.h"
#include "app/command_line/table_rows.h"
#include "core/audit/profile.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::app {
namespace {

struct Options : RoundOptions {
  std::string by;
  std::string room;
  std::string at;
  bool due = false;
};

// In the order of the shortest walk in opening hours.
std::vector<std::string> walkingOrder(const std::vector<std::string>& ids, const Inspected& all) {
  std::vector<planning::InspectedDevice> devices;
  for (const std::string& id : ids) devices.push_back(*all.find(id));
  const floor::Plan plan = floor::buildPlan(*all.input.layout, floor::Hours::Open);
  const floor::Walks walks(plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  return planning::inWalkingOrder(devices, walks);
}

// The devices asked for; none: there is no such room.
std::optional<std::vector<std::string>> devicesFor(const Options& options, const Inspected& all,
                                                   inspection::Date day, Session& session) {
  if (!options.room.empty() && std::ranges::find(all.input.layout->rooms, options.room, &layout::Room::id) ==
                                   all.input.layout->rooms.end()) {
    std::vector<std::string> rooms;
    for (const layout::Room& r : all.input.layout->rooms) rooms.push_back(r.id);
    session.console.err << "stopwalk: --room " << options.room << ": there is no such room"
                        << audit::nearestName(options.room, rooms) << "\n";
    return std::nullopt;
  }
  std::vector<std::string> ids;
  for (const planning::InspectedDevice& d : all.devices)
    if (options.room.empty() || d.room == options.room) ids.push_back(d.id);
  if (options.due) ids = dueDevices(all, std::move(ids), day);
  return walkingOrder(ids, all);
}

std::string scopeOf(const Options& options) {
  if (options.room.empty()) return options.due ? "due" : "all";
  return options.due ? "due in " + options.room : options.room;
}

// When it was walked, and when that is written down; none: wrong, and told.
std::optional<inspection::Round> roundBy(const Options& options, Session& session) {
  inspection::Round round{0, nowOf(session.console), options.by, scopeOf(options), {}, {}};
  if (options.at.empty()) return round;
  const SaidTime said = timeSaid(options.at, round.at);
  if (!said.at) {
    session.console.err << "stopwalk: --at " << options.at << ": " << said.why << "; no round was opened\n";
    return std::nullopt;
  }
  round.entered = round.at;
  round.at = *said.at;
  return round;
}

Exit open(const Options& options, Session& session) {
  std::optional<inspection::Round> round = roundBy(options, session);
  if (!round) return Exit::Wrong;
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  const auto devices = devicesFor(options, all, round->at.date, session);
  if (!devices) return Exit::Wrong;
  if (devices->empty()) {
    session.console.err << "stopwalk: no round opened: there is no device "
                        << (options.due ? "that is due" : "to inspect")
                        << (options.room.empty() ? "" : " in " + options.room) << "\n";
    return Exit::Failed;
  }
  round->devices = *devices;
  round->layout = all.layoutNow();
  const records::Appended done = records::appendRecord(all.read.file, *round);
  if (const Exit exit = tellAppended(done, all.read.file, session); exit != Exit::Done) return exit;
  round->number = done.number;
  if (options.json()) return writeResult(files::roundJson(*round) + "\n", "", session);
  return writeResult("Round by " + files::printable(round->by, "") + " over " +
                         counted(devices->size(), "device") + " (" + round->of + "), recorded in " +
                         files::printable(all.read.file, "") + "\n" + std::to_string(round->number) + "\n",
                     "", session);
}

}  // namespace

void addRoundNew(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("new", "Open a round; prints its number alone on the last line");
  addRoundOptions(c, *options);
  c.add_option("--by", options->by, "Who walks it")->required()->check(saysOneLine("a name"));
  c.add_option("--room", options->room, "Only the devices of this room")->check(saysSomething("a room's id"));
  c.add_flag("--due", options->due, "Only the devices that are due that day");
  addAtOption(c, options->at,
              "When it was begun, where it was walked before it is entered, such as on paper");
  setExample(
      c,
      "stopwalk round new shop.layout.yaml --by \"Ada Example\" --room metal\n\n"
      "Ends with 0 once the round is on the disk, 1 if there is no such device, 2 if input or usage is "
      "wrong,\n3 if a file cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return open(*options, session); }; });
}

}  // namespace stopwalk::app
