#include <algorithm>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/layout_files.h"
#include "app/command_line/output.h"
#include "app/command_line/profiles.h"
#include "app/command_line/text_columns.h"
#include "core/files/faults.h"
#include "core/floor/plan.h"

namespace stopwalk::app {
namespace {

struct Options {
  std::vector<std::string> layouts;
  std::string kinds;
};

Exit checkOne(const std::string& file, LayoutInput& layouts, Profiles& profiles, Session& session) {
  const Input input = layouts.read(file);
  if (!input.layout) return input.exit;
  const ChosenProfile& chosen = profiles.of(input);
  const floor::Plan plan = floor::buildPlan(*input.layout, floor::Hours::Open);
  print(files::faultsAt(input.text, file, plan.faults), session);
  session.log.debug("checked {}: {} faults", file, plan.faults.size());
  if (!chosen.profile) return chosen.exit;
  const std::string found = plan.faults.empty()
                                ? "can be read and built\n"
                                : "can be read; drawing faults: " + std::to_string(plan.faults.size()) + "\n";
  const Exit written = writeResult(printable(file) + ": " + found, "", session);
  return std::max(plan.faults.empty() ? Exit::Done : Exit::Failed, written);
}

Exit check(const Options& options, Session& session) {
  if (asksForInputTwice(options.layouts, session)) return Exit::Wrong;
  const LayoutFiles found = layoutFiles(options.layouts, session);
  LayoutInput layouts(options.kinds, session);
  Profiles profiles(session);
  Exit worst = found.exit;
  for (const std::string& file : found.files)
    worst = std::max(worst, checkOne(file, layouts, profiles, session));
  return worst;
}

}  // namespace

void addCheck(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *program.add_subcommand("check", "Read layouts and say what is wrong with the drawing");
  c.add_option("LAYOUT", options->layouts,
               "Layout files; a folder: every *.layout.yaml in it and below; - is standard input")
      ->required();
  addKindsOption(c, options->kinds);
  setExample(
      c,
      "stopwalk check sample-layouts/tram-depot.layout.yaml\n\n"
      "Ends with 0 if all is well, 1 on a drawing fault, 2 if a file is no layout, 3 if it cannot be read.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return check(*options, session); }; });
}

}  // namespace stopwalk::app
