#pragma once

#include <array>
#include <span>
#include <vector>

#include "core/floor/turns.h"

namespace stopwalk::floor {

// Where the gates between triangles end on arcs. Once a walk has reached such an end, whatever comes later to
// any point of the gate than one could walk there from the end is no shortest walk and need not be followed.
// Only gates that lie in the region from end to end are listed, so that one can walk along them.
class GateEnds {
 public:
  using Index = Mesh::Index;
  // Two to a gate. Seen from the other side, the same end is another slot's.
  struct OnArc {
    std::array<Index, 2> slots;
    double angle;  // from the arc's beginning, counter-clockwise
  };

  GateEnds(const Mesh& mesh, const WallGrid& grid, const Region& region, const Turns& turns);

  std::span<const OnArc> ofArc(Index arc) const {
    return {ends_.data() + begin_[arc], ends_.data() + begin_[arc + 1]};
  }
  static Index rightSlot(Index gate) { return 2 * gate; }
  static Index leftSlot(Index gate) { return 2 * gate + 1; }

 private:
  std::vector<OnArc> ends_;
  std::vector<Index> begin_;
};

}  // namespace stopwalk::floor
