#pragma once

#include <cstdint>

#include "core/layout/layout.h"

namespace stopwalk::support {

// What a random layout may hold. The same seed and options give the same layout.
struct RandomLayoutOptions {
  int most_rooms = 4;
  int fewest_machines = 3;
  int most_machines = 12;
  bool awkward =
      true;  // flush with walls, through them, touching and overlapping, doubled corners, tiny edges
  bool far_away = true;  // one in four a thousand metres off the origin
  bool turned = true;    // three in four turned as a whole
  bool narrow = false;   // doors 555 to 612 mm wide, so that many ways need less than the measuring clearance
};

// One to four rooms in a row (rectangles, L shapes, oblique ones) with thick and thin walls and doors between
// neighbours, machines with stations and stops, benches, a cut-off and a phone. Every door can be built;
// stations may be anywhere.
layout::Layout randomLayout(std::uint64_t seed, const RandomLayoutOptions& options = {});

// The layout turned by `turn` degrees about the origin, then moved.
layout::Layout moved(layout::Layout layout, double turn, layout::Point by);

}  // namespace stopwalk::support
