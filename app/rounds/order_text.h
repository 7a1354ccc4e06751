#pragma once

#include <QString>
#include <span>

#include "core/layout/layout.h"
#include "core/planning/round_order.h"

namespace stopwalk::rounds {

// How long the walk past the devices of a round is, by how much another order might be shorter, and what no
// way leads to; `devices`: those of the layout.
QString orderText(const layout::Layout& layout, const planning::RoundOrder& order,
                  const inspection::RoundWalk& how, std::span<const planning::InspectedDevice> devices);
// Of a device that no way leads to.
QString noWayText(const inspection::RoundWalk& how);

}  // namespace stopwalk::rounds
