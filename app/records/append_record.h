#pragma once

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>

#include "core/inspection/record.h"

namespace stopwalk::records {

enum class Written {
  Yes,     // on the disk
  No,      // the log is as it was
  Unsure,  // it may or may not be there, or not survive a power cut: look before recording it again
  Busy     // another writes, and went on for as long as we waited
};

struct Appended {
  Written written = Written::No;
  std::size_t number = 0;        // of the record, if written
  std::string head;              // the hash of its line
  std::string why;               // unless Yes: the system's words, or who holds the log
  std::size_t corrected_by = 0;  // not written: what it corrects was corrected meanwhile, by this
  std::size_t failed_by = 0;     // not written: the device that is to pass failed meanwhile, by this
  std::string
      set_aside;  // where an unfinished record that was found at the end is kept; empty: there was none
};

inline constexpr auto kPatience = std::chrono::milliseconds(5000);

// What was read of a log before a record was made for it.
struct ReadTo {
  ReadTo(std::size_t read_lines, std::string read_head = {}, std::optional<std::size_t> lines_known = {})
      : lines(read_lines), head(std::move(read_head)), known(lines_known.value_or(read_lines)) {}
  std::size_t lines = 0;
  std::string head;       // the hash of the last; empty: it is not looked at
  std::size_t known = 0;  // lines, when what is recorded was begun, such as trying the device
};

// Writes one record at the end of the log. Yes only once it is on the disk.
// A piece of a record left behind by a crash is first put aside into a file of its own. A log with fewer
// whole lines than `read`, or another head there, is not the one that was read, and is left as it is; with 0
// it is made if it is not there. What was corrected since it was read is not corrected again, and of a device
// that failed since the check was begun no pass is recorded.
Appended appendRecord(const std::string& records_file, const inspection::Record& record,
                      std::chrono::milliseconds wait = kPatience, const ReadTo& read = 0);

}  // namespace stopwalk::records
