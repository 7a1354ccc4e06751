#include "core/audit/accepted.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

#include "core/audit/rule.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

// Says nothing where the rule may find another thing tomorrow, or the word without the brackets that tell it
// from an id, or of a check the day alone.
bool saysTooLittle(const layout::AcceptedFinding& accepted, const Finding& finding) {
  return !finding.which.empty() &&
         (accepted.which.empty() || layout::whichWord(accepted.which) == finding.which ||
          (finding.which.front() == '(' && finding.which.ends_with(", " + accepted.which + ")")));
}

AcceptedState stateByDay(const Acceptance& a, inspection::Date today) {
  const auto last = inspection::parseDate(a.until);
  if (!last) return AcceptedState::NoDay;
  return *last < today ? AcceptedState::Over : AcceptedState::Yes;
}

// What people are told of a figure is rounded: so much is no difference to them.
double toldWithin(const std::string& unit) {
  if (unit == "s") return 0.05;
  return unit.empty() ? 0.5 : 0.005;  // a count; metres and percents have two decimals
}

// Past its limit to the same side; without a limit what is otherwise may be worse.
bool isWorse(const Finding& f) {
  if (!f.accepted->measured) return false;
  if (!f.measured) return true;
  const double more = *f.measured - *f.accepted->measured;
  const double within = toldWithin(f.unit) + kRounding;
  if (!f.limit) return std::abs(more) > within;
  const Rule* rule = findRule(f.rule);
  const bool more_is_worse = *f.measured > *f.limit || (rule && rule->more_is_worse);
  return (more_is_worse ? more : -more) > within;
}

std::string noLonger(const std::string& why, const Acceptance& a) {
  return "no longer accepted: " + why + "; it was " + acceptedText(a);
}

}  // namespace

bool mayMean(const layout::AcceptedFinding& accepted, const Finding& finding) {
  return accepted.rule == finding.rule && accepted.subject == finding.subject &&
         (accepted.which == finding.which || saysTooLittle(accepted, finding));
}

void markAccepted(std::vector<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted) {
  if (accepted.empty()) return;
  std::map<std::pair<std::string_view, std::string_view>, std::vector<Finding*>> spoken_of;
  for (const layout::AcceptedFinding& a : accepted) spoken_of[{a.subject, a.rule}];
  for (Finding& f : findings) {
    f.accepted = f.unclear = std::nullopt;
    if (const auto found = spoken_of.find({f.subject, f.rule}); found != spoken_of.end())
      found->second.push_back(&f);
  }
  for (const layout::AcceptedFinding& a : accepted)
    for (Finding* f : spoken_of[{a.subject, a.rule}])
      if (mayMean(a, *f))
        (a.which == f->which ? f->accepted : f->unclear) = Acceptance{a.reason, a.by, a.until, a.measured};
  for (Finding& f : findings)
    if (f.accepted) f.unclear.reset();
}

std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const std::vector<Finding>& findings) {
  std::vector<layout::AcceptedFinding> idle;
  for (const layout::AcceptedFinding& a : accepted)
    if (std::ranges::none_of(findings, [&](const Finding& f) { return mayMean(a, f); })) idle.push_back(a);
  return idle;
}

std::string acceptedText(const Acceptance& a) {
  return "accepted by " + a.by + " until " + a.until + ": " + a.reason;
}

// In quotes: of several ids the commas would part what stands between braces.
std::string whichLine(const Finding& f) {
  return "which: \"" + f.which + "\"";
}

AcceptedState acceptedState(const Finding& f, inspection::Date today) {
  if (!f.accepted) return f.unclear ? AcceptedState::Unclear : AcceptedState::No;
  const AcceptedState by_day = stateByDay(*f.accepted, today);
  return by_day == AcceptedState::Yes && isWorse(f) ? AcceptedState::Worse : by_day;
}

std::optional<double> acceptedFigure(const Finding& f) {
  constexpr double kKept = 1000;
  return f.measured ? std::optional(std::round(*f.measured * kKept) / kKept) : std::nullopt;
}

std::string acceptedText(const Acceptance& a, inspection::Date today) {
  const AcceptedState state = stateByDay(a, today);
  return state == AcceptedState::Yes
             ? acceptedText(a)
             : noLonger(state == AcceptedState::Over ? "the last day has passed"
                                                     : "its last day is none, such as 2026-12-31",
                        a);
}

std::string worseText(const Finding& f, layout::LengthUnit unit) {
  const double was = f.accepted->measured.value_or(0);
  if (!f.measured) return "accepted at " + figureText(was, was, f.unit, unit) + ", now without a figure";
  return "accepted at " + figureText(was, *f.measured, f.unit, unit) + ", now " +
         figureText(*f.measured, was, f.unit, unit);
}

std::string acceptedText(const Finding& f, inspection::Date today, layout::LengthUnit unit) {
  return acceptedState(f, today) == AcceptedState::Worse ? noLonger(worseText(f, unit), *f.accepted)
                                                         : acceptedText(*f.accepted, today);
}

std::string unclearText(const Finding& f) {
  return "not accepted: what " + f.unclear->by + " accepts until " + f.unclear->until +
         " may be this finding or another of this rule about " + f.subject +
         "; to accept this one, the layout must say " + whichLine(f);
}

}  // namespace stopwalk::audit
