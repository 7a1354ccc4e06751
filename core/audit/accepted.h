#pragma once

#include <vector>

#include "core/audit/report.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Marks the findings that the layout lets stand, and those that it may mean to. They keep their severity, and
// a station its verdict. `findings` must be all of a report: an acceptance that does not say which of several
// it means accepts none of them.
void markAccepted(std::vector<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted);

// Those of the layout's that no finding needs any more.
std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const std::vector<Finding>& findings);

// "accepted by M. Okafor-Lind until 2026-12-31: the guard is on order"
std::string acceptedText(const Acceptance& acceptance);
// Why a finding is not accepted by the acceptance that is unclear, and what would make it so.
std::string unclearText(const Finding& finding);

}  // namespace stopwalk::audit
