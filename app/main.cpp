// Stopwalk as it is called. The plain commands are done here, without Qt; for all else the process becomes
// the painter, which lies beside this program.
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <system_error>

#include "app/command_line/commands.h"
#include "app/command_line/console.h"
#include "app/command_line/process.h"
#include "core/files/printable.h"

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
  const std::string painter = self.parent_path() / "stopwalk-painter";
  const bool is_this = std::getenv(kBecoming) != nullptr;  // by that name: it would start itself for ever
  if (!unknown && !is_this && setenv(kBecoming, "1", 1) == 0) execv(painter.c_str(), argv);
  const std::string why = unknown   ? unknown.message()
                          : is_this ? "it is another program"
                                    : std::generic_category().message(errno);
  std::cerr << "stopwalk: cannot run " << stopwalk::files::printable(painter) << ": " << why
            << "; without it, stopwalk can only audit, measure, walk and show profiles\n";
  return static_cast<int>(Exit::NoFile);
}

}  // namespace

int main(int argc, char** argv) {
  std::vector<std::string> args = argumentsOf(argc, argv);
  return isPlain(args) ? runProcess(std::move(args), plainCommands()) : becomePainter(argv);
}
