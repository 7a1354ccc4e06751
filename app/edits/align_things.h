#pragma once

#include <string>
#include <vector>

#include "app/edits/edit.h"
#include "app/edits/things.h"
#include "core/geometry/box.h"

namespace stopwalk::edits {

enum class Align { Left, Right, Top, Bottom, MiddleAcross, MiddleUp };
enum class Along { Across, Up };

// Moves things so that the bounds of their outlines in the plan are in line with those of the last of `ids`,
// which stays: a side, or the middles one above the other (across) or side by side (up).
Edit alignThings(const layout::Layout& layout, const std::vector<std::string>& ids, Align how);
// Moves all but the outermost two so that the gaps between their bounds are equal; they overlap equally where
// there is no room. Of fewer than three nothing is moved.
Edit distributeThings(const layout::Layout& layout, const std::vector<std::string>& ids, Along along);

// The bounds of a thing's outline in the plan; of what has no outline its place. Empty for a tape check.
geometry::Box boundsOf(const layout::Layout& layout, const Thing& thing);

}  // namespace stopwalk::edits
