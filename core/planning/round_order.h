#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/inspection/record.h"
#include "core/layout/device_kind.h"
#include "core/planning/inspection_walk.h"

// In which order the devices of a round are walked past, and the way there.
namespace stopwalk::planning {

struct RoundOrder {
  std::vector<std::string> devices;  // as walked; those that no way leads to at the end
  InspectionWalk walk;
  std::string
      no_start;  // why it cannot begin where it should: a clause, and there is no order; empty: it can
};

floor::Hours hoursOf(const inspection::RoundWalk& how);

// The shortest walk. The same devices come in the same order, however they are given. Of many it takes its
// time.
RoundOrder asWalked(std::span<const std::string> ids, const inspection::RoundWalk& how,
                    const layout::Layout& layout, const layout::DeviceKinds& kinds);

// The walk past devices in an order that is given.
struct WayPast {
  std::vector<InspectionLeg> legs;       // from the start, where it is none of them; `to` empty: the way back
  std::vector<std::string> not_reached;  // no way leads there from all that come before; in the order given
};
// Ids that are not of the layout are passed by, such a start too.
WayPast wayPast(std::span<const std::string> ids, const inspection::RoundWalk& how,
                const layout::Layout& layout, const layout::DeviceKinds& kinds);

}  // namespace stopwalk::planning
