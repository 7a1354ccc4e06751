#pragma once

#include <optional>
#include <vector>

#include "core/audit/context.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// What makes one layout the other, if that is only that machines and fixtures stand elsewhere; none: more is
// otherwise, or very many.
std::optional<std::vector<Move>> movesBetween(const layout::Layout& before, const layout::Layout& now);

void put(const Move& move, layout::Layout& layout);

}  // namespace stopwalk::audit
