#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/round_input.h"
#include "app/command_line/walk_options.h"

namespace stopwalk::app {

// Which devices a round is of.
struct RoundScope : planning::RoundScope {
  std::string text() const { return planning::wordOf(*this); }  // as `inspection::Round::of`
  std::string whyNone() const;                                  // a clause: why there is no device
};

// --room and --due.
void addScopeOptions(CLI::App& command, RoundScope& scope);

// In the order of the shortest walk, what is due as of the day; none: there is no such room or start, and the
// person is told.
std::optional<planning::RoundOrder> devicesIn(const RoundScope& scope, const WalkOptions& walk,
                                              const Inspected& all, const inspection::Now& day,
                                              Session& session);

// Of each device that no way leads to a sentence.
std::string leftOutText(const planning::InspectionWalk& walk);

}  // namespace stopwalk::app
