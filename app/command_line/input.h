#pragma once

#include <optional>
#include <string>

#include "app/command_line/commands.h"
#include "core/audit/profile.h"
#include "core/files/diagnostic.h"
#include "core/layout/layout.h"

namespace stopwalk::app {

// The bytes of a file, or of standard input for `-`; tells the person if it cannot be read.
std::optional<std::string> readFile(const std::string& file, Session& session);

struct Input {
  std::string file;
  std::string text;
  std::optional<layout::Layout> layout;
  Exit exit = Exit::Done;  // why there is no layout
};

// Reads a layout and prints its diagnostics.
Input readLayoutFile(const std::string& file, Session& session);

struct ChosenProfile {
  std::optional<audit::Profile> profile;
  Exit exit = Exit::Done;
};

// A bundled profile, or a file: beside the file `beside`, unless that is empty.
ChosenProfile chooseProfile(const std::string& name, const std::string& beside, Session& session);

void print(const std::vector<files::Diagnostic>& diagnostics, Session& session);

}  // namespace stopwalk::app
