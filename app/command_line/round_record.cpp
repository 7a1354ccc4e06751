#include <algorithm>
#include <charconv>
#include <cmath>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/round_time.h"
#include "core/audit/profile.h"
#include "core/audit/wording.h"
#include "core/files/inspection_json.h"
#include "core/files/nearest.h"
#include "core/files/printable.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::app {
namespace {

using inspection::Check;
using inspection::Tried;

struct Options : RoundOptions {
  std::size_t round = 0;
  std::string device;
  std::string result;
  std::vector<std::string> checks;
  std::string by, at, run_down, second, note, action, corrective, owner, fix_by;
  std::size_t corrects = 0;
};

// Tells what is wrong with an option, and that nothing was recorded.
std::nullopt_t wrong(const std::string& option, const std::string& why, Session& session) {
  session.console.err << "stopwalk: " << option << ": " << why << "; nothing was recorded\n";
  return std::nullopt;
}

std::vector<std::string_view> testNames() {
  std::vector<std::string_view> names;
  for (const Tried test : inspection::kTried) names.push_back(word(test));
  return names;
}

std::optional<std::vector<std::pair<Tried, bool>>> testedIn(const Options& options, Session& session) {
  std::vector<std::pair<Tried, bool>> tested;
  for (const std::string& text : options.checks) {
    const std::size_t equals = text.find('=');
    const std::string name = text.substr(0, equals);
    const std::string answer = equals == std::string::npos ? "" : text.substr(equals + 1);
    const auto test = inspection::triedOf(name);
    const std::string option = "--check " + text;
    if (!test)
      return wrong(option, "NAME=yes or NAME=no is expected, NAME one of " + files::anyOf(testNames()),
                   session);
    if (answer != "yes" && answer != "no") return wrong(option, "yes or no is expected", session);
    if (std::ranges::find(tested, *test, &std::pair<Tried, bool>::first) != tested.end())
      return wrong(option, "it is said twice", session);
    tested.emplace_back(*test, answer == "yes");
  }
  return tested;
}

// All of `text` as seconds.
std::optional<double> secondsIn(std::string_view text) {
  double seconds = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
  const bool good = error == std::errc() && end == text.data() + text.size();
  return good && seconds >= 0 && seconds <= inspection::kMostRunDown_s ? std::optional(seconds)
                                                                       : std::nullopt;
}

std::optional<std::vector<double>> runDownIn(const Options& options, Session& session) {
  std::vector<double> runs;
  if (options.run_down.empty()) return runs;
  std::string_view rest = options.run_down;
  for (bool more = true; more;) {
    const std::size_t comma = rest.find(',');
    more = comma != std::string_view::npos;
    const auto seconds = secondsIn(rest.substr(0, comma));
    if (!seconds)
      return wrong("--run-down " + options.run_down,
                   "seconds from 0 to 3600 are expected, with commas between runs", session);
    runs.push_back(*seconds);
    if (more) rest.remove_prefix(comma + 1);
  }
  return runs;
}

std::optional<std::optional<inspection::Corrective>> correctiveIn(const Options& options, Session& session) {
  if (options.corrective.empty()) {
    if (!options.owner.empty() || !options.fix_by.empty())
      return wrong("--owner and --fix-by", "say with --corrective what is to be done", session);
    return std::optional<inspection::Corrective>();
  }
  if (options.owner.empty()) return wrong("--corrective", "say with --owner who does it", session);
  inspection::Corrective todo{options.corrective, options.owner, {}};
  if (!options.fix_by.empty()) {
    todo.due = inspection::parseDate(options.fix_by);
    if (!todo.due) return wrong("--fix-by " + options.fix_by, "a date as 2026-03-02 is expected", session);
  }
  return std::optional(todo);
}

// Puts in when the check was made: now, or as was said.
bool isDated(Check& check, const Options& options, const inspection::Round& round, Session& session) {
  check.at = nowOf(session.console);
  if (options.at.empty()) return true;
  const std::string option = "--at " + options.at;
  const SaidTime said = timeSaid(options.at, check.at);
  if (!said.at) return wrong(option, said.why, session), false;
  if (instantOf(*said.at) < instantOf(round.at))
    return wrong(option,
                 "that is before round " + std::to_string(round.number) + " was begun, " +
                     momentText(round.at) +
                     ": a round that was walked earlier is opened with stopwalk round new --at",
                 session),
           false;
  check.entered = check.at;
  check.at = *said.at;
  return true;
}

// What a pass cannot be said of.
std::string contradiction(const Check& check) {
  const auto test = inspection::contradictsPass(check);
  return test ? "`" + std::string(word(*test)) + "=no` is a failure: record it with --result fail" : "";
}

std::optional<Check> checkFrom(const Options& options, const Inspected& all, Session& session) {
  const inspection::Round* round = all.records().findRound(options.round);
  if (!round)
    return wrong("--round " + std::to_string(options.round),
                 all.records().rounds.empty() ? "there is no round yet: open one with stopwalk round new"
                                              : "there is no such round; the last is " +
                                                    std::to_string(all.records().rounds.back().number),
                 session);
  const planning::InspectedDevice* device = all.find(options.device);
  if (!device)
    return wrong("--device " + options.device,
                 "there is no such device" + audit::nearestName(options.device, all.ids()), session);
  const auto tested = testedIn(options, session);
  const auto run_down = tested ? runDownIn(options, session) : std::nullopt;
  const auto corrective = run_down ? correctiveIn(options, session) : std::nullopt;
  if (!corrective) return std::nullopt;
  Check check = planning::beginCheck(*round, *device, nowOf(session.console), all.layoutNow());
  if (!isDated(check, options, *round, session)) return std::nullopt;
  if (!options.by.empty()) check.inspector = options.by;
  check.second = options.second;
  check.tested = *tested;
  check.result = *inspection::resultOf(options.result);
  check.run_down_s = *run_down;
  check.note = options.note;
  check.action = options.action;
  check.corrective = *corrective;
  if (const std::string why = contradiction(check); !why.empty()) return wrong("--result pass", why, session);
  return check;
}

std::string whyNot(const inspection::CorrectionFault& fault) {
  switch (fault.why) {
    case inspection::CannotCorrect::Unknown:
      return "there is no check of that number";
    case inspection::CannotCorrect::OtherDevice:
      return "that check is of " + fault.device + ": a correction is of the same device";
    case inspection::CannotCorrect::OtherRound:
      return "that check is of round " + std::to_string(fault.round) + ": a correction is of the same round";
    case inspection::CannotCorrect::Corrected:
      return "it was corrected already, by " + std::to_string(fault.by) + ": correct that";
  }
  return "";
}

// Whether what it is to correct is there to be corrected.
bool mayCorrect(Check& check, std::size_t number, const Inspected& all, Session& session) {
  if (number == 0) return true;
  const std::string option = "--corrects " + std::to_string(number);
  if (const auto fault = inspection::correctionFault(all.records(), number, check.device, check.round))
    return wrong(option, whyNot(*fault), session), false;
  check.corrects = number;
  return true;
}

std::string sentence(const Check& check, const std::string& file) {
  std::string text = "Recorded as " + std::to_string(check.number) + ": " + check.device + ", " +
                     std::string(word(check.result));
  if (const auto mean = inspection::meanOf(check.run_down_s))
    text += ", run-down " + audit::secondsText(*mean) +
            (check.run_down_s.size() > 1 ? " (mean of " + std::to_string(check.run_down_s.size()) + ")" : "");
  if (check.corrects) text += ", in place of " + std::to_string(*check.corrects);
  if (check.entered) text += ", of " + momentText(check.at);
  return files::printable(text + "; on the disk in " + file, "") + "\n";
}

Exit record(const Options& options, Session& session) {
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  auto check = checkFrom(options, all, session);
  if (!check || !mayCorrect(*check, options.corrects, all, session)) return Exit::Wrong;
  tellClock(all, nowOf(session.console), session);
  const records::Appended done = records::appendRecord(all.read.file, *check);
  if (const Exit exit = tellAppended(done, all.read.file, session); exit != Exit::Done) return exit;
  check->number = done.number;
  return writeResult(options.json() ? files::checkJson(*check) + "\n" : sentence(*check, all.read.file), "",
                     session);
}

void addWhatWasFound(CLI::App& c, Options& options) {
  c.add_option("--check", options.checks,
               "NAME=yes or NAME=no: what was tried; may be repeated. NAME is one of " +
                   files::anyOf(testNames()) + ". Without any, a pass means that it was pressed and stopped")
      ->expected(1)
      ->take_all()
      ->allow_extra_args(false);
  c.add_option("--run-down", options.run_down, "Seconds to rest, of one run or several: 2.4,2.6,2.5")
      ->check(saysSomething("seconds"));
  c.add_option("--second", options.second, "The second person")->check(saysOneLine("a name"));
  c.add_option("--note", options.note, "What was found");
  c.add_option("--action", options.action, "What was done at once, such as: machine locked off");
  c.add_option("--corrective", options.corrective, "What is still to be done");
  c.add_option("--owner", options.owner, "Who does it")->check(saysOneLine("a name"));
  c.add_option("--fix-by", options.fix_by, "Until when: a date as 2026-03-02");
}

}  // namespace

void addRoundRecord(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("record", "Record one check of a device");
  addRoundOptions(c, *options);
  c.add_option("--round", options->round, "The number of the round")->required();
  c.add_option("--device", options->device, "Its id, such as lathe-1/bar")
      ->required()
      ->check(saysSomething("a device"));
  c.add_option("--result", options->result, "What came of it")
      ->required()
      ->check(CLI::IsMember({"pass", "fail", "not-tested", "not-accessible"}));
  c.add_option("--by", options->by, "Who inspected it, if not the person of the round")
      ->check(saysOneLine("a name"));
  addAtOption(c, options->at, "When, where it is entered later, such as from paper");
  c.add_option("--corrects", options->corrects, "The number of the check that this one takes the place of")
      ->check(CLI::PositiveNumber);
  addWhatWasFound(c, *options);
  setExample(
      c,
      "stopwalk round record shop.layout.yaml --round 1 --device lathe-1/bar --result pass \\\n"
      "    --check pressed-running=yes --run-down 2.4,2.6,2.5\n\n"
      "Ends with 0 only once the check is on the disk, 2 if input or usage is wrong, 3 if a file cannot "
      "be\nread or written, or another is writing.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return record(*options, session); }; });
}

}  // namespace stopwalk::app
