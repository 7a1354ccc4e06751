#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/audit/report.h"

namespace stopwalk::plan {

enum class Turn { Better, Worse, Other };
// What is told first: the gravest.
enum class Gravity { NowFails, WayLost, NowWarns, NotMeasured, Worse, Other, Better };

// What another layout means for one station; or for another thing that breaks a rule by it.
struct StationChange {
  std::string station;  // id
  Turn turn = Turn::Other;
  QString text;  // "Table saw, helper: now warns: stop too far, stop 3.31 m → 4.2 m"
  Gravity gravity = Gravity::Other;
  double by_m = 0;  // how much farther, or nearer, the one walk that changes most
};

// The stations that are in both reports and whose verdict, stop or phone differs, a walk by a centimetre or
// more, the seconds to the stop by a tenth or more, or how narrow the way is by a centimetre or more, or that
// break another rule, in the order of `after`. Better or worse by a way that is lost first, then by the
// verdict, then by what they fail or warn for besides, then by the walks, and where these stay by the
// seconds, then by the widths; neither where one walk is shorter and the other longer.
std::vector<StationChange> changesBetween(const audit::Report& before, const audit::Report& after);

// Those that are as grave by how much the walk changes; else as they stand.
void sortGravestFirst(std::vector<StationChange>& changes);

}  // namespace stopwalk::plan
