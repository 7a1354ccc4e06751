#pragma once

#include "app/command_line/commands.h"

// The sub-commands of `round`, a file each.
namespace stopwalk::app {

void addRoundBundle(CLI::App& round, Session& session);
void addRoundDue(CLI::App& round, Session& session);
void addRoundNew(CLI::App& round, Session& session);
void addRoundRecord(CLI::App& round, Session& session);
void addRoundSheet(CLI::App& round, Session& session);
void addRoundShow(CLI::App& round, Session& session);
void addRoundVerify(CLI::App& round, Session& session);

}  // namespace stopwalk::app
