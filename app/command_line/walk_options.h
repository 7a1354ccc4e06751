#pragma once

#include <string>

#include "app/command_line/commands.h"
#include "core/planning/round_order.h"

// What `walk` and the rounds share: how they are walked.
namespace stopwalk::app {

struct WalkOptions {
  std::string start;
  std::string hours = "open";
  bool closed = false;
  inspection::RoundWalk how() const { return {hours == "after", start, closed}; }
  bool said() const { return how() != inspection::RoundWalk(); }
};

// --start, --closed and --hours.
void addWalkOptions(CLI::App& command, WalkOptions& options);
// Why nothing can be begun there.
void tellNoStart(const std::string& id, const std::string& why, Session& session);

// How long it is, at which hours, and by how much another order might be shorter: sentences.
std::string walkText(const planning::InspectionWalk& walk, floor::Hours hours, layout::LengthUnit unit);

}  // namespace stopwalk::app
