#include "core/files/log_lines.h"

#include <algorithm>

#include "core/files/inspection_record_json.h"
#include "core/files/rewritten.h"

namespace stopwalk::files {
namespace {

constexpr auto kNone = std::string_view::npos;

std::size_t lineEnd(std::string_view text, std::size_t from) {
  return std::min(text.find('\n', from), text.size());
}

// Where the next record begins within a line, behind the first of which something is left; kNone: nowhere.
std::size_t nextWithin(std::string_view line, std::size_t begin) {
  const std::size_t brace = line.find('{');
  return brace < begin ? begin : line.find(kRecordBegins, begin + 1);
}

// Whether a line ends as a record does, blanks behind it or not.
bool isEnded(std::string_view line) {
  return !hashStated(line.substr(0, line.find_last_not_of(" \t\r") + 1)).empty();
}

// How far a record goes that begins at `from` and whose line ends at `end`: it takes on the lines behind it
// until it ends as a record does, or the next begins.
std::size_t recordEnd(std::string_view text, std::size_t from, std::size_t end) {
  while (end + 1 < text.size() && !isEnded(text.substr(from, end - from))) {
    const std::size_t next = end + 1, next_end = lineEnd(text, next);
    const std::size_t record = text.substr(next, next_end - next).find(kRecordBegins);
    if (record == 0 || (next_end == text.size() && isTorn(text.substr(next)))) break;
    if (record != kNone) return next + record;
    end = next_end;
  }
  return end;
}

}  // namespace

std::string_view hashStated(std::string_view line) {
  if (line.size() < kTailBytes || !line.ends_with(kRecordEnds)) return {};
  const std::string_view tail = line.substr(line.size() - kTailBytes);
  return tail.starts_with(kHashKey) ? tail.substr(kHashKey.size(), kHashDigits) : std::string_view();
}

LogLines logLines(std::string_view text) {
  LogLines all;
  std::size_t end = lineEnd(text, 0);  // of the line of `at`
  for (std::size_t at = 0; at < text.size();) {
    if (end < at) end = lineEnd(text, at);
    const std::string_view line = text.substr(at, end - at);
    const std::size_t begin = line.find(kRecordBegins);
    const std::size_t laid = begin == kNone && end < text.size() ? laidOverLines(text.substr(at)) : 0;
    if (laid > 0) {
      all.lines.push_back({text.substr(at, laid - (text[at + laid - 1] == '\n' ? 1 : 0))});
      at += laid;
      continue;
    }
    const std::size_t within = begin == kNone ? kNone : nextWithin(line, begin);
    if (within == kNone && end == text.size() && isTorn(line)) {
      all.torn = line;
      break;
    }
    const std::size_t to = within != kNone ? at + within : begin == kNone ? end : recordEnd(text, at, end);
    const bool has_break = to == text.size() || text[to] == '\n';
    all.lines.push_back({text.substr(at, to - at), has_break});
    at = to + (has_break ? 1 : 0);
  }
  return all;
}

}  // namespace stopwalk::files
