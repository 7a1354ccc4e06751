#pragma once

#include <functional>
#include <optional>
#include <string>

#include "core/layout/layout.h"

namespace stopwalk::edits {

// What becomes of an id as seen from outside (`lathe-1/bar`): the same, another, or none where it is gone.
using NewId = std::function<std::optional<std::string>(const std::string&)>;

// Lets every mention of an id in the layout follow; the things themselves keep their ids. What is gone is
// left out of lists, and a list that becomes empty stays so: absent, it would stand for something else (a
// device would come to stop its own machine, a trigger to be held at the first station). Doors and tape
// checks that lose an end go, and so does what was accepted of it: another thing of that id is another
// matter.
void followIds(layout::Layout& layout, const NewId& new_id);

}  // namespace stopwalk::edits
