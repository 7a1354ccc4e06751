#pragma once

#include "app/edits/edit.h"
#include "core/audit/report.h"

namespace stopwalk::edits {

// Lets a finding stand for a time, as bad as it is now: what may have meant it before goes.
Edit acceptFinding(const layout::Layout& layout, const audit::Finding& finding,
                   const audit::Acceptance& acceptance);
// It is not let stand any longer, and nothing is left that may mean it.
Edit takeAcceptanceBack(const layout::Layout& layout, const audit::Finding& finding);

}  // namespace stopwalk::edits
