#pragma once

#include <string>

#include "core/files/report_json.h"

namespace stopwalk::files {

// Rows by RFC 4180 (commas, CR LF, quotes doubled), UTF-8: one of names, and one a station. Unknown is an
// empty cell. `today` decides which acceptances are over.
std::string csvHead();
std::string reportCsv(const FiledReport& report, inspection::Date today);

// Likewise the findings, one a row.
std::string findingsCsvHead();
std::string findingsCsv(const FiledReport& report, inspection::Date today);

}  // namespace stopwalk::files
