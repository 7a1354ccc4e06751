#pragma once

#include "app/edits/new_ids.h"

namespace stopwalk::edits {

// A layout, in the same unit, of those things alone. A machine that is not among them, but what is on it, is
// there with that alone. Mentions of others stay, and lead nowhere.
layout::Layout onlyThings(const layout::Layout& layout, const Ids& ids);

}  // namespace stopwalk::edits
