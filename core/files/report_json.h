#pragma once

#include <string>

#include "core/audit/measure.h"
#include "core/audit/report.h"

namespace stopwalk::files {

// A report and the file it is about.
struct FiledReport {
  std::string file;    // as the user named it
  std::string sha256;  // of its bytes
  audit::Report report;
};

// Version 1 of the report, as docs/command-line.md has it: one object, without a line end. UTF-8, one station
// or finding a line, numbers in their shortest form to a millionth of a millimetre.
std::string reportJson(const FiledReport& report);

// A walk between two places as the user named them.
std::string walkJson(const std::string& from, const std::string& to, const floor::Walk& walk);

}  // namespace stopwalk::files
