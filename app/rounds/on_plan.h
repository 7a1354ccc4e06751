#pragma once

#include <span>

#include "app/plan/inspection_layer.h"
#include "app/rounds/counting.h"
#include "app/rounds/round_under_way.h"
#include "core/inspection/schedule.h"
#include "core/planning/inspection_walk.h"

namespace stopwalk::rounds {

// What the plan shows where devices are inspected: a tick where nothing is due on the day, a triangle where
// something is, a cross where it failed and has not passed since; and how long ago that was.
plan::InspectedOnPlan dueOnPlan(std::span<const planning::InspectedDevice> devices,
                                std::span<const inspection::DeviceState> states,
                                const inspection::Schedule& schedule, inspection::Date day);

// In a round: each of its devices with its place in the order and what came of it so far, and the walk. No
// tick stands for a pass that does not count, nor for a device whose failure is open.
plan::InspectedOnPlan roundOnPlan(const RoundUnderWay& round, std::span<const planning::InspectionLeg> legs,
                                  const Counting& counting, std::span<const inspection::DeviceState> states);

// "today", "12 d", "3 mo"; the more days, the coarser.
QString ageText(int days);

}  // namespace stopwalk::rounds
