#pragma once

#include <QStringList>
#include <optional>

#include "app/poster/call_outs.h"
#include "app/poster/content.h"
#include "app/poster/lettering.h"
#include "app/poster/page.h"
#include "app/poster/plan_frame.h"
#include "app/poster/sizes.h"

namespace stopwalk::poster {

// The signs of a plan, each on its spot or at the end of a leader, with its number.
struct PlanSigns {
  std::vector<Mark> marks;
  std::vector<PlacedCallOut> placed;
};

// Nothing: they find no places. One sign stands for several devices that are told alike and are in one place.
std::optional<PlanSigns> planSigns(const Content& content, const PlanFrame& frame, const Sizes& sizes,
                                   const Lettering& letters, const CallOutArea& area);

}  // namespace stopwalk::poster
