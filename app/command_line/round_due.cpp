#include <algorithm>
#include <memory>

#include "app/command_line/output.h"
#include "app/command_line/round_commands.h"
#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "core/files/inspection_json.h"
#include "core/files/printable.h"
#include "core/inspection/on_record.h"
#include "core/inspection/round_progress.h"

namespace stopwalk::app {
namespace {

using inspection::Date;
using inspection::Due;

struct Options : RoundOptions {
  std::string on;
};

std::string dueText(const Due& due, const inspection::DeviceState* state, Date day) {
  std::string text = due.device + ": ";
  const std::string end = due.despite ? "; " + clauseOf(*due.despite) + "\n" : "\n";
  if (due.what == Due::What::Retest)
    return text + "failed on " + inspection::dayText(state->failed->on) + sinceText(*state->failed) +
           "; mend it and check it again (overdue)" + end;
  text += std::string(word(due.what)) + ", ";
  if (!due.on) return text + (due.despite ? "to be done again" : "never passed") + " (overdue)" + end;
  text += "due " + inspection::dateText(*due.on);
  const int late = inspection::daysBetween(*due.on, day);
  return text + (late > 0 ? " (overdue by " + counted(static_cast<std::size_t>(late), "day") + ")" : "") +
         end;
}

// With all else that is due at them.
std::vector<Due> failedFirst(std::vector<Due> list, std::span<const inspection::DeviceState> states) {
  std::ranges::stable_partition(list, [&](const Due& due) {
    const auto* state = inspection::findState(states, due.device);
    return state && state->failed;
  });
  return list;
}

Exit due(const Options& options, Session& session) {
  const inspection::Moment now = nowOf(session.console);
  const Date today = now.date;
  const auto asked = options.on.empty() ? std::optional(today) : inspection::parseDate(options.on);
  if (!asked) {
    session.console.err << "stopwalk: --on " << options.on << ": a date as 2026-03-02 is expected\n";
    return Exit::Wrong;
  }
  const Date day = *asked;
  if (day < today) {
    session.console.err << "stopwalk: --on " << options.on
                        << ": that day is past, and what was due then the records of today do not say: "
                        << inspection::dateText(today) << " or a day to come is expected\n";
    return Exit::Wrong;
  }
  const Inspected all = readInspected(options, session);
  if (all.exit) return *all.exit;
  const std::vector<std::string> ids = all.ids();
  const inspection::OnRecord on_record(all.records(), all.schedule, all.asOf(now));
  const auto states = on_record.states();
  const std::vector<Due> list = failedFirst(inspection::dueOn(ids, states, all.schedule, day), states);
  std::vector<inspection::Check> actions;
  const auto open = planning::withoutRemoved(on_record.openActions(), on_record.removed(), *all.input.layout);
  for (const inspection::Check* c : open)
    if (c->corrective->due && *c->corrective->due <= day) actions.push_back(*c);
  const auto next = inspection::nextDue(ids, states, all.schedule, day, open);
  const auto gone = planning::notInLayout(on_record.failed(), *all.input.layout);
  const std::string fault = files::faultText(all.read.log);
  const auto overdue =
      std::ssize(gone) + std::ranges::count_if(list, [&](const Due& d) { return isOverdue(d, day); }) +
      std::ranges::count_if(actions, [&](const auto& c) { return *c.corrective->due < day; });
  std::string text;
  if (options.json()) {
    text = files::dueJson({day, list, actions, next, gone, fault}) + "\n";
  } else {
    if (!fault.empty()) text += fault + "\n";
    for (const inspection::FailedDevice& f : gone) text += goneText(f) + " (overdue)\n";
    for (const Due& d : list) text += dueText(d, inspection::findState(states, d.device), day);
    for (const inspection::Check& c : actions)
      text += c.device + ": " + c.corrective->what + ", by " + c.corrective->owner + ", due " +
              inspection::dateText(*c.corrective->due) + (*c.corrective->due < day ? " (overdue)\n" : "\n");
    text += "On " + inspection::dateText(day) + ": " +
            std::to_string(list.size() + actions.size() + gone.size()) + " due, " + std::to_string(overdue) +
            " of them overdue" + (next ? "; next on " + inspection::dateText(*next) : std::string()) + "\n";
    text = files::printable(text, "\n");
  }
  return std::max(overdue > 0 ? Exit::Failed : Exit::Done, writeResult(text, "", session));
}

// An example that holds on any day.
Date inMonth(const Session& session) {
  return inspection::monthsAfter(nowOf(session.console).date, 1);
}

}  // namespace

void addRoundDue(CLI::App& round, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c = *round.add_subcommand("due", "What is due, and what is overdue");
  addRoundOptions(c, *options);
  c.add_option("--on", options->on,
               "What is due by this day, today or to come, written as 2026-03-02; default: today");
  setExample(c, [&session] {
    return "stopwalk round due shop.layout.yaml --on " + inspection::dateText(inMonth(session)) +
           "\n\n"
           "Ends with 0 if nothing is overdue, 1 if something is, 2 if input or usage is wrong, 3 if a file "
           "cannot\nbe read or written. What was never recorded is overdue.";
  });
  c.callback(
      [options, &session] { session.command = [options, &session] { return due(*options, session); }; });
}

}  // namespace stopwalk::app
