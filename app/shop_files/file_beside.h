#pragma once

#include <optional>
#include <string>

#include "core/files/profile_reader.h"

namespace stopwalk::app {

// The file that `asked` names in `file`, which lies beside that or below: a layout from elsewhere is not to
// have the rest of the disk read. Beside nothing, or beside `-`, standard input, `asked` is taken from where
// the program runs.
std::optional<files::NamedText> fileBeside(const std::string& asked, const std::string& file);

}  // namespace stopwalk::app
