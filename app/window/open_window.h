#pragma once

#include <string>

namespace stopwalk::window {

// Opens the window, with a layout unless the name is empty, and stays until it is closed. Returns the exit
// status.
int openWindow(const std::string& layout_file);

}  // namespace stopwalk::window
