#pragma once

#include <string>

#include "app/command_line/table_rows.h"
#include "core/files/report_json.h"
#include "core/inspection/moment.h"

namespace stopwalk::app {

// A report for people: stations and findings, worst first, and totals.
std::string auditSheet(const files::FiledReport& filed, TableStyle style, inspection::Date today);

// What stands below every report.
std::string caution(TableStyle style);

}  // namespace stopwalk::app
