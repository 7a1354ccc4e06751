#pragma once

#include <QString>

#include "core/audit/report.h"

namespace stopwalk::panels {

// A distance as people of the layout's unit read it: `4.20 m`, or feet and inches.
QString walkText(double metres, layout::LengthUnit unit);
// `meets`, `warns`, `fails`.
QString verdictWord(audit::Verdict verdict);
// How a station fares: "walk 4.20 m to its own foot bar, fails".
QString stationWords(const audit::StationReport& station, layout::LengthUnit unit);

}  // namespace stopwalk::panels
