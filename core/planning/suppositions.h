#pragma once

#include <string>
#include <vector>

#include "core/floor/plan.h"
#include "core/layout/layout.h"

namespace stopwalk::planning {

// What might be otherwise for once, without the drawing being changed: several at a time.
struct Suppositions {
  std::vector<std::string> out_of_order;    // ids of devices and phones, such as `lathe-1/bar`
  std::vector<std::string> shut;            // ids of doors
  std::vector<layout::Fixture> in_the_way;  // things that stand on the floor; their ids are free
  floor::Hours hours = floor::Hours::Open;

  bool empty() const {
    return out_of_order.empty() && shut.empty() && in_the_way.empty() && hours == floor::Hours::Open;
  }
  bool operator==(const Suppositions&) const = default;
};

// The layout as it would be. A device out of order is as good as not there, and so are the tape checks that
// end at it. Unknown ids are ignored. To be audited at the hours supposed.
layout::Layout supposed(const layout::Layout& layout, const Suppositions& suppositions);

// Those that still speak of something that is there.
Suppositions knownOnly(const Suppositions& suppositions, const layout::Layout& layout);

}  // namespace stopwalk::planning
