#pragma once

#include <QString>

#include "app/plan/description.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

using plan::walkText;
// `meets`, `warns`, `fails`.
QString verdictWord(audit::Verdict verdict);
// How a station fares: "walk 4.20 m to its own foot bar, fails".
QString stationWords(const audit::StationReport& station, layout::LengthUnit unit);

}  // namespace stopwalk::panels
