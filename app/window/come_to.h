#pragma once

#include <memory>
#include <vector>

#include "app/rounds/counting.h"
#include "core/inspection/on_record.h"
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

struct UnfinishedRound {
  const inspection::Round* round = nullptr;
  std::size_t left = 0;  // devices that are still to be checked
};

// What they come to by that, and keeps them. Takes a while for those of many years.
struct ComeTo {
  ComeTo(std::shared_ptr<const inspection::Records> records, HeldAgainst held);

  const HeldAgainst by;
  const std::shared_ptr<const inspection::Records> records;
  const inspection::OnRecord on_record;
  const std::vector<inspection::DeviceState> states;
  const std::vector<inspection::FailedDevice> failed;
  const rounds::Counting counting;
  const std::vector<const inspection::Check*> open_actions;  // but of what was taken away
  const std::vector<UnfinishedRound> unfinished;
};

}  // namespace stopwalk::window
