#include <algorithm>
#include <map>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "app/command_line/text_columns.h"
#include "core/audit/wording.h"
#include "core/files/inspection_json.h"
#include "core/inspection/on_record.h"
#include "core/inspection/round_progress.h"

namespace stopwalk::app {
namespace {

using inspection::Check;

struct Options : RoundOptions {
  std::size_t round = 0;
  std::string device;
};

files::ShownRecords shownFor(const Options& options, const Inspected& all, const inspection::Now& now) {
  const inspection::Records& records = all.records();
  files::ShownRecords shown;
  shown.fault = files::faultText(all.read.log);
  const std::vector<std::size_t> rounds = inspection::roundsOf(records);
  for (const inspection::Round& r : records.rounds)
    if (options.round == 0 || r.number == options.round) shown.rounds.push_back(r);
  for (std::size_t i = 0; i < records.checks.size(); ++i)
    if ((options.round == 0 || rounds[i] == options.round) &&
        (options.device.empty() || records.checks[i].device == options.device))
      shown.checks.push_back(records.checks[i]);
  const inspection::OnRecord on_record(records, all.schedule, all.asOf(now));
  for (const inspection::FailedDevice& f : on_record.failed())
    if (options.device.empty() || f.device == options.device) shown.failed.push_back(f);
  shown.failed = planning::withoutRemoved(shown.failed, *all.input.layout);
  shown.gone = planning::notInLayout(shown.failed, *all.input.layout);
  for (const Check* c :
       planning::withoutRemoved(on_record.openActions(), on_record.removed(), *all.input.layout))
    if (options.device.empty() || c->device == options.device) shown.actions.push_back(*c);
  return shown;
}

constexpr std::size_t kDay = 10, kTime = 5;  // characters: 2026-03-02, 09:15

using Passes = std::map<std::size_t, inspection::ShortOfPass>;

// On the clock of the place: `2026-03-02 09:15`
std::string whenText(const inspection::Moment& moment) {
  std::string text = inspection::momentText(moment).substr(0, kDay + 1 + kTime);
  text[kDay] = ' ';
  return text;
}
std::string whenText(const Check& check) {
  return check.is_undated ? timeText(check) : whenText(check.at);
}

// What is not as it may seem: when it was written, or that it is in doubt.
std::string foundText(const Check& c, std::size_t corrected_by, const inspection::Records& records,
                      const Passes& passes) {
  std::vector<std::string> parts;
  if (corrected_by != 0) parts.push_back("corrected by " + std::to_string(corrected_by));
  if (c.corrects) parts.push_back("in place of " + std::to_string(*c.corrects));
  if (c.corrects && !c.entered) parts.push_back("written on " + whenText(c.at));
  if (c.removed) parts.push_back("removed");
  if (c.no_stop) parts.push_back("no stop: only looked at");
  if (c.number <= records.unsure_to) parts.push_back("perhaps not as it was written");
  if (const auto* pass = findShort(passes, c)) parts.push_back(clauseOf(*pass));
  if (c.entered) parts.push_back("entered on " + whenText(*c.entered));
  for (const auto& [test, yes] : c.tested) parts.push_back(std::string(word(test)) + (yes ? "" : ": no"));
  if (const auto mean = inspection::meanOf(c.run_down_s))
    parts.push_back("run-down " + audit::secondsText(*mean));
  if (c.tagged_out)
    parts.push_back("machine tagged out by " + c.tagged_out->by +
                    (c.tagged_out->until ? ", until " + inspection::dateText(*c.tagged_out->until) : ""));
  for (const std::string& text : {c.note, c.action})
    if (!text.empty()) parts.push_back(text);
  std::string all;
  for (const std::string& part : parts) all += (all.empty() ? "" : "; ") + part;
  return all;
}

// As wide as the widest of the cells in that column and its head, within `most`.
std::size_t widestIn(std::size_t column, const std::string& head,
                     const std::vector<std::vector<std::string>>& rows, std::size_t most) {
  std::size_t widest = width(head);
  for (const auto& cells : rows) widest = std::max(widest, width(cells[column]));
  return std::min(widest, most);
}

std::vector<Column> columnsFor(const std::vector<std::vector<std::string>>& rows, std::size_t columns) {
  const std::size_t gaps = 4 * 2, third = columns / 3;
  std::vector<Column> all = {{"NO.", 0, true}, {"RESULT"}, {"WHEN"}, {"DEVICE"}, {"BY"}};
  std::size_t left = columns - gaps;
  for (std::size_t i = 0; i < all.size(); ++i) {
    all[i].columns = widestIn(i, all[i].head, rows, i + 1 < all.size() ? third : left);
    left -= all[i].columns;
  }
  return all;
}

// What was found stands below each, as wide as the page is.
std::string checkTable(const std::vector<Check>& checks, const inspection::Records& records,
                       const Passes& passes, const TableStyle& style) {
  if (checks.empty()) return "no checks\n";
  const std::vector<std::size_t> corrected = inspection::correctedBy(records);
  const std::vector<const Check*> dated = inspection::datedBy(records);
  std::vector<std::vector<std::string>> rows;
  std::vector<std::string> found;
  for (const Check& c : checks) {
    const auto place =
        static_cast<std::size_t>(records.findCheck(c.number, c.device) - records.checks.data());
    const std::string by_whom = c.inspector + (c.second.empty() ? "" : ", " + c.second);
    rows.push_back({std::to_string(c.number), std::string(word(c.result)), whenText(*dated[place]),
                    printable(c.device), printable(by_whom)});
    found.push_back(foundText(c, corrected[place], records, passes));
  }
  const std::vector<Column> columns = columnsFor(rows, style.columns);
  std::string text = headRow(columns, style);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    text += row(columns, rows[i], Ink::Plain, style);
    if (!found[i].empty()) text += paragraph(found[i], columns.front().columns + 2, style);
  }
  return text;
}

// What of a round's list is still to be done.
std::string roundText(const inspection::Round& round, const inspection::Records& records,
                      const TableStyle& style) {
  const std::vector<std::string> left = inspection::stillToCheck(round, records);
  std::string text = "Round " + std::to_string(round.number) + ", " + inspection::dateText(round.at.date) +
                     ", by " + round.by + " (" + round.of +
                     "): " + std::to_string(round.devices.size() - left.size()) + " of " +
                     counted(round.devices.size(), "device") + " checked.";
  if (!left.empty()) text += " Still to come: " + audit::listed(left, left.size()) + ".";
  return paragraph(text, 0, style);
}

std::string failedText(const inspection::FailedDevice& f, bool by_another) {
  return f.device + ": failed since " + inspection::dayText(f.since) +
         (f.since == f.on ? "" : ", and last on " + inspection::dayText(f.on)) + " (" +
         std::to_string(f.check) + ", " + (isFinderKnown(f) ? f.found_by : "by " + inspection::kUnreadName) +
         "); failed until it passes a check of its own" + (by_another ? ", made by " + whoElse(f) : "") + ".";
}

std::string openText(const files::ShownRecords& shown, const Options& options, const Inspected& all,
                     const TableStyle& style) {
  std::string text;
  for (const inspection::FailedDevice& f : shown.failed) {
    const bool is_gone = std::ranges::find(shown.gone, f) != shown.gone.end();
    text += paragraph(is_gone ? goneText(f) + "." : failedText(f, all.schedule.retest_by_another), 0, style);
  }
  for (const Check& c : shown.actions)
    text += paragraph(c.device + ": " + c.corrective->what + ", by " + c.corrective->owner +
                          (c.corrective->due ? ", until " + inspection::dateText(*c.corrective->due) : "") +
                          " (" + std::to_string(c.number) + ").",
                      0, style);
  if (!text.empty()) return text;
  return paragraph((shown.fault.empty() ? "Nothing is open" : "Nothing is known to be open") +
                       std::string(options.device.empty() ? "" : " of " + options.device) + ".",
                   0, style);
}

std::string pageOf(const Options& options, const files::ShownRecords& shown, const Inspected& all,
                   const Session& session) {
  const inspection::Now now = nowOf(session.console);
  const TableStyle style{std::min(session.console.columns, kWidestText), session.console.colour};
  std::string text = shown.fault.empty() ? "" : paragraph(shown.fault, 0, style);
  if (options.device.empty())
    for (const inspection::Round& r : shown.rounds) text += roundText(r, all.records(), style);
  const Passes passes = inspection::passesShort(all.records(), all.schedule, all.asOf(now));
  return text + (text.empty() ? "" : "\n") + checkTable(shown.checks, all.records(), passes, style) + "\n" +
         openText(shown, options, all, style);
}

// Whether a round and device asked for are known, to the layout or to the records.
bool areKnown(const Options& options, const Inspected& all, Session& session) {
  const inspection::Records& records = all.records();
  if (options.round != 0 && !records.findRound(options.round)) {
    session.console.err << "stopwalk: --round " << options.round << ": there is no such round\n";
    return false;
  }
  if (options.device.empty() || all.find(options.device) ||
      std::ranges::find(records.checks, options.device, &Check::device) != records.checks.end())
    return true;
  session.console.err << "stopwalk: --device " << options.device << ": there is no such device"
                      << nearestDevice(options.device, all) << "\n";
  return false;
}

Exit show(const Options& options, Session& session) {
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  if (!areKnown(options, all, session)) return Exit::Wrong;
  const files::ShownRecords shown = shownFor(options, all, nowOf(session.console));
  return writeResult(options.json() ? files::shownJson(shown) + "\n" : pageOf(options, shown, all, session),
                     "", session);
}

}  // namespace

void addRoundShow(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("show", "Show rounds, checks, and what is open");
  addRoundOptions(c, *options);
  c.add_option("--round", options->round, "Only this round")->check(saysNumberOf("a round"));
  c.add_option("--device", options->device, "Only this device")->check(saysSomething("a device"));
  setExample(c, "stopwalk round show shop.layout.yaml --device lathe-1/bar");
  c.callback(
      [options, &session] { session.command = [options, &session] { return show(*options, session); }; });
}

}  // namespace stopwalk::app
