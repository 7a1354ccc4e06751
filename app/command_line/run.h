#pragma once

#include <span>
#include <string>
#include <vector>

#include "app/command_line/console.h"

namespace stopwalk::app {

struct Command;

// The program with these sub-commands: `args` without its name. Returns the exit status.
int run(std::vector<std::string> args, const Console& console, std::span<const Command> commands);
// With all there are.
int run(std::vector<std::string> args, const Console& console);

}  // namespace stopwalk::app
