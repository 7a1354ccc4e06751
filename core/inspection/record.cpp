#include "core/inspection/record.h"

#include <algorithm>
#include <numeric>

#include "core/inspection/check_rules.h"

namespace stopwalk::inspection {
namespace {

// Records stand by ascending number.
template <class Things>
auto* findNumber(Things& things, std::size_t number) {
  const auto at = std::ranges::lower_bound(things, number, {}, [](const auto& t) { return t.number; });
  return at != things.end() && at->number == number ? &*at : nullptr;
}

template <class Choices>
auto ofWord(const Choices& choices, std::string_view text) {
  const auto at = std::ranges::find(choices, text, [](auto c) { return word(c); });
  return at == choices.end() ? std::nullopt : std::optional(*at);
}

bool wasPressed(const Check& check) {
  return testedFor(check, Tried::Pressed).value_or(false) ||
         testedFor(check, Tried::PressedRunning).value_or(false);
}

}  // namespace

const Round* Records::findRound(std::size_t number) const {
  return findNumber(rounds, number);
}

const Check* Records::findCheck(std::size_t number) const {
  return findNumber(checks, number);
}

const Check* Records::findCheck(std::size_t number, const std::string& device) const {
  const Check *check = findCheck(number), *end = checks.data() + checks.size();
  while (check && check->device != device)
    check = check + 1 != end && check[1].number == number ? check + 1 : nullptr;
  return check;
}

std::string timeText(const Check& check) {
  return check.is_undated ? kNoReadableTime : momentText(check.at);
}

std::optional<bool> testedFor(const Check& check, Tried test) {
  for (const auto& [t, yes] : check.tested)
    if (t == test) return yes;
  return std::nullopt;
}

bool wasSeen(const Check& check) {
  const auto wasSo = [&](Tried test) { return testedFor(check, test).value_or(false); };
  return wasSo(Tried::Seen) || (wasSo(Tried::Clear) && wasSo(Tried::Legible));
}

bool passedPressed(const Check& check) {
  if (check.result != Result::Pass || contradictsPass(check)) return false;
  return (check.tested.empty() && !check.no_stop) || wasPressed(check);
}

bool passedSeen(const Check& check) {
  if (check.result != Result::Pass || contradictsPass(check)) return false;
  if (wasSeen(check)) return true;
  return check.tested.empty() || (wasPressed(check) && testedFor(check, Tried::Seen) != false);
}

bool passedInFull(const Check& check, bool latches) {
  return check.result == Result::Pass && !contradictsPass(check, latches) && missingInFull(check).empty();
}

std::vector<Tried> missingInFull(const Check& check) {
  const auto wasSo = [&](Tried test) { return testedFor(check, test).value_or(false); };
  std::vector<Tried> missing;
  const bool in_parts = wasSo(Tried::Clear) || wasSo(Tried::Legible);
  if (!wasSeen(check) && !in_parts) missing.push_back(Tried::Seen);
  if (!wasSeen(check) && in_parts) missing.push_back(wasSo(Tried::Clear) ? Tried::Legible : Tried::Clear);
  for (const Tried test : {Tried::PressedRunning, Tried::StaysStoppedReleased, Tried::StaysStoppedPower})
    if (!wasSo(test)) missing.push_back(test);
  return missing;
}

std::optional<double> meanOf(const std::vector<double>& run_down_s) {
  if (run_down_s.empty()) return std::nullopt;
  return std::accumulate(run_down_s.begin(), run_down_s.end(), 0.0) / static_cast<double>(run_down_s.size());
}

std::string_view word(Tried test) {
  switch (test) {
    case Tried::Seen:
      return "seen";
    case Tried::Clear:
      return "clear";
    case Tried::Legible:
      return "legible";
    case Tried::Pressed:
      return "pressed";
    case Tried::PressedRunning:
      return "pressed-running";
    case Tried::Latches:
      return "latches";
    case Tried::StaysStoppedReleased:
      return "stays-stopped-when-released";
    case Tried::StaysStoppedPower:
      return "stays-stopped-when-power-returns";
  }
  return "";
}

std::string_view word(Result result) {
  switch (result) {
    case Result::Pass:
      return "pass";
    case Result::Fail:
      return "fail";
    case Result::NotTested:
      return "not-tested";
    case Result::NotAccessible:
      return "not-accessible";
  }
  return "";
}

std::optional<Tried> triedOf(std::string_view text) {
  return ofWord(kTried, text);
}

std::optional<Result> resultOf(std::string_view text) {
  return ofWord(kResults, text);
}

}  // namespace stopwalk::inspection
