#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

// The text of a log in lines, a record each, whatever became of the breaks between them.
namespace stopwalk::files {

// Each line ends with its own hash: over all that stands before this.
inline constexpr std::string_view kHashKey = ",\"sha256\":\"";
inline constexpr std::string_view kRecordEnds = "\"}";
inline constexpr std::size_t kHashDigits = 64,
                             kTailBytes = kHashKey.size() + kHashDigits + kRecordEnds.size();

// The hash that stands at the end of a line; empty: it does not end as a record does.
std::string_view hashStated(std::string_view line);

struct LogLine {
  std::string_view text;
  bool has_break = true;  // false: the next record begins within the line
};
struct LogLines {
  std::vector<LogLine> lines;
  std::string_view torn;  // what is torn behind the last
};

// A record that a formatter laid over several lines is one, and so is one with breaks put in. In time that
// grows as the text does.
LogLines logLines(std::string_view text);

}  // namespace stopwalk::files
