#pragma once

#include <vector>

#include "core/audit/report.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Marks the findings that the layout lets stand. They keep their severity, and a station its verdict.
void markAccepted(std::vector<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted);

// Those of the layout's that no finding needs any more.
std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const std::vector<Finding>& findings);

// "accepted by M. Okafor-Lind until 2026-12-31: the guard is on order"
std::string acceptedText(const Acceptance& acceptance);

}  // namespace stopwalk::audit
