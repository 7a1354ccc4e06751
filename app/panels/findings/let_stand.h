#pragma once

#include <QDate>
#include <QString>

#include "core/audit/report.h"

namespace stopwalk::panels {

// Whether the last day on which a finding is let stand has passed, or is none.
bool isOver(const audit::Acceptance& acceptance, const QDate& today);

// The finding's sentence, and who lets it stand until when, or that this is over.
QString textOf(const audit::Finding& finding, const QDate& today);

}  // namespace stopwalk::panels
