#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <iostream>

#include "app/command_line/kept_memory.h"
#include "app/command_line/run.h"
#include "app/window/open_window.h"

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

// Nothing where the window system is not there: Qt would end the program.
std::function<int(const std::string&)> windowIfAny() {
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
    if (const char* value = std::getenv(name); value && *value) return stopwalk::window::openWindow;
  return {};
}

}  // namespace

int main(int argc, char** argv) {
  stopwalk::app::keepMemory();
  std::signal(SIGPIPE, SIG_IGN);  // a reader that went away is a write that failed, told by the exit status
  std::signal(SIGXFSZ, SIG_IGN);  // so is a file that may grow no more
  std::ios::sync_with_stdio(false);
  std::vector<std::string> args;
  for (int i = 1; i < argc; ++i) args.emplace_back(argv[i]);
  const stopwalk::app::Console console{
      std::cin, std::cout, std::cerr, wantsColour(), isatty(STDERR_FILENO) != 0, columns(), windowIfAny()};
  return stopwalk::app::run(std::move(args), console);
}
