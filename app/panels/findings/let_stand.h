#pragma once

#include <QDate>
#include <QString>

#include "core/audit/report.h"

namespace stopwalk::panels {

// Why what was accepted is so no longer: a clause; empty where it is, or never was.
QString whyNoLonger(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit);

// The finding's sentence, and who lets it stand until when, or why that is over.
QString textOf(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit);
// Who lets it stand, why and until when, or that this is over or unclear; empty where nobody does.
QString letStandText(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit);

// What accepts a finding that is there no more, or why that is over.
QString idleText(const layout::AcceptedFinding& idle, const QDate& today);
// What it comes to should the finding come back, as sentences.
QString comeBackText(const layout::AcceptedFinding& idle, const QDate& today, layout::LengthUnit unit);

}  // namespace stopwalk::panels
