#pragma once

#include <algorithm>
#include <vector>

#include "core/geometry/box.h"

namespace stopwalk::audit {

// What a result hangs on: places, or all there is. While nothing there changes, neither does the result.
struct Trace {
  std::vector<geometry::Box> places;
  geometry::Box round;  // all of them
  bool all = false;

  void add(const geometry::Box& box) {
    const auto holds = [&](const geometry::Box& b) {
      return b.low.x <= box.low.x && b.low.y <= box.low.y && b.high.x >= box.high.x && b.high.y >= box.high.y;
    };
    if (std::ranges::any_of(places, holds)) return;
    places.push_back(box);
    round.add(box);
  }
  bool meets(const std::vector<geometry::Box>& changed) const {
    return all || std::ranges::any_of(changed, [&](const auto& c) {
             return overlap(round, c) &&
                    std::ranges::any_of(places, [&](const auto& place) { return overlap(place, c); });
           });
  }
};

}  // namespace stopwalk::audit
