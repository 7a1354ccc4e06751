#pragma once

#include <optional>
#include <string>

#include "app/edits/add_things.h"
#include "app/plan/catalogue.h"
#include "app/plan/choice.h"

namespace stopwalk::plan {

// The edit that puts what was chosen at a place of the plan: what belongs on a wall goes onto the nearest,
// what belongs on a machine onto the one there or the one selected; unless it is `pulled`, devices and phones
// only take their facing from there. None where there is nothing to put it on.
std::optional<edits::Added> put(const Choice& choice, const layout::Layout& layout,
                                const Catalogue& catalogue, geometry::Point at, double turn,
                                const std::string& selected, bool pulled = true);

// What a new room is called until it is named.
std::string roomName(const layout::Layout& layout);
// The outline that a fixture of this key begins with.
layout::Rectangle fixtureSize(const std::string& key);

}  // namespace stopwalk::plan
