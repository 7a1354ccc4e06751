#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_devices.h"
#include "app/command_line/round_input.h"
#include "app/command_line/round_time.h"
#include "app/command_line/table_rows.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"

namespace stopwalk::app {
namespace {

struct Options : RoundOptions {
  std::string by;
  RoundScope scope;
  WalkOptions walk;
  std::string at;
};

// When it was walked, and when that is written down; none: wrong, and told.
std::optional<inspection::Round> roundBy(const Options& options, Session& session) {
  inspection::Round round{0, nowOf(session.console), options.by, options.scope.text(), {}, {}};
  if (options.at.empty()) return round;
  const SaidTime said = timeSaid(options.at, round.at);
  if (!said.at) {
    session.console.err << "stopwalk: --at " << options.at << ": " << said.why << "; no round was opened\n";
    return std::nullopt;
  }
  round.entered = round.at;
  round.at = *said.at;
  return round;
}

Exit open(const Options& options, Session& session) {
  std::optional<inspection::Round> round = roundBy(options, session);
  if (!round) return Exit::Wrong;
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  const auto order = devicesIn(options.scope, options.walk, all, round->at, session);
  if (!order) return Exit::Wrong;
  if (order->devices.empty()) {
    session.console.err << "stopwalk: no round opened: " << options.scope.whyNone() << "\n";
    return Exit::Failed;
  }
  round->devices = order->devices;
  round->walk = options.walk.how();
  round->layout = all.layoutNow();
  tellClock(all, round->entered ? *round->entered : round->at, session);
  const records::Appended done = records::appendRecord(all.read.file, *round, records::kPatience,
                                                       {all.read.log.lines, all.read.log.head()});
  if (const Exit exit = tellAppended(done, all.read.file, session); exit != Exit::Done) return exit;
  round->number = done.number;
  if (options.json()) return writeResult(files::newRoundJson(*round, order->walk) + "\n", "", session);
  return writeResult("Round by " + files::printable(round->by, "") + " over " +
                         counted(round->devices.size(), "device") + " (" + round->of + "), recorded in " +
                         files::printable(all.read.file, "") + "\n" +
                         walkText(order->walk, planning::hoursOf(round->walk), all.input.layout->unit) +
                         "\n" + leftOutText(order->walk) + std::to_string(round->number) + "\n",
                     "", session);
}

}  // namespace

void addRoundNew(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("new", "Open a round; prints its number alone on the last line");
  addRoundOptions(c, *options);
  c.add_option("--by", options->by, "Who walks it")->required()->transform(saysName());
  addScopeOptions(c, options->scope);
  addWalkOptions(c, options->walk);
  addAtOption(c, options->at,
              "When it was begun, where it was walked before it is entered, such as on paper");
  setExample(
      c,
      "stopwalk round new shop.layout.yaml --by \"Ada Example\" --room metal\n\n"
      "Ends with 0 once the round is on the disk, 1 if there is no such device, 2 if input or usage is "
      "wrong,\n3 if a file cannot be read or written.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return open(*options, session); }; });
}

}  // namespace stopwalk::app
