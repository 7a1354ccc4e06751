// All of Stopwalk, with Qt: its window, its pages, and every sub-command.
#include <cstdlib>

#include "app/command_line/commands.h"
#include "app/command_line/process.h"
#include "app/window/open_window.h"

namespace {

// Nothing where the window system is not there: Qt would end the program.
std::function<int(const std::string&)> windowIfAny() {
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
    if (const char* value = std::getenv(name); value && *value) return stopwalk::window::openWindow;
  return {};
}

}  // namespace

int main(int argc, char** argv) {
  using namespace stopwalk;
  unsetenv(app::kBecoming);
  return app::runProcess(app::argumentsOf(argc, argv), app::allCommands(), windowIfAny());
}
