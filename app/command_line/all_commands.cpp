#include "app/command_line/commands.h"
#include "app/command_line/run.h"

namespace stopwalk::app {

std::span<const Command> allCommands() {
  static constexpr Command kCommands[] = {
      {"audit", addAudit},     {"check", addCheck},   {"measure", addMeasure}, {"poster", addPoster},
      {"profile", addProfile}, {"report", addReport}, {"round", addRound},     {"walk", addWalk}};
  return kCommands;
}

int run(std::vector<std::string> args, const Console& console) {
  return run(std::move(args), console, allCommands());
}

}  // namespace stopwalk::app
