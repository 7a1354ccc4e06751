#pragma once

#include <string>
#include <vector>

#include "app/command_line/commands.h"

namespace stopwalk::app {

struct LayoutFiles {
  std::vector<std::string> files;
  bool several = false;    // more than one was named, or a folder: results come as a list
  Exit exit = Exit::Done;  // of folders that cannot be read or hold no layout
};

// The layouts that the names on the line stand for: a file for itself, a folder for every `*.layout.yaml` in
// it and below, by name. Hidden files and folders, and links to folders, are passed by; what is named itself
// as well is not found a second time, and of two names of one file the first is taken.
LayoutFiles layoutFiles(const std::vector<std::string>& named, Session& session);

}  // namespace stopwalk::app
