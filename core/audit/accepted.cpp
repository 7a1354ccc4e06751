#include "core/audit/accepted.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <map>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/audit/rule.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

const std::string kOnceOfAllDoorFaults = layout::whichWord("wall");

// Says nothing where the rule may find another thing tomorrow, or the word without the brackets that tell it
// from an id, or of a check the day alone, or that a door is not in its wall as it should, whyever.
bool saysTooLittle(const layout::AcceptedFinding& accepted, const Finding& finding) {
  return !finding.which.empty() &&
         (accepted.which.empty() || layout::whichWord(accepted.which) == finding.which ||
          (accepted.which == kOnceOfAllDoorFaults && layout::isWhichWord(finding.which)) ||
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
  return (moreIsWorse(f) ? more : -more) > within;
}

// What is found of a station, as far as it decides how the station stands.
struct Told {
  bool all_accepted = true;
  bool no_stop = false, no_phone = false;  // is among what is accepted

  void add(const Finding& f, inspection::Date today) {
    if (f.severity == Severity::Note) return;
    all_accepted = all_accepted && acceptedState(f, today) == AcceptedState::Yes;
    const Lacks lacks = lackTold(f);
    no_stop = no_stop || lacks.stop;
    no_phone = no_phone || lacks.phone;
  }
  bool isAllOf(const StationReport& s) const {
    return all_accepted && (!s.lacks_stop || no_stop) && (!s.lacks_phone || no_phone);
  }
};

std::string overText(AcceptedState state) {
  if (state == AcceptedState::Over) return "the last day has passed";
  return state == AcceptedState::NoDay ? "its last day cannot be read: a day such as 2026-12-31 is expected"
                                       : "";
}

// "accepted at 5.2 m, now 9.8 m"
std::string worseText(const Finding& f, layout::LengthUnit unit) {
  const double was = f.accepted->measured.value_or(0), is = f.measured.value_or(was);
  return "accepted at " + figureText(was, is, f.unit, unit) + ", now " +
         (f.measured ? figureText(is, was, f.unit, unit) : "without a figure");
}

std::string acceptedText(const Acceptance& a, const std::string& why_no_longer) {
  return why_no_longer.empty() ? acceptedText(a)
                               : "no longer accepted: " + why_no_longer + "; it was " + acceptedText(a);
}

}  // namespace

Lacks lackTold(const Finding& f) {
  const auto of = [&](std::initializer_list<std::string_view> some) {
    return std::ranges::find(some, f.rule) != some.end();
  };
  const bool off_floor = f.rule == "drawing-fault", no_way = f.rule == "unreachable";
  return {off_floor || of({"stop-out-of-reach", "stop-too-far"}) ||
              (no_way && f.which == layout::whichWord("stop")),
          off_floor || of({"phone-too-far", "phone-after-hours"}) ||
              (no_way && f.which == layout::whichWord("phone"))};
}

bool mayMean(const layout::AcceptedFinding& accepted, const Finding& finding) {
  return accepted.rule == finding.rule && accepted.subject == finding.subject &&
         (accepted.which == finding.which || saysTooLittle(accepted, finding));
}

bool mayMeanAnother(const layout::AcceptedFinding& accepted, const Finding& than,
                    const SharedList<Finding>& all) {
  return std::ranges::any_of(
      all, [&](const Finding& f) { return f.which != than.which && !f.accepted && mayMean(accepted, f); });
}

void markAccepted(SharedList<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted) {
  if (accepted.empty()) return;
  std::map<std::pair<std::string_view, std::string_view>, std::vector<const layout::AcceptedFinding*>> about;
  for (const layout::AcceptedFinding& a : accepted) about[{a.subject, a.rule}].push_back(&a);
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const Finding& was = findings[i];
    std::optional<Acceptance> exact, unclear;
    if (const auto found = about.find({was.subject, was.rule}); found != about.end())
      for (const layout::AcceptedFinding* a : found->second)
        if (mayMean(*a, was))
          (a->which == was.which ? exact : unclear) = Acceptance{a->reason, a->by, a->until, a->measured};
    if (exact) unclear.reset();
    if (exact == was.accepted && unclear == was.unclear) continue;
    Finding& marked = findings.own(i);
    marked.accepted = std::move(exact);
    marked.unclear = std::move(unclear);
  }
}

std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const SharedList<Finding>& findings) {
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

std::string namedText(const layout::AcceptedFinding& a) {
  const std::string which =
      a.which.empty() || layout::isWhichWord(a.which) ? a.which : layout::whichWord(a.which);
  return a.rule + " about " + a.subject + (which.empty() ? "" : " " + which);
}

bool moreIsWorse(const Finding& finding) {
  return *finding.measured > *finding.limit;
}

AcceptedState acceptedState(const Finding& f, inspection::Date today) {
  if (!f.accepted) return f.unclear ? AcceptedState::Unclear : AcceptedState::No;
  const AcceptedState by_day = stateByDay(*f.accepted, today);
  return by_day == AcceptedState::Yes && isWorse(f) ? AcceptedState::Worse : by_day;
}

std::vector<bool> acceptedStations(const Report& report, inspection::Date today) {
  std::vector<bool> accepted(report.stations.size());
  if (std::ranges::none_of(report.findings, [](const Finding& f) { return f.accepted.has_value(); }))
    return accepted;
  std::unordered_map<std::string_view, Told> told;
  for (const Finding& f : report.findings) told[f.subject].add(f, today);
  for (std::size_t i = 0; i < accepted.size(); ++i) {
    const StationReport& s = report.stations[i];
    const auto found = told.find(s.id);
    accepted[i] = s.verdict != Verdict::Meets && found != told.end() && found->second.isAllOf(s);
  }
  return accepted;
}

AcceptedState idleState(const layout::AcceptedFinding& a, inspection::Date today) {
  const AcceptedState by_day = stateByDay({a.reason, a.by, a.until}, today);
  const Rule* rule = findRule(a.rule);
  const bool says_too_little = rule && (rule->several || rule->names_which) && a.which.empty();
  return by_day == AcceptedState::Yes && says_too_little ? AcceptedState::Unclear : by_day;
}

// Of several limits the last is in the unit of what is measured.
std::string acceptedFigureText(const layout::AcceptedFinding& a, layout::LengthUnit unit) {
  const Rule* rule = findRule(a.rule);
  if (!a.measured || !rule || rule->limits.empty()) return "";
  return figureText(*a.measured, *a.measured, rule->limits.back().unit, unit);
}

std::string comeBackText(const layout::AcceptedFinding& a, inspection::Date today, layout::LengthUnit unit) {
  const std::string again = "should it come back, it is ";
  const AcceptedState state = idleState(a, today);
  if (state == AcceptedState::Unclear)
    return again + "not accepted, as it is not said which of several it means";
  if (state != AcceptedState::Yes) return again + "not accepted";
  const std::string figure = acceptedFigureText(a, unit);
  return again + "accepted again" +
         (a.measured ? " as long as it is no worse than " + (figure.empty() ? "it was then" : figure) : "");
}

std::optional<double> acceptedFigure(const Finding& f) {
  constexpr double kKept = 1000;
  return f.measured ? std::optional(std::round(*f.measured * kKept) / kKept) : std::nullopt;
}

std::string whyNoLonger(const Finding& f, inspection::Date today, layout::LengthUnit unit) {
  const AcceptedState state = acceptedState(f, today);
  return state == AcceptedState::Worse ? worseText(f, unit) : overText(state);
}

std::string acceptedText(const Acceptance& a, inspection::Date today) {
  return acceptedText(a, overText(stateByDay(a, today)));
}

std::string acceptedText(const Finding& f, inspection::Date today, layout::LengthUnit unit) {
  return acceptedText(*f.accepted, whyNoLonger(f, today, unit));
}

std::string unclearText(const Finding& f) {
  return "not accepted: what " + f.unclear->by + " accepts until " + f.unclear->until +
         " may be this finding or another of this rule about " + f.subject +
         "; to accept this one, the layout must say " + whichLine(f);
}

}  // namespace stopwalk::audit
