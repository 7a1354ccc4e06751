#pragma once

#include <span>

#include "app/plan/inspection_layer.h"
#include "app/rounds/counting.h"
#include "app/rounds/round_under_way.h"
#include "core/inspection/schedule.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::rounds {

// The devices by their records on a day.
struct ByRecords {
  std::span<const planning::InspectedDevice> devices;
  const inspection::Records& records;
  const Counting& counting;
  std::span<const inspection::DeviceState> states;
  const inspection::Schedule& schedule;
  inspection::Date day;
};

// What the plan shows where devices are inspected: what the last check of each came to, that it failed as
// long as it has not passed since; how long ago that was, and how much of the time until the next has gone.
plan::InspectedOnPlan dueOnPlan(const ByRecords& by);

// In a round: each of its devices with its place in the order and what came of it so far, and the walk. No
// tick stands for a pass that does not count, nor for a device whose failure is open.
plan::InspectedOnPlan roundOnPlan(const RoundUnderWay& round, std::span<const planning::InspectionLeg> legs,
                                  const ByRecords& by);

// "today", "12 d", "3 mo"; the more days, the coarser.
QString ageText(int days);

}  // namespace stopwalk::rounds
