#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/round_input.h"

namespace stopwalk::app {

// Which devices a round is of.
struct RoundScope : planning::RoundScope {
  std::string text() const { return planning::wordOf(*this); }  // as `inspection::Round::of`
  std::string whyNone() const;                                  // a clause: why there is no device
};

// --room and --due.
void addScopeOptions(CLI::App& command, RoundScope& scope);

// Their ids in the order of the shortest walk in opening hours, what is due as of the day; none: there is no
// such room, and the person is told.
std::optional<std::vector<std::string>> devicesIn(const RoundScope& scope, const Inspected& all,
                                                  inspection::Date day, Session& session);

}  // namespace stopwalk::app
