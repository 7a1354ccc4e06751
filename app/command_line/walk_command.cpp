#include <algorithm>
#include <cmath>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "app/command_line/text_columns.h"
#include "core/audit/places.h"
#include "core/audit/profile.h"
#include "core/audit/wording.h"
#include "core/files/inspection_walk_json.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::string layout;
  std::string kinds;
  std::string start;
  std::string hours = "open";
  std::string format = "table";
  bool closed = false;
  bool due = false;
};

// The layout and the devices to be walked past.
struct Asked {
  std::optional<Exit> exit;  // why there is nothing
  Input input;
  floor::Hours hours = floor::Hours::Open;
  floor::Plan plan;
  std::vector<planning::InspectedDevice> devices;
};

Asked readAsked(const Options& options, Session& session) {
  Asked asked;
  asked.hours = options.hours == "after" ? floor::Hours::After : floor::Hours::Open;
  std::optional<std::vector<std::string>> due;
  if (options.due) {
    Inspected all = readInspected({options.layout, options.kinds}, session);
    if (all.exit) return asked.exit = *all.exit, std::move(asked);
    due = planning::dueAmong(all.devices, all.records(), all.schedule, nowOf(session.console).date);
    asked.input = std::move(all.input);
  } else {
    asked.input = LayoutInput(options.kinds, session).read(options.layout);
    if (!asked.input.layout) return asked.exit = asked.input.exit, std::move(asked);
  }
  asked.plan = floor::buildPlan(*asked.input.layout, asked.hours);
  asked.devices = planning::inspectedDevices(*asked.input.layout, asked.input.kinds, asked.plan);
  if (due)
    std::erase_if(asked.devices, [&](const auto& d) { return std::ranges::find(*due, d.id) == due->end(); });
  return asked;
}

// The place to begin at; tells the person if there is none.
std::optional<planning::WalkStart> startOf(const std::string& id, const Asked& asked, Session& session) {
  const floor::Surroundings around(*asked.input.layout, asked.plan);
  const audit::Places places(*asked.input.layout, audit::devicesOf(*asked.input.layout, asked.input.kinds),
                             around);
  const audit::NamedPlace* place = places.find(id);
  if (!place) {
    session.console.err << "stopwalk: --start " << id << ": there is no such place"
                        << audit::nearestName(id, places.ids()) << "\n";
    return std::nullopt;
  }
  if (place->place.empty()) {
    session.console.err << "stopwalk: --start " << id << ": nobody can stand there"
                        << (place->reason.empty() ? "" : ": " + place->reason) << "\n";
    return std::nullopt;
  }
  return planning::WalkStart{id, place->place};
}

std::string stopTable(const planning::InspectionWalk& walk, layout::LengthUnit unit,
                      const TableStyle& style) {
  const std::size_t number = 3, leg = 12, far = 12;
  const std::vector<Column> columns = {{"", number, true},
                                       {"PLACE", style.columns - number - leg - far - 3 * 2},
                                       {"WALK", leg, true},
                                       {"SO FAR", far, true}};
  std::string text = headRow(columns, style);
  double so_far = 0;
  bool narrow = walk.narrow_back;
  const auto legText = [&](double mm, bool through_gap) {
    return audit::lengthCell(mm / 1000, unit) + (through_gap ? " *" : "");
  };
  for (std::size_t i = 0; i < walk.stops.size(); ++i) {
    const auto& stop = walk.stops[i];
    so_far += stop.leg_mm;
    narrow = narrow || stop.narrow;
    text += row(columns,
                {std::to_string(i + 1), printable(stop.id), i == 0 ? "-" : legText(stop.leg_mm, stop.narrow),
                 i == 0 ? "-" : audit::lengthCell(so_far / 1000, unit)},
                Ink::Plain, style);
  }
  if (walk.back_mm > 0)
    text += row(columns,
                {"", "back to " + printable(walk.stops.front().id), legText(walk.back_mm, walk.narrow_back),
                 audit::lengthCell(walk.length_mm / 1000, unit)},
                Ink::Plain, style);
  if (narrow) text += "\n" + paragraph("* through a gap narrower than twice 305 mm", 0, style);
  return text;
}

// A tenth of a percent up, so that it is never said to be nearer than is proven.
std::string gapText(const planning::InspectionWalk& walk) {
  if (walk.shortest) return "No order is shorter.";
  if (walk.bound_mm <= 0) return "How much shorter another order might be is not known.";
  const double percent = std::ceil((1 - walk.bound_mm / walk.length_mm) * 1000) / 10;
  if (percent <= 0) return "No order is shorter.";
  return "No order is shorter by more than " + audit::decimal(percent, 1) + " %.";
}

std::string sheet(const planning::InspectionWalk& walk, const Asked& asked, const TableStyle& style) {
  const layout::LengthUnit unit = asked.input.layout->unit;
  std::string text = stopTable(walk, unit, style);
  if (walk.stops.empty()) text += "no device can be walked to\n";
  if (!walk.left_out.empty()) text += "\nNot on the walk:\n";
  for (const auto& left : walk.left_out) text += paragraph(printable(left.id + ": " + left.why), 2, style);
  return text + "\n" +
         paragraph("The walk is " + audit::lengthText(walk.length_mm / 1000, unit) + ", doors as " +
                       (asked.hours == floor::Hours::Open ? "in opening hours" : "after hours") + ". " +
                       gapText(walk),
                   0, style) +
         paragraph(
             "Test a stop only as its maker and the shop's procedure say, with the work clear; local "
             "codes, the maker and licensed people come first.",
             0, style);
}

Exit walk(const Options& options, Session& session) {
  const Asked asked = readAsked(options, session);
  if (asked.exit) return *asked.exit;
  std::optional<planning::WalkStart> start;
  if (!options.start.empty() && !(start = startOf(options.start, asked, session))) return Exit::Wrong;
  if (asked.devices.empty()) {
    session.console.err << "stopwalk: there is no device "
                        << (options.due ? "that is due\n" : "in this layout\n");
    return Exit::Failed;
  }
  const floor::Walks walks(asked.plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  const planning::InspectionWalk found =
      planning::inspectionWalk(asked.devices, walks, start, options.closed);
  const TableStyle style{std::min(session.console.columns, kWidestText), session.console.colour};
  const Exit written = writeResult(
      options.format == "json" ? files::inspectionWalkJson(found, options.start, options.closed, asked.hours)
                               : sheet(found, asked, style),
      "", session);
  return std::max(found.left_out.empty() ? Exit::Done : Exit::Failed, written);
}

}  // namespace

void addWalk(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("walk", "The shortest walk past all devices, to inspect them");
  c.add_option("LAYOUT", options->layout, "A layout file; - is standard input")->required();
  c.add_option("--start", options->start,
               "Where to begin: a station, device or phone; default: wherever is best")
      ->check(saysSomething("a place"));
  c.add_flag("--closed", options->closed, "Back to where it began");
  c.add_flag("--due", options->due, "Only past the devices that are due today, by the records");
  c.add_option("--hours", options->hours, "Doors as in opening hours, or after them")
      ->check(CLI::IsMember({"open", "after"}))
      ->capture_default_str();
  addKindsOption(c, options->kinds);
  c.add_option("--format", options->format, "What to write")
      ->check(CLI::IsMember({"table", "json"}))
      ->capture_default_str();
  setExample(c,
             "stopwalk walk sample-layouts/tram-depot.layout.yaml --closed\n\n"
             "Ends with 0 if every device is on the walk, 1 if one cannot be reached or there is none, 2 if "
             "input\nor usage is wrong, 3 if a file cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return walk(*options, session); }; });
}

}  // namespace stopwalk::app
