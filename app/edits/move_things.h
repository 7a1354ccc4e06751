#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/edits/edit.h"
#include "app/edits/things.h"

namespace stopwalk::edits {

// Moves things by a vector of the plan. What is on a machine moves in its machine's frame, and not twice
// where the machine moves too. A room moves with its corners only: what stands in it, its doors and what
// hangs on its walls are moved where they are chosen themselves. A note's pointer moves along. Moves of the
// same things that follow one another become one step; call EditedLayout::pause between drags.
Edit moveThings(const layout::Layout& layout, const std::vector<std::string>& ids, geometry::Point by);

// Turns things by degrees counter-clockwise: each on its own place, or all about a point of the plan. Of a
// room the own place is the middle of its bounds. What is on a machine turns in its place, a device with the
// side it faces; doors follow about a point, and have no turn of their own.
Edit turnThings(const layout::Layout& layout, const std::vector<std::string>& ids, double by_deg,
                std::optional<geometry::Point> about = {});

// The same for one thing of a layout in the making.
void moveThing(layout::Layout& layout, const Thing& thing, geometry::Point by);

// To a millionth of a millimetre, so that sums do not end in a long row of digits in the file.
geometry::Point rounded(geometry::Point p);
// The same direction from 0 to 360.
double wholeTurn(double deg);

}  // namespace stopwalk::edits
