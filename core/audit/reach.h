#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/floor/contours.h"
#include "core/floor/reach_map.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// What the reach map shows the walk to.
struct ReachTarget {
  enum class What { Phone, AnyStop, CutOff, MachineStop };
  What what = What::Phone;
  std::string machine;  // MachineStop: its id
  bool operator==(const ReachTarget&) const = default;
};

// The reach map of one layout: how far it is to walk from everywhere to the nearest of what is asked for.
// Only by walking: nothing is at hand, and no stop that is held counts, since both depend on a station.
struct Reach {
  ReachTarget target;
  std::size_t devices = 0;  // that the target asks for
  std::size_t blocked = 0;  // of them, that cannot be walked to from anywhere
  floor::ReachMap map;
  std::vector<floor::Contour> contours;
  std::vector<floor::Passage> passages;  // the open doorways: floor between the rooms
  double contour_mm =
      1000;  // between two of them: a metre, or five feet where the layout is in feet or inches
  layout::LengthUnit unit = layout::LengthUnit::Millimetre;  // of the layout
};

// With the finest round step that gives at most `most_samples` over the floor's box. A machine that does not
// exist has no stops. `out_of_order`: ids of devices that failed and have not passed since, and count as no
// stop.
Reach reachOf(const layout::Layout& layout, const layout::DeviceKinds& kinds, floor::Hours hours,
              const ReachTarget& target, std::size_t most_samples,
              const std::vector<std::string>& out_of_order = {});

}  // namespace stopwalk::audit
