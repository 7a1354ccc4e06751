#include "app/command_line/run.h"

#include <spdlog/sinks/ostream_sink.h>

#include <algorithm>

#include "app/command_line/commands.h"
#include "core/files/version.h"

namespace stopwalk::app {
namespace {

constexpr const char* kAbout =
    "Stopwalk holds the plan of a workshop against rules: who can stop which machine, from where, how fast,\n"
    "and how far it is to the phone. It checks a drawing; it does not certify a machine, a stop or a room.";

int status(Exit exit) {
  return static_cast<int>(exit);
}

// What the line asks for: help and version are printed at once, a mistake is told.
int answer(CLI::App& program, const CLI::ParseError& e, const Console& console) {
  const int code = program.exit(e, console.out, console.err);
  if (code != 0) return status(Exit::Wrong);
  console.out.flush();
  return status(console.out ? Exit::Done : Exit::NoFile);
}

std::shared_ptr<spdlog::logger> makeLog(const Console& console) {
  auto log = std::make_shared<spdlog::logger>("stopwalk",
                                              std::make_shared<spdlog::sinks::ostream_sink_mt>(console.err));
  log->set_pattern("stopwalk: %v");
  log->set_level(spdlog::level::warn);
  return log;
}

}  // namespace

void setExample(CLI::App& command, const std::string& example) {
  command.footer("Example:\n  " + example);
}

int run(std::vector<std::string> args, const Console& console) {
  const auto log = makeLog(console);
  Session session{console, *log, {}};

  CLI::App program{kAbout, "stopwalk"};
  program.set_version_flag("--version", std::string("stopwalk ") + files::kVersion);
  program.add_flag_callback(
      "-v,--verbose", [&] { log->set_level(spdlog::level::debug); }, "Log to standard error what is done");
  program.require_subcommand(0, 1);
  program.fallthrough();
  program.get_formatter()->column_width(34);
  setExample(program, "stopwalk audit sample-layouts/tram-depot.layout.yaml");
  addAudit(program, session);
  addCheck(program, session);
  addMeasure(program, session);
  addProfile(program, session);

  try {
    std::ranges::reverse(args);  // the parser takes them from the back
    program.parse(std::move(args));
  } catch (const CLI::ParseError& e) {
    return answer(program, e, console);
  }
  if (!session.command) {
    console.err << program.help();
    return status(Exit::Wrong);
  }
  return status(session.command());
}

}  // namespace stopwalk::app
