#include "app/command_line/walk_options.h"

#include "core/audit/wording.h"

namespace stopwalk::app {
namespace {

std::string gapText(const planning::InspectionWalk& walk) {
  const auto percent = planning::gapPercent(walk);
  if (!percent) return "How much shorter another order might be is not known.";
  if (*percent <= 0) return "No order is shorter.";
  return "No order is shorter by more than " + audit::decimal(*percent, 1) + " %.";
}

}  // namespace

void addWalkOptions(CLI::App& command, WalkOptions& options) {
  command
      .add_option("--start", options.start,
                  "Where to begin: a station, device or phone; default: wherever is best")
      ->check(saysSomething("a place"));
  command.add_flag("--closed", options.closed, "Back to where it began");
  command.add_option("--hours", options.hours, "Doors as in opening hours, or after them")
      ->check(CLI::IsMember({"open", "after"}))
      ->capture_default_str();
}

void tellNoStart(const std::string& id, const std::string& why, Session& session) {
  session.console.err << "stopwalk: --start " << id << ": " << why << "\n";
}

std::string walkText(const planning::InspectionWalk& walk, floor::Hours hours, layout::LengthUnit unit) {
  return "The walk is " + audit::lengthText(walk.length_mm / 1000, unit) + ", doors as " +
         (hours == floor::Hours::Open ? "in opening hours" : "after hours") + ". " + gapText(walk);
}

}  // namespace stopwalk::app
