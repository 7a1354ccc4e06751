#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_found.h"
#include "app/command_line/round_input.h"
#include "app/command_line/round_time.h"
#include "core/audit/wording.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"
#include "core/inspection/check_rules.h"
#include "core/inspection/tests_of_pass.h"

namespace stopwalk::app {
namespace {

using inspection::Check;

struct Options : RoundOptions {
  std::size_t round = 0;
  std::string device;
  std::string result;
  std::string by, at;
  std::size_t corrects = 0;
  bool removed = false;
  Found found;
};

// Of a round that was walked on paper a check has the time of the paper where it is not given another; what a
// correction says of it is of no other time, and that it is no longer there is of now.
void dateByRound(Check& check, const Options& options, const inspection::Round& round, Session& session) {
  if (!round.entered || options.corrects != 0 || check.removed) return;
  check.entered = check.at;
  check.at = round.at;
  session.console.err << "stopwalk: round " << round.number << " was walked on paper: this check is dated "
                      << momentText(round.at) << ", when that was begun, and entered now"
                      << (check.result == inspection::Result::Fail ? "; it may have failed any time between"
                                                                   : "")
                      << "; else say --at\n";
}

// Puts in when the check was made.
bool isDated(Check& check, const Options& options, const inspection::Round& round, Session& session) {
  if (options.at.empty()) return dateByRound(check, options, round, session), true;
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

std::string howToSay(inspection::Result result) {
  switch (result) {
    case inspection::Result::Pass:
      return "record it with --check seen=yes";
    case inspection::Result::Fail:
      return "say what is not so with --check clear=no or --check legible=no, all else with --note";
    default:
      return "leave that out";
  }
}

// What stops nothing is neither pressed nor timed.
bool isOfItsKind(const Check& check, const planning::InspectedDevice& device, Session& session) {
  const auto may = inspection::mayBeTried(device.is_stop);
  const std::string why = device.id + " stops nothing and is only looked at: " + howToSay(check.result);
  for (const auto& [test, yes] : check.tested)
    if (std::ranges::find(may, test) == may.end())
      return wrong("--check " + std::string(word(test)), why, session), false;
  if (!device.is_stop && !check.run_down_s.empty()) return wrong("--run-down", why, session), false;
  return true;
}

// What a pass cannot be said of.
std::string contradiction(const Check& check, const planning::InspectedDevice& device) {
  if (const auto test = inspection::contradictsPass(check, device.latches))
    return "`" + std::string(word(*test)) + "=no` is a failure: record it with --result fail";
  if (device.is_stop || check.result != inspection::Result::Pass || inspection::passedSeen(check)) return "";
  if (testedFor(check, inspection::Tried::Seen) == false)
    return "`seen=no` says that it was not looked at: record it with --result not-tested";
  return "it is not said that all was looked at: say --check seen=yes, or both clear=yes and legible=yes";
}

// Whether it corrects that the device was taken away: it has another id, or is to come again.
bool takesBackRemoval(const Options& options, const Inspected& all) {
  const Check* old = all.records().findCheck(options.corrects, options.device);
  return old && old->removed && options.result == "not-tested";
}

// The device that is checked, or one that is there no more, as it was when it was last; none: wrong, and
// told.
std::optional<planning::InspectedDevice> deviceOf(const Options& options, const Inspected& all,
                                                  Session& session) {
  const std::string option = "--device " + options.device;
  const planning::InspectedDevice* there = all.find(options.device);
  if (there && options.removed)
    return wrong(option, "the layout has it: take it out there before it is recorded as removed", session);
  if (there) return *there;
  const auto gone = planning::lastKnown(options.device, all.records());
  if (!gone) return wrong(option, "there is no such device" + nearestDevice(options.device, all), session);
  if (!options.removed && !takesBackRemoval(options, all))
    return wrong(option,
                 "the layout has it no more" + nearestDevice(options.device, all) +
                     "; if it was taken away, and has not only another id now, record that with --result "
                     "not-tested --removed; if that was recorded by mistake, correct it with --result "
                     "not-tested --corrects and its number",
                 session);
  return gone;
}

const inspection::Round* roundOf(const Options& options, const Inspected& all, Session& session) {
  const auto& rounds = all.records().rounds;
  const inspection::Round* round = all.records().findRound(options.round);
  if (!round)
    wrong("--round " + std::to_string(options.round),
          rounds.empty() ? "there is no round yet: open one with stopwalk round new"
                         : "there is no such round; the last is " + std::to_string(rounds.back().number),
          session);
  return round;
}

std::optional<Check> checkFrom(const Options& options, const Inspected& all, Session& session) {
  const inspection::Round* round = roundOf(options, all, session);
  const auto device = round ? deviceOf(options, all, session) : std::nullopt;
  if (!device) return std::nullopt;
  Check check = planning::beginCheck(*round, *device, nowOf(session.console), all.layoutNow());
  check.result = *inspection::resultOf(options.result);
  check.removed = options.removed;
  if (!put(options.found, check, session) || !isOfItsKind(check, *device, session)) return std::nullopt;
  // Said in so many words, as it may be a stop one day: it was looked at, and not pressed.
  if (!device->is_stop && check.result == inspection::Result::Pass && check.tested.empty())
    check.tested = {{inspection::Tried::Seen, true}};
  if (check.removed && check.result != inspection::Result::NotTested)
    return wrong("--removed", "what is no longer there was not tested: record it with --result not-tested",
                 session);
  if (const std::string why = contradiction(check, *device); !why.empty())
    return wrong("--result pass", why, session);
  if (!isDated(check, options, *round, session)) return std::nullopt;
  if (!options.by.empty()) check.inspector = options.by;
  if (std::ranges::find(round->devices, check.device) == round->devices.end())
    session.console.err << "stopwalk: round " << round->number << " does not list "
                        << files::printable(check.device, "") << ": it is recorded there all the same\n";
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

std::string testName(inspection::Due::What what) {
  switch (what) {
    case inspection::Due::What::Full:
      return "The full test";
    case inspection::Due::What::Seen:
      return "The look";
    default:
      return "The test by hand";
  }
}

// What of a device is due though it passed this check, and what that does not say of it, a line each.
std::vector<std::string> stillDue(const Check& check, const Inspected& all,
                                  const inspection::Records& records, const inspection::Moment& now) {
  const planning::InspectedDevice* device = all.find(check.device);
  std::vector<std::string> lines;
  if (check.result != inspection::Result::Pass || !device) return lines;
  const auto states = inspection::statesOf(records, all.schedule, all.asOf(now));
  const auto due = inspection::dueOn(std::span(&check.device, 1), states, all.schedule, now.date);
  for (const inspection::Due::What what : inspection::notTestedBy(check, due, *device)) {
    std::vector<std::string> words;
    for (const inspection::Tried test : inspection::notTicked(check, std::span(&what, 1), *device))
      words.push_back(std::string(word(test)) + (testedFor(check, test) == false ? " (no)" : ""));
    lines.push_back(files::printable(testName(what) + " of " + check.device + " is still due" +
                                         (words.empty() ? "" : ", for want of " + inspection::listed(words)),
                                     ""));
  }
  return lines;
}

// Tells of a pass that does not do what it seems to.
void tellShort(const Check& check, const Inspected& all, const inspection::Records& records,
               Session& session) {
  const auto passes = inspection::passesShort(records, all.schedule, all.asOf(nowOf(session.console)));
  const auto pass = passes.find(check.number);
  if (pass == passes.end()) return;
  session.console.err << "stopwalk: "
                      << files::printable(pass->second.left_open
                                              ? check.device + " is still failed: " + reasonOf(pass->second)
                                              : clauseOf(*pass->second.not_counted),
                                          "")
                      << "\n";
}

// Tells of a device that was taken away, and counts as failed all the same.
void tellNotClosed(const Check& check, const Inspected& all, const inspection::Records& records,
                   Session& session) {
  const auto failed = inspection::failedDevices(records, all.schedule, all.asOf(nowOf(session.console)));
  const auto open = std::ranges::find(failed, check.device, &inspection::FailedDevice::device);
  if (open == failed.end() || open->removed) return;
  session.console.err << "stopwalk: " << files::printable(check.device, "") << " still counts as failed: "
                      << (check.corrects ? "a correction undoes no failure; record it as a check of its own"
                                         : "by the times given, or as the records are not as they were "
                                           "written, it is not sure that it was taken away after check " +
                                               std::to_string(open->check))
                      << "\n";
}

// What is tagged out, or to be done, until a day before the check.
bool isToBeDoneInTime(const Check& check, const Inspected& all, Session& session) {
  const auto over = inspection::overBeforeItBegan(check, all.records());
  if (!over) return true;
  const bool is_tag = check.tagged_out && check.tagged_out->until == over;
  return wrong(std::string(is_tag ? "--tagged-out-until " : "--fix-by ") + inspection::dateText(*over),
               "that is before the check" +
                   (check.corrects ? std::string(" that is corrected")
                                   : ", of " + inspection::dateText(check.at.date)) +
                   ": the last day of what is tagged out or to be done is expected",
               session),
         false;
}

Exit record(const Options& options, Session& session) {
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  auto check = checkFrom(options, all, session);
  if (!check || !mayCorrect(*check, options.corrects, all, session) ||
      !isToBeDoneInTime(*check, all, session))
    return Exit::Wrong;
  tellClock(all, nowOf(session.console), session);
  const records::Appended done = records::appendRecord(all.read.file, *check, records::kPatience,
                                                       {all.read.log.lines, all.read.log.head()});
  if (const Exit exit = tellAppended(done, all.read.file, session); exit != Exit::Done) return exit;
  check->number = done.number;
  const records::ReadRecords now = records::readRecords(options.layout);
  (check->removed ? tellNotClosed : tellShort)(*check, all, now.log.records, session);
  std::string told = sentence(*check, all.read.file);
  for (const std::string& line : stillDue(*check, all, now.log.records, nowOf(session.console)))
    if (options.json())
      session.console.err << "stopwalk: " << line << "\n";
    else
      told += line + "\n";
  return writeResult(options.json() ? files::checkJson(*check) + "\n" : told, "", session);
}

}  // namespace

void addRoundRecord(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("record", "Record one check of a device");
  addRoundOptions(c, *options);
  c.add_option("--round", options->round, "The number of the round")
      ->required()
      ->check(saysNumberOf("a round"));
  c.add_option("--device", options->device, "Its id, such as lathe-1/bar")
      ->required()
      ->check(saysSomething("a device"));
  c.add_option("--result", options->result, "What came of it")
      ->required()
      ->check(CLI::IsMember({"pass", "fail", "not-tested", "not-accessible"}));
  c.add_option("--by", options->by, "Who inspected it, if not the person of the round")
      ->transform(saysName());
  addAtOption(c, options->at, "When, where it is entered later, such as from paper");
  c.add_option("--corrects", options->corrects, "The number of the check that this one takes the place of")
      ->check(saysNumberOf("a check"));
  c.add_flag(
      "--removed", options->removed,
      "The device was taken away, and the layout has it no more: what it failed is then told no longer");
  addFoundOptions(c, options->found);
  setExample(
      c,
      "stopwalk round record shop.layout.yaml --round 1 --device lathe-1/bar --result pass \\\n"
      "    --check pressed-running=yes --run-down 2.4,2.6,2.5\n\n"
      "Ends with 0 only once the check is on the disk; 2 if input or usage is wrong, or the device failed,\n"
      "or what is corrected was corrected, meanwhile; 3 if a file cannot be read or written, or another is\n"
      "writing.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return record(*options, session); }; });
}

}  // namespace stopwalk::app
