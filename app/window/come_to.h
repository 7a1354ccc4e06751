#pragma once

#include <memory>
#include <vector>

#include "app/rounds/counting.h"
#include "core/inspection/schedule.h"
#include "core/layout/layout.h"

namespace stopwalk::window {

// What records are held against: how often devices are inspected, and what the layout has of them on a day.
struct HeldAgainst {
  inspection::Schedule schedule;
  std::shared_ptr<const layout::Layout> layout;  // for what things are called; null: none yet
  std::vector<inspection::DeviceNow> devices;
  inspection::Now now;
  // Of the layout what machines are called, and of now the day.
  bool operator==(const HeldAgainst& other) const;
};

// What they come to by that. Takes a while for those of many years.
struct ComeTo {
  ComeTo(const inspection::Records& records, HeldAgainst held);

  HeldAgainst by;
  std::vector<inspection::DeviceState> states;
  std::vector<inspection::FailedDevice> failed;
  rounds::Counting counting;
};

}  // namespace stopwalk::window
