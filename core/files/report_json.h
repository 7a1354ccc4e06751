#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/audit/measure.h"
#include "core/audit/report.h"
#include "core/files/inspection_log.h"
#include "core/inspection/schedule.h"

namespace stopwalk::files {

// The inspection records that an audit looked at.
struct RecordsUsed {
  std::string file;
  std::size_t records = 0;
  std::string head;                 // the hash of the last
  std::vector<std::string> failed;  // devices that failed and have not passed since
  std::vector<std::string> gone;    // of these what the layout does not have
  std::string fault;                // faultText() of the log, or that it is empty
};
RecordsUsed recordsUsed(const std::string& file, const InspectionLog& log,
                        std::span<const inspection::FailedDevice> failed,
                        std::span<const inspection::FailedDevice> gone);

// A report and the file it is about.
struct FiledReport {
  std::string file;    // as the user named it
  std::string sha256;  // of its bytes
  audit::Report report;
  std::optional<RecordsUsed> records = std::nullopt;  // none: there were none
  std::size_t rules_off = 0;                          // that were not asked
  std::vector<layout::AcceptedFinding> idle = {};     // that accept what is found no more
  std::vector<std::string> limits = {};               // RULE=VALUE, set for this audit over the profile's
};

// Version 1 of the report, as docs/command-line.md has it: one object, without a line end. UTF-8, one station
// or finding a line, numbers in their shortest form to a millionth of a millimetre.
// `today` decides which acceptances are over.
std::string reportJson(const FiledReport& report, inspection::Date today);

// A walk between two places as the user named them.
std::string walkJson(const std::string& from, const std::string& to, const floor::Walk& walk);

}  // namespace stopwalk::files
