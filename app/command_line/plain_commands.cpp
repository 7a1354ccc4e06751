#include "app/command_line/commands.h"

namespace stopwalk::app {

std::span<const Command> plainCommands() {
  static constexpr Command kCommands[] = {
      {"audit", addAudit}, {"measure", addMeasure}, {"profile", addProfile}, {"walk", addWalk}};
  return kCommands;
}

}  // namespace stopwalk::app
