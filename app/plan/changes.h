#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/audit/report.h"

namespace stopwalk::plan {

enum class Turn { Better, Worse, Other };

// What another layout means for one station.
struct StationChange {
  std::string station;
  Turn turn = Turn::Other;
  QString text;  // "Table saw, helper: stop 3.31 m → 4.2 m, now warns"
};

// The stations that are in both reports and whose verdict, stop or phone differs, a walk by a centimetre or
// more, the seconds to the stop by a tenth or more, or how narrow the way is by a centimetre or more, in the
// order of `after`. Better or worse by a way that is lost first, then by the verdict, then by the walks, and
// where these stay by the seconds, then by the widths;
// neither where one walk is shorter and the other longer.
std::vector<StationChange> changesBetween(const audit::Report& before, const audit::Report& after);

}  // namespace stopwalk::plan
