#include "core/files/rewritten.h"

#include <utf8proc.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <nlohmann/json.hpp>

#include "core/files/inspection_record_json.h"

namespace stopwalk::files {
namespace {

constexpr std::string_view kBlanks = " \t\r";
constexpr std::string_view kByteOrder = "\xEF\xBB\xBF";
constexpr auto kNone = std::string_view::npos;
constexpr std::size_t kFewest = 8;  // bytes that tell of UTF-16
constexpr int kDeepest = 16;        // no record is nested so deep: what is deeper is left out

std::string_view trimmed(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(kBlanks);
  return begin == kNone ? std::string_view() : text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1);
}

// Calls `each(place)` for each brace of a line, until that answers no. Texts do not go over lines.
template <class Each>
void eachBrace(std::string_view line, Each each) {
  bool is_quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"') is_quoted = !is_quoted;
    if (is_quoted && line[i] == '\\') i += line.substr(i + 1).starts_with('\0') ? 2 : 1;  // of UTF-16
    const bool is_brace = !is_quoted && i < line.size() && (line[i] == '{' || line[i] == '}');
    if (is_brace && !each(i)) return;
  }
}

// How many braces more are opened in a line than closed.
int openedIn(std::string_view line) {
  int opened = 0;
  eachBrace(line, [&](std::size_t i) {
    opened += line[i] == '{' ? 1 : -1;
    return true;
  });
  return opened;
}

// Whether what a formatter laid over several lines begins with it. What begins as a record was not laid so;
// of UTF-16 half a letter may look like a quote.
bool opens(std::string_view line) {
  if (isUtf16(line)) return false;
  if (line.starts_with(kByteOrder)) line.remove_prefix(kByteOrder.size());
  return line.find(kRecordBegins) == kNone && (openedIn(line) > 0 || trimmed(line) == "[");
}

// Where in a line the last of `open` braces closes, if the next record opens behind it, as in `}, {`; else
// its size.
std::size_t closedIn(std::string_view line, int open) {
  std::size_t closed = 0;
  bool opens_next = false;
  eachBrace(line, [&](std::size_t i) {
    opens_next = closed > 0 && line[i] == '{';
    open += line[i] == '{' ? 1 : -1;
    if (closed == 0 && open <= 0) closed = i + 1;
    return !opens_next;
  });
  return opens_next ? closed : line.size();
}

// Between and behind the records of a list.
bool isBetween(std::string_view line) {
  return line.find_first_not_of(" \t\r],") == kNone;
}

// A record of a list without what stands round it.
std::string_view withoutList(std::string_view record) {
  const std::size_t begin = record.find('{'), end = record.rfind('}');
  const bool is_listed = begin < end && end != kNone && record.find_first_not_of(" \t\r\n,[") == begin &&
                         record.find_first_not_of(" \t\r\n,]", end + 1) == kNone;
  return is_listed ? record.substr(begin, end + 1 - begin) : record;
}

// With its line break.
std::string_view firstLine(std::string_view text) {
  return text.substr(0, std::min(text.find('\n'), text.size() - 1) + 1);
}

std::string_view withoutBreak(std::string_view line) {
  return line.ends_with('\n') ? line.substr(0, line.size() - 1) : line;
}

// At even places, and at odd ones.
std::array<std::size_t, 2> zerosIn(std::string_view bytes) {
  std::array<std::size_t, 2> zeros = {};
  for (std::size_t i = 0; i < bytes.size(); ++i) zeros[i % 2] += bytes[i] == '\0';
  return zeros;
}

char32_t unitAt(std::string_view bytes, std::size_t at, bool is_big_endian) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(bytes[i]); };
  const char32_t first = byte(at), second = byte(at + 1);
  return is_big_endian ? first << 8 | second : second << 8 | first;
}

}  // namespace

std::size_t laidOverLines(std::string_view text) {
  if (text.find('\n') == kNone || !opens(withoutBreak(firstLine(text)))) return 0;
  std::size_t size = 0;
  int open = 0;
  bool is_record = false;
  while (size < text.size()) {
    const std::string_view line = firstLine(text.substr(size)), said = withoutBreak(line);
    if (said.find(kRecordBegins) != kNone) break;
    if (is_record && open <= 0 && !isBetween(said)) break;
    if (const std::size_t closed = closedIn(said, open); size > 0 && open > 0 && closed < said.size())
      return size + closed;
    open += openedIn(said);
    is_record = is_record || open > 0;
    size += line.size();
  }
  return size;
}

std::optional<std::string> unformatted(std::string_view record) {
  using Json = nlohmann::ordered_json;
  if (record.starts_with(kByteOrder)) record.remove_prefix(kByteOrder.size());
  record = withoutList(record);
  const auto isShallow = [](int depth, Json::parse_event_t, Json&) { return depth <= kDeepest; };
  const Json json = Json::parse(record, isShallow, false);
  if (json.is_discarded()) return std::nullopt;
  std::string text = json.dump(-1, ' ', false, Json::error_handler_t::replace);
  return text == trimmed(record) ? std::nullopt : std::optional(std::move(text));
}

bool isUtf16(std::string_view line) {
  if (line.size() < kFewest) return false;
  const auto zeros = zerosIn(line);
  const std::size_t half = line.size() / 2;
  return 2 * std::max(zeros[0], zeros[1]) >= half && 8 * std::min(zeros[0], zeros[1]) <= half;
}

bool isBigEndian(std::string_view first_line) {
  if (first_line.starts_with("\xFE\xFF")) return true;
  const auto [even, odd] = zerosIn(first_line);
  return !first_line.starts_with("\xFF\xFE") && even > odd;
}

std::string fromUtf16(std::string_view whole, bool is_big_endian) {
  std::string_view line = whole;
  if (line.starts_with("\xFE\xFF") || line.starts_with("\xFF\xFE"))
    line.remove_prefix(2);
  else if (!is_big_endian && line.starts_with('\0'))
    line.remove_prefix(1);  // of the break before it
  std::string completed;    // as a letter of which the zero stood before it
  if (!is_big_endian && line.size() % 2 != 0) line = completed = std::string(line) + '\0';
  std::string text;
  const auto isHalf = [](char32_t unit, char32_t from) { return unit >= from && unit < from + 0x400; };
  for (std::size_t i = 0; i + 1 < line.size(); i += 2) {
    char32_t character = unitAt(line, i, is_big_endian);
    if (isHalf(character, 0xD800) && i + 3 < line.size()) {
      const char32_t low = unitAt(line, i + 2, is_big_endian);
      if (isHalf(low, 0xDC00)) character = 0x10000 + ((character - 0xD800) << 10) + (low - 0xDC00), i += 2;
    }
    if (character >= 0xD800 && character < 0xE000) character = 0xFFFD;
    std::array<utf8proc_uint8_t, 4> bytes = {};
    const auto size = utf8proc_encode_char(static_cast<utf8proc_int32_t>(character), bytes.data());
    text.append(bytes.begin(), bytes.begin() + size);
  }
  return text;
}

}  // namespace stopwalk::files
