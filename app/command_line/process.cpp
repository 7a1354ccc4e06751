#include "app/command_line/process.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <iostream>

#include "app/command_line/kept_memory.h"
#include "app/command_line/run.h"

namespace stopwalk::app {
namespace {

bool wantsColour() {
  const char* no = std::getenv("NO_COLOR");
  const char* terminal = std::getenv("TERM");
  return isatty(STDOUT_FILENO) && !(no && *no) && !(terminal && std::string(terminal) == "dumb");
}

std::size_t columns() {
  constexpr std::size_t kUnknown = 100, kWidest = 160, kNarrowest = 60;
  winsize size{};
  if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return kUnknown;
  return std::clamp<std::size_t>(size.ws_col, kNarrowest, kWidest);
}

}  // namespace

std::vector<std::string> argumentsOf(int argc, char** argv) {
  return {argv + std::min(argc, 1), argv + argc};
}

int runProcess(std::vector<std::string> args, std::span<const Command> commands,
               std::function<int(const std::string& layout)> window) {
  keepMemory();
  std::signal(SIGPIPE, SIG_IGN);  // a reader that went away is a write that failed, told by the exit status
  std::signal(SIGXFSZ, SIG_IGN);  // so is a file that may grow no more
  std::ios::sync_with_stdio(false);
  const Console console{std::cin,  std::cout,        std::cerr, wantsColour(), isatty(STDERR_FILENO) != 0,
                        columns(), std::move(window)};
  return run(std::move(args), console, commands);
}

}  // namespace stopwalk::app
