#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "core/inspection/record.h"

namespace stopwalk::files {

// A record as a JSON object on one line, without the closing brace: its line's hash goes there.
std::string recordBody(const inspection::Record& record, std::size_t number, const std::string& before);

// The same for other programs: a whole object, with nothing of the line it stands in but its number.
std::string recordObject(const inspection::Record& record);

struct ReadRecord {
  std::optional<inspection::Record> record;
  std::size_t number = 0;  // as the line says
  std::string before;
  std::string why;  // it is no whole record: a clause. `record` may then be a failure all the same
  bool has_no_time =
      false;  // such a failure, of which it can be read neither when that was nor when it was entered
};
// Of a whole object, blanks around it or not. What says which device failed is a failure, whatever else of it
// cannot be read.
ReadRecord readRecord(std::string_view object);

// Whether it is what a crash leaves of a record: a true beginning, or with zeros that were never written
// over. Not so what says of something that it failed: that is a line, whatever it has lost.
bool isTorn(std::string_view text);

// What each line begins with, and what nothing within one is like.
inline constexpr std::string_view kRecordBegins = "{\"stopwalk_inspections\":";

}  // namespace stopwalk::files
