#include "core/audit/accepted.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

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
        (a.which == f->which ? f->accepted : f->unclear) = Acceptance{a.reason, a.by, a.until};
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

bool isOver(const Acceptance& a, inspection::Date today) {
  const auto last = inspection::parseDate(a.until);
  return !last || *last < today;
}

std::string acceptedText(const Acceptance& a, inspection::Date today) {
  if (!isOver(a, today)) return acceptedText(a);
  return std::string("no longer accepted: ") +
         (inspection::parseDate(a.until) ? "the last day has passed"
                                         : "its last day is none, such as 2026-12-31") +
         "; it was " + acceptedText(a);
}

std::string unclearText(const Finding& f) {
  return "not accepted: what " + f.unclear->by + " accepts until " + f.unclear->until +
         " may be this finding or another of this rule about " + f.subject +
         "; to accept this one, the layout must say " + whichLine(f);
}

}  // namespace stopwalk::audit
