#pragma once

#include <QRectF>
#include <string>
#include <vector>

#include "app/poster/block.h"
#include "app/poster/words.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::poster {

// One stop of a round on the plan.
struct NumberedStop {
  int number = 0;
  const planning::InspectedDevice* device = nullptr;
};

// The whole layout, small: rooms, machines, and the walk, leg by leg, past the stops with their numbers, each
// where one stands; up is up the plan. Of the width given and no higher than `height`; empty if there is
// nothing to show.
Block roundPlan(const layout::Layout& layout, const std::vector<NumberedStop>& stops,
                const std::vector<planning::InspectionLeg>& legs, const Language& language,
                const Lettering& letters, double width, double height);

}  // namespace stopwalk::poster
