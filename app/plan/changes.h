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

// The stations that are in both reports and whose verdict, stop, phone or walks differ by a centimetre or
// more, in the order of `after`. By the verdict first, then the walk to the stop, then to the phone, it has
// become better or worse.
std::vector<StationChange> changesBetween(const audit::Report& before, const audit::Report& after);

}  // namespace stopwalk::plan
