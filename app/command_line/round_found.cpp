#include "app/command_line/round_found.h"

#include <algorithm>
#include <charconv>

#include "app/command_line/round_input.h"
#include "core/files/nearest.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::app {
namespace {

using inspection::Tried;

std::vector<std::string_view> testNames() {
  std::vector<std::string_view> names;
  for (const Tried test : inspection::kTried) names.push_back(word(test));
  return names;
}

std::optional<std::vector<std::pair<Tried, bool>>> testedIn(const Found& found, Session& session) {
  std::vector<std::pair<Tried, bool>> tested;
  for (const std::string& text : found.checks) {
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

std::vector<std::string> partsOf(const std::string& text) {
  std::vector<std::string> parts(1);
  for (const char c : text)
    if (c == ',')
      parts.emplace_back();
    else
      parts.back() += c;
  return parts;
}

// Whole seconds behind a comma may be what follows a decimal comma.
bool mayBeDecimal(const std::string& whole, const std::string& behind) {
  return (whole + behind).find('.') == std::string::npos;
}

std::optional<std::vector<double>> runDownIn(const Found& found, Session& session) {
  std::vector<double> runs;
  if (found.run_down.empty()) return runs;
  const std::string option = "--run-down " + found.run_down;
  const std::vector<std::string> parts = partsOf(found.run_down);
  for (const std::string& part : parts) {
    const auto seconds = secondsIn(part);
    if (!seconds)
      return wrong(option, "seconds from 0 to 3600 are expected as 1.4, with commas between runs", session);
    runs.push_back(*seconds);
  }
  const auto unclear = std::ranges::adjacent_find(parts, mayBeDecimal);
  if (unclear == parts.end()) return runs;
  const std::string &one = *unclear, &next = *(unclear + 1);
  return wrong(option,
               "one run or two? say " + one + "." + next + " for one, " + one + ".0," + next + ".0 for two",
               session);
}

std::optional<std::optional<inspection::TagOut>> tagOutIn(const Found& found, Session& session) {
  if (found.tagged_by.empty()) {
    if (!found.tagged_until.empty())
      return wrong("--tagged-out-until", "say with --tagged-out-by who tagged the machine out", session);
    return std::optional<inspection::TagOut>();
  }
  inspection::TagOut tag{found.tagged_by, {}};
  if (!found.tagged_until.empty()) {
    tag.until = inspection::parseDate(found.tagged_until);
    if (!tag.until)
      return wrong("--tagged-out-until " + found.tagged_until, "a date as 2026-03-02 is expected", session);
  }
  return std::optional(tag);
}

std::optional<std::optional<inspection::Corrective>> correctiveIn(const Found& found, Session& session) {
  if (found.corrective.empty()) {
    if (!found.owner.empty() || !found.fix_by.empty())
      return wrong("--owner and --fix-by", "say with --corrective what is to be done", session);
    return std::optional<inspection::Corrective>();
  }
  if (found.owner.empty()) return wrong("--corrective", "say with --owner who does it", session);
  inspection::Corrective todo{found.corrective, found.owner, {}};
  if (!found.fix_by.empty()) {
    todo.due = inspection::parseDate(found.fix_by);
    if (!todo.due) return wrong("--fix-by " + found.fix_by, "a date as 2026-03-02 is expected", session);
  }
  return std::optional(todo);
}

}  // namespace

std::nullopt_t wrong(const std::string& option, const std::string& why, Session& session) {
  session.console.err << "stopwalk: " << option << ": " << why << "; nothing was recorded\n";
  return std::nullopt;
}

bool put(const Found& found, inspection::Check& check, Session& session) {
  const auto tested = testedIn(found, session);
  const auto run_down = tested ? runDownIn(found, session) : std::nullopt;
  const auto corrective = run_down ? correctiveIn(found, session) : std::nullopt;
  const auto tagged_out = corrective ? tagOutIn(found, session) : std::nullopt;
  if (!tagged_out) return false;
  check.second = found.second;
  check.tested = *tested;
  check.run_down_s = *run_down;
  check.note = found.note;
  check.action = found.action;
  check.corrective = *corrective;
  check.tagged_out = *tagged_out;
  return true;
}

void addFoundOptions(CLI::App& c, Found& found) {
  c.add_option(
       "--check", found.checks,
       "NAME=yes or NAME=no: what was tried; may be repeated. NAME is one of " + files::anyOf(testNames()) +
           ". Without any, a pass means that it was pressed and stopped; what stops nothing, such as a "
           "guarded start, is only looked at: seen, clear, legible")
      ->expected(1)
      ->take_all()
      ->allow_extra_args(false);
  c.add_option("--run-down", found.run_down, "Seconds to rest, of one run or several: 2.4,2.6,2.5")
      ->check(saysSomething("seconds"));
  c.add_option("--second", found.second, "The second person")->transform(saysName());
  c.add_option("--note", found.note, "What was found");
  c.add_option("--tagged-out-by", found.tagged_by, "Who tagged the machine out")->transform(saysName());
  c.add_option("--tagged-out-until", found.tagged_until,
               "Until when it is: a date as 2026-03-02; without, until the device passes");
  c.add_option("--action", found.action, "What else was done at once, such as: isolator locked off");
  c.add_option("--corrective", found.corrective, "What is still to be done");
  c.add_option("--owner", found.owner, "Who does it")->transform(saysName());
  c.add_option("--fix-by", found.fix_by, "Until when: a date as 2026-03-02");
}

}  // namespace stopwalk::app
