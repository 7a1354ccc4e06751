#pragma once

#include <span>
#include <string>

#include "core/files/report_json.h"

namespace stopwalk::files {

// One row a station under a row of names, by RFC 4180 (commas, CR LF, quotes doubled), UTF-8. Unknown is an
// empty cell.
std::string reportCsv(std::span<const FiledReport> reports);

}  // namespace stopwalk::files
