#pragma once

#include <string>
#include <vector>

#include "app/command_line/console.h"

namespace stopwalk::app {

// The program: `args` without its name. Returns the exit status.
int run(std::vector<std::string> args, const Console& console);

}  // namespace stopwalk::app
