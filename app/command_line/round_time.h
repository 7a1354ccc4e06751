#pragma once

#include <optional>
#include <string>

#include "app/command_line/commands.h"
#include "core/inspection/moment.h"

namespace stopwalk::app {

// When something was done, as said with `--at`.
struct SaidTime {
  std::optional<inspection::Moment> at;  // none: `why`
  std::string why;                       // a clause
};
// On the clock of this place unless a zone is given; not later than `now`.
SaidTime timeSaid(const std::string& text, const inspection::Moment& now);

void addAtOption(CLI::App& command, std::string& at, const std::string& help);

}  // namespace stopwalk::app
