#pragma once

#include <QString>

#include "core/audit/report.h"

// What stands round what is copied of an audit, in a letter or a table far from the window.
namespace stopwalk::panels {

// Of which workshop, by which profile, and on which day: a sentence.
QString copiedHead(const audit::Report& report);
// What it is worth: a sentence.
QString copiedCaution();

}  // namespace stopwalk::panels
