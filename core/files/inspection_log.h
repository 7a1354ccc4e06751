#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/inspection/record.h"

// The log of inspections as text: a record a line, each with the SHA-256 of the line before it, so that what
// is changed, removed or put in later shows. docs/inspection.md says what that proves.
namespace stopwalk::files {

// What the first line has for the hash of the line before it.
inline const std::string kNoLineBefore(64, '0');
// A longer record is refused: nobody types that much, and it is written in one go.
inline constexpr std::size_t kMostRecordBytes = std::size_t{64} << 10;

// A line of the log, with its line break. `before` is the hash of the line before it. The record's own number
// is not looked at: `number` is.
std::string recordLine(const inspection::Record& record, std::size_t number, const std::string& before);

// What is wrong with a line.
enum class Wrong {
  Reformatted,  // by a formatter of JSON
  Utf16,        // saved so by an editor
  NoEnd,        // it does not end as a record does
  Changed,      // after it was written
  NoRecord,     // what it says is no record of this format, or more than one
  OutOfPlace,   // lines before it were changed, removed, put in or moved
  NoBreak       // the line break behind it is missing
};

// A line that is not as it was written, or does not follow the one before it.
struct BadLine {
  std::size_t line = 0;  // from 1
  std::string why;       // a clause; the window says its own (app/rounds/reasons.h)
  bool unread = false;   // nothing can be read of it: it may have been a failure
  Wrong what = Wrong::Changed;
};

struct InspectionLog {
  inspection::Records records;      // of all lines that can be read, bad ones among them, with the last such
  std::size_t lines = 0;            // but a torn one
  std::vector<std::string> hashes;  // of each line
  std::vector<BadLine> bad;         // in order; empty: nothing shows
  std::string torn;                 // the beginning of a record behind the last line: it was not finished
  bool ends_line = true;            // false: something follows the last line break

  const std::string& head() const { return hashes.empty() ? kNoLineBefore : hashes.back(); }
};

InspectionLog readInspectionLog(std::string_view text);

// How many lines nothing can be read of, and that a failure may be among them, in a sentence; empty: none.
std::string unreadText(const InspectionLog& log);
// In sentences what of a log is not as it was written, and what follows for those who rely on it; empty:
// nothing shows.
std::string faultText(const InspectionLog& log);
// Of a file that is there: it has no line, not even the beginning of one.
bool isEmpty(const InspectionLog& log);
inline constexpr const char* kEmptyLog =
    "The file of inspection records is empty: if a failure was recorded in it, that is gone.";

// What a verification comes to. `line` 0: nothing shows.
struct LogVerdict {
  std::size_t line = 0;  // the first that is not as it was written; one more than there are: what was cut
  std::string why;
  std::size_t since = 0;  // with a head: how many lines came after it
};
// `head`: a head hash that was kept elsewhere, or empty.
LogVerdict verifyLog(const InspectionLog& log, const std::string& head = {});

// Where a log ends: what a writer must know.
struct LogEnd {
  std::size_t lines = 0;        // but a torn one
  std::string head;             // the hash of the last
  std::size_t whole_bytes = 0;  // up to here; what comes after is torn
  bool ends_line = true;        // false: the last line has lost its line break
};
LogEnd endOfLog(std::string_view text);

}  // namespace stopwalk::files
