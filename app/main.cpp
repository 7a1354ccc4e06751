// Stopwalk as it is called. What never paints is done here, without Qt; for all else the process becomes the
// painter, which lies beside this program.
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <iostream>

#include "app/command_line/commands.h"
#include "app/command_line/console.h"
#include "app/command_line/process.h"

namespace {

using namespace stopwalk::app;

// Whether the first word, but for those that ask for the log, is such a command.
bool isPlain(const std::vector<std::string>& args) {
  const auto word =
      std::ranges::find_if(args, [](const std::string& a) { return a != "-v" && a != "--verbose"; });
  return word != args.end() && std::ranges::count(plainCommands(), *word, &Command::name) > 0;
}

// Does not come back, but where there is no painter.
int becomePainter(char** argv) {
  std::error_code unknown;
  const auto self = std::filesystem::read_symlink("/proc/self/exe", unknown);
  const auto painter = self.parent_path() / "stopwalk-painter";
  if (!unknown) execv(painter.c_str(), argv);
  std::cerr << "stopwalk: " << painter.native()
            << " belongs beside this program, and cannot be run: without it there is no window and no page\n";
  return static_cast<int>(Exit::NoFile);
}

}  // namespace

int main(int argc, char** argv) {
  std::vector<std::string> args = argumentsOf(argc, argv);
  return isPlain(args) ? runProcess(std::move(args), plainCommands()) : becomePainter(argv);
}
