#include "core/audit/accepted.h"

#include <algorithm>

namespace stopwalk::audit {
namespace {

bool isOf(const layout::AcceptedFinding& accepted, const Finding& finding) {
  return accepted.rule == finding.rule && accepted.subject == finding.subject;
}

}  // namespace

void markAccepted(std::vector<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted) {
  if (accepted.empty()) return;
  for (Finding& f : findings)
    for (const layout::AcceptedFinding& a : accepted)
      if (isOf(a, f)) f.accepted = Acceptance{a.reason, a.by, a.until};
}

std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const std::vector<Finding>& findings) {
  std::vector<layout::AcceptedFinding> idle;
  for (const layout::AcceptedFinding& a : accepted)
    if (std::ranges::none_of(findings, [&](const Finding& f) { return isOf(a, f); })) idle.push_back(a);
  return idle;
}

std::string acceptedText(const Acceptance& a) {
  return "accepted by " + a.by + " until " + a.until + ": " + a.reason;
}

}  // namespace stopwalk::audit
