#pragma once

#include <string>
#include <string_view>
#include <unordered_set>

#include "core/layout/layout.h"

namespace stopwalk::edits {

using Ids = std::unordered_set<std::string>;

// The ids of what stands on its own in a layout, and of what is on one machine.
Ids takenIds(const layout::Layout& layout);
Ids takenIds(const layout::Machine& machine);

// An id from what a thing is called: lower-case letters, digits, hyphens; `otherwise` if nothing of it is
// one. "Table saw 2" gives `table-saw-2`.
std::string idFrom(std::string_view name, std::string_view otherwise);
// `like`, or if that is taken the next with a higher number: after `saw` comes `saw-2`, after `lathe-1` or
// `d1` `lathe-2` or `d2`. Then that is taken too.
std::string freshId(Ids& taken, const std::string& like);
// A name in the same manner: "Table saw", "Table saw 2". An empty one stays so.
std::string freshName(Ids& taken, const std::string& like);

}  // namespace stopwalk::edits
