#pragma once

#include "app/plan/theme.h"
#include "app/rounds/check_card.h"
#include "app/rounds/counting.h"
#include "app/rounds/round_under_way.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::rounds {

// What the card of the device that one is at says.
CardText cardText(const RoundUnderWay& round, const layout::Layout& layout, const layout::DeviceKinds& kinds,
                  std::span<const planning::InspectedDevice> devices, const Counting& counting,
                  const plan::Theme& theme);

}  // namespace stopwalk::rounds
