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
  std::string why;  // there is no record: a clause
};
ReadRecord readRecord(std::string_view body);

}  // namespace stopwalk::files
