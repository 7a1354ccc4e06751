#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "app/command_line/text_columns.h"
#include "app/command_line/walk_options.h"
#include "core/audit/wording.h"
#include "core/files/inspection_walk_json.h"
#include "core/planning/walk_start.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::string layout;
  std::string kinds;
  WalkOptions walk;
  std::string format = "table";
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
  asked.hours = planning::hoursOf(options.walk.how());
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
  planning::FoundStart found = planning::findStart(id, *asked.input.layout, asked.input.kinds, asked.plan);
  if (!found.start) tellNoStart(id, found.why, session);
  return found.start;
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

std::string sheet(const planning::InspectionWalk& walk, const Asked& asked, const TableStyle& style) {
  const layout::LengthUnit unit = asked.input.layout->unit;
  std::string text = stopTable(walk, unit, style);
  if (walk.stops.empty()) text += "no device can be walked to\n";
  if (!walk.left_out.empty()) text += "\nNot on the walk:\n";
  for (const auto& left : walk.left_out) text += paragraph(printable(left.id + ": " + left.why), 2, style);
  return text + "\n" + paragraph(walkText(walk, asked.hours, unit), 0, style) +
         paragraph(
             "Test a stop only as its maker and the shop's procedure say, with the work clear; local "
             "codes, the maker and licensed people come first.",
             0, style);
}

Exit walk(const Options& options, Session& session) {
  const Asked asked = readAsked(options, session);
  if (asked.exit) return *asked.exit;
  std::optional<planning::WalkStart> start;
  if (!options.walk.start.empty() && !(start = startOf(options.walk.start, asked, session)))
    return Exit::Wrong;
  if (asked.devices.empty()) {
    session.console.err << "stopwalk: there is no device "
                        << (options.due ? "that is due\n" : "in this layout\n");
    return Exit::Failed;
  }
  const floor::Walks walks(asked.plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  const planning::InspectionWalk found =
      planning::inspectionWalk(asked.devices, walks, start, options.walk.closed);
  const TableStyle style{std::min(session.console.columns, kWidestText), session.console.colour};
  const Exit written =
      writeResult(options.format == "json" ? files::inspectionWalkJson(found, options.walk.how()) + "\n"
                                           : sheet(found, asked, style),
                  "", session);
  return std::max(found.left_out.empty() ? Exit::Done : Exit::Failed, written);
}

}  // namespace

void addWalk(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("walk", "The shortest walk past all devices, to inspect them");
  c.add_option("LAYOUT", options->layout, "A layout file; - is standard input")->required();
  addWalkOptions(c, options->walk);
  c.add_flag("--due", options->due, "Only past the devices that are due today, by the records");
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
