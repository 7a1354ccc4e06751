#pragma once

#include <string>
#include <vector>

#include "core/files/inspection_log.h"

// The log of inspections beside a layout.
namespace stopwalk::records {

// `shop.inspections.jsonl` for `shop.layout.yaml`, beside the layout that a link leads to, or beside the link
// if they are only there; empty for standard input, which has none.
std::string recordsFileOf(const std::string& layout_file);
// The file itself, where the name is that of a link to it, there or not.
std::string behindLinks(const std::string& path);
// Where the pieces of records go that were not finished.
std::string tornFileOf(const std::string& records_file);

// That, the log itself and its lock: all that stands beside a layout for its records, there or not.
std::vector<std::string> recordFilesOf(const std::string& layout_file);

struct ReadRecords {
  std::string file;
  bool there = false;  // false: no inspection was recorded yet
  files::InspectionLog log;
  std::string unreadable;  // why it cannot be read; empty: it can
  std::string also_of;     // another layout in the folder whose records these are too; empty: none
};
// Of a log that is a link to what is not there, such as on a disk that is not mounted.
inline constexpr const char* kLeadsNowhere = "it is a link, and what it leads to is not there";
// A record that another is just writing is waited for.
ReadRecords readRecords(const std::string& layout_file);

// Now, on the clock of this computer.
inspection::Moment momentNow();

}  // namespace stopwalk::records
