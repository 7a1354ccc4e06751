#pragma once

#include <vector>

#include "app/plan/items/item.h"
#include "core/audit/report.h"
#include "core/inspection/moment.h"

namespace stopwalk::plan {

// How each station of the report stands on that day.
std::vector<StationState> statesOf(const audit::Report& report, inspection::Date today);

}  // namespace stopwalk::plan
