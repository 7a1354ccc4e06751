#pragma once

#include <QString>

#include "app/plan/description.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

using plan::walkText;
// `meets`, `warns`, `fails`; with "accepted" where all of it is.
QString verdictWord(audit::Verdict verdict, bool accepted);
// How a station fares: "walk 4.20 m to its own foot bar, fails".
QString stationWords(const audit::StationReport& station, bool accepted, layout::LengthUnit unit);

}  // namespace stopwalk::panels
