#include "app/command_line/run.h"

#include <algorithm>
#include <exception>
#include <filesystem>
#include <new>

#include "app/command_line/commands.h"
#include "app/command_line/log.h"
#include "app/command_line/printable_buffer.h"
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
  if (console.out) return status(Exit::Done);
  console.err << "stopwalk: cannot write to standard output\n";
  return status(Exit::NoFile);
}

int openWindow(const std::string& layout, const CLI::App& program, const Console& console) {
  std::error_code none;
  if (!layout.empty() && !std::filesystem::exists(layout, none)) {
    console.err << "stopwalk: there is no command and no file `" << layout << "`; see stopwalk --help\n";
    const bool is_file_name = layout.find_first_of("./") != std::string::npos;
    return status(is_file_name ? Exit::NoFile : Exit::Wrong);
  }
  if (console.window) return console.window(layout);
  console.err << "stopwalk: there is no display for the window; the commands need none\n\n" << program.help();
  return status(Exit::Wrong);
}

}  // namespace

CLI::Validator saysSomething(const std::string& what) {
  return {[what](const std::string& text) { return text.empty() ? what + " is expected" : std::string(); },
          ""};
}

void setExample(CLI::App& command, const std::string& example) {
  command.footer("Example:\n  " + example);
}

void setExample(CLI::App& command, std::function<std::string()> example) {
  command.footer([example = std::move(example)] { return "Example:\n  " + example(); });
}

namespace {

int runLine(std::vector<std::string> args, const Console& console, std::ostream& terminal,
            std::span<const Command> commands) {
  const auto log = logTo(console.err, spdlog::level::warn);
  Session session{console, *log, terminal, {}};

  CLI::App program{kAbout, "stopwalk"};
  program.set_version_flag("--version", std::string("stopwalk ") + files::kVersion);
  program.add_flag_callback(
      "-v,--verbose", [&] { log->set_level(spdlog::level::debug); }, "Log to standard error what is done");
  std::string layout;
  program.add_option("LAYOUT", layout, "Without a command: the layout to open in the window");
  program.require_subcommand(0, 1);
  program.fallthrough();
  program.get_formatter()->column_width(34);
  setExample(program, "stopwalk audit sample-layouts/tram-depot.layout.yaml");
  for (const Command& command : commands) command.add(program, session);

  // The parser would take what comes next for the value.
  const auto empty = std::ranges::find_if(
      args, [](const std::string& a) { return a.starts_with("--") && a.find('=') == a.size() - 1; });
  if (empty != args.end()) {
    console.err << "stopwalk: " << *empty << " has no value after the equals sign\n";
    return status(Exit::Wrong);
  }
  try {
    std::ranges::reverse(args);  // the parser takes them from the back
    program.parse(std::move(args));
  } catch (const CLI::ParseError& e) {
    return answer(program, e, console);
  }
  if (session.command && layout.empty()) return status(session.command());
  if (session.command) {
    console.err << "stopwalk: " << layout << " was not expected there\n";
    return status(Exit::Wrong);
  }
  return openWindow(layout, program, console);
}

int notDone(const std::string& why, const Console& console) {
  console.err << "stopwalk: " << why << "; what was asked for is not done\n";
  return status(Exit::NoFile);
}

}  // namespace

int run(std::vector<std::string> args, const Console& raw, std::span<const Command> commands) {
  // Names of files and what was typed may hold anything: it is told, and never obeyed by a terminal.
  PrintableBuffer buffer(raw.err);
  std::ostream err(&buffer);
  const Console console{raw.in, raw.out, err, raw.colour, raw.progress, raw.columns, raw.window, raw.now};
  try {
    return runLine(std::move(args), console, raw.err, commands);
  } catch (const std::bad_alloc&) {
    return notDone("there is not enough memory", console);
  } catch (const std::exception& e) {
    return notDone(e.what(), console);
  }
}

}  // namespace stopwalk::app
