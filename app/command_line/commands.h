#pragma once

#include <spdlog/logger.h>

#include <CLI/CLI.hpp>
#include <functional>
#include <memory>
#include <span>
#include <string_view>

#include "app/command_line/console.h"

// The sub-commands, a file each. To add one: its file, its line here and in all_commands.cpp (or
// plain_commands.cpp too), its source in CMakeLists.txt.
namespace stopwalk::app {

// What a sub-command has at hand, and what it leaves to be done when the line has been read.
struct Session {
  const Console& console;
  spdlog::logger& log;
  std::ostream& terminal;  // `console.err` as it is: for what moves the cursor
  std::function<Exit()> command;
};

// A sub-command by the name that addX() gives it.
struct Command {
  std::string_view name;
  void (*add)(CLI::App& program, Session& session);
};

// Those that scripts call by the hundred: they do without Qt, which takes longer to load than a small audit.
std::span<const Command> plainCommands();
// Those and the others.
std::span<const Command> allCommands();

void addAudit(CLI::App& program, Session& session);
void addCheck(CLI::App& program, Session& session);
void addMeasure(CLI::App& program, Session& session);
void addPoster(CLI::App& program, Session& session);
void addProfile(CLI::App& program, Session& session);
void addReport(CLI::App& program, Session& session);
void addRound(CLI::App& program, Session& session);
void addWalk(CLI::App& program, Session& session);

// Refuses an empty text where `what` is expected.
CLI::Validator saysSomething(const std::string& what);

// Help that ends with an example.
void setExample(CLI::App& command, const std::string& example);
// One that is made when it is asked for.
void setExample(CLI::App& command, std::function<std::string()> example);

}  // namespace stopwalk::app
