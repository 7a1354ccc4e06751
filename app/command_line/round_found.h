#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/commands.h"
#include "core/inspection/record.h"

namespace stopwalk::app {

// What was found at one device, as said on the line.
struct Found {
  std::vector<std::string> checks;
  std::string run_down, second, note, action, tagged_by, tagged_until, corrective, owner, fix_by;
};
void addFoundOptions(CLI::App& command, Found& found);

// Into a check; false: something of it is wrong, and told.
bool put(const Found& found, inspection::Check& check, Session& session);

// Tells what is wrong with an option, and that nothing was recorded.
std::nullopt_t wrong(const std::string& option, const std::string& why, Session& session);

}  // namespace stopwalk::app
