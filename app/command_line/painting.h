#pragma once

#include <optional>
#include <string>

#include "app/command_line/commands.h"
#include "app/poster/words.h"

// What the commands that paint pages share.
namespace stopwalk::app {

// Letters and pictures need Qt's application; with no display it paints into memory. Once a process.
void startPainting();

// One or two of the languages, separated by a comma; tells the person if there is no such language.
std::optional<poster::Languages> languagesOf(const std::string& asked, Session& session);
// The family asked for, or the system's own; tells the person if it is not there.
std::optional<QString> familyOf(const std::string& asked, Session& session);

}  // namespace stopwalk::app
