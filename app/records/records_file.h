#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/files/inspection_log.h"

// The log of inspections beside a layout.
namespace stopwalk::records {

// `shop.inspections.jsonl` for `shop.layout.yaml`; empty for standard input, which has none.
std::string recordsFileOf(const std::string& layout_file);
// Where the pieces of records go that were not finished.
std::string tornFileOf(const std::string& records_file);

// That, the log itself and its lock: all that stands beside a layout for its records, there or not.
std::vector<std::string> recordFilesOf(const std::string& layout_file);

struct ReadRecords {
  std::string file;
  bool there = false;  // false: no inspection was recorded yet
  files::InspectionLog log;
  std::string unreadable;  // why it cannot be read; empty: it can
};
// A record that another is just writing is waited for.
ReadRecords readRecords(const std::string& layout_file);

// Now, on the clock of this computer.
inspection::Moment momentNow();

}  // namespace stopwalk::records
