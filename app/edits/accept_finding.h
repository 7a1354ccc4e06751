#pragma once

#include "app/edits/edit.h"
#include "core/audit/report.h"

namespace stopwalk::edits {

// Lets a finding stand for a time, as bad as it is now, in the place of what let it stand before. What may
// have meant it goes too, unless it may mean another of `all` that is found.
Edit acceptFinding(const layout::Layout& layout, const audit::Finding& finding,
                   const audit::SharedList<audit::Finding>& all, const audit::Acceptance& acceptance);
// It is not let stand any longer. What is unclear goes only where nothing else is to be taken back.
Edit takeAcceptanceBack(const layout::Layout& layout, const audit::Finding& finding,
                        const audit::SharedList<audit::Finding>& all);
// What no finding needs any more.
Edit removeAcceptance(const layout::Layout& layout, const layout::AcceptedFinding& idle);

}  // namespace stopwalk::edits
