#pragma once

#include <map>
#include <string>

#include "app/plan/items/item.h"
#include "core/audit/report.h"
#include "core/inspection/moment.h"

namespace stopwalk::plan {

// How each station stands on that day, by its id.
std::map<std::string, StationState> statesOf(const audit::Report& report, inspection::Date today);

}  // namespace stopwalk::plan
