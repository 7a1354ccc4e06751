#pragma once

#include <vector>

#include "core/audit/report.h"
#include "core/inspection/moment.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Marks the findings that the layout lets stand, and those that it may mean to. They keep their severity, and
// a station its verdict. Where a rule may find several things of a subject, an acceptance that does not say
// which it means accepts none, also while there is but one: the next may be another.
void markAccepted(std::vector<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted);

// Whether it accepts the finding, or would if it said which it means.
bool mayMean(const layout::AcceptedFinding& accepted, const Finding& finding);

// Those of the layout's that no finding needs any more.
std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const std::vector<Finding>& findings);

// "accepted by M. Okafor-Lind until 2026-12-31: the guard is on order"
std::string acceptedText(const Acceptance& acceptance);
// Whether its last day has passed, or is no day that one can read.
bool isOver(const Acceptance& acceptance, inspection::Date today);
// The same as a sentence of that day: what is over is accepted no longer.
std::string acceptedText(const Acceptance& acceptance, inspection::Date today);
// What an acceptance must say to mean this finding, as a line of the layout.
std::string whichLine(const Finding& finding);
// Why a finding is not accepted by the acceptance that is unclear, and what would make it so.
std::string unclearText(const Finding& finding);

}  // namespace stopwalk::audit
