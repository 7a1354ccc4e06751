#pragma once

#include <string>

#include "app/command_line/commands.h"

namespace stopwalk::app {

// Writes a result to standard output (`-` or empty), or to a file: whole, or not at all. Tells the person if
// it fails.
Exit writeResult(const std::string& text, const std::string& file, Session& session);

}  // namespace stopwalk::app
