#include "core/files/failures_in_text.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <nlohmann/json.hpp>

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

using Json = nlohmann::json;

constexpr std::string_view kBlanks = " \t\r\n";
constexpr std::string_view kFail = "\"fail\"";
constexpr auto kNone = std::string_view::npos;

// Where the value of a key begins, the first from there on.
std::size_t valueOf(std::string_view key, std::string_view text, std::size_t from = 0) {
  const std::string quoted = '"' + std::string(key) + '"';
  for (std::size_t at = text.find(quoted, from); at != kNone; at = text.find(quoted, at + 1)) {
    const std::size_t colon = text.find_first_not_of(kBlanks, at + quoted.size());
    if (colon != kNone && text[colon] == ':') return text.find_first_not_of(kBlanks, colon + 1);
  }
  return kNone;
}

// Whatever is no other result, or the beginning of one where the text ends.
bool isFail(std::string_view value) {
  value = value.substr(0, value.find('\0'));  // what some file systems leave of an end that was cut
  constexpr std::array<std::string_view, 3> kOthers = {"\"pass\"", "\"not-tested\"", "\"not-accessible\""};
  return std::ranges::none_of(kOthers, [&](std::string_view other) {
    return value.starts_with(other) || other.starts_with(value);
  });
}

// Keys that have what people typed, or an id.
constexpr std::array<std::string_view, 11> kTexts = {"action", "by",   "device", "inspector", "note", "of",
                                                     "owner",  "room", "second", "start",     "what"};

// Whether what stands at `at` in quotes is the value of a key, though of none of those. That key may be hurt.
bool isOfOtherKey(std::string_view text, std::size_t at) {
  if (at > 0 && text[at - 1] == '\\') return false;  // a quote that somebody typed
  const std::string_view before = text.substr(0, at);
  const std::size_t end = before.rfind('"');
  if (end == kNone) return false;
  const std::string_view between = before.substr(end + 1);
  if (between.find_first_of(",[") != kNone || between.find_first_not_of(kBlanks) == kNone) return false;
  const std::size_t begin = before.substr(0, end).rfind('"');
  const std::string_view key =
      before.substr(begin + 1, end - begin - 1);  // from the beginning: there is none
  return std::ranges::find(kTexts, key) == kTexts.end();
}

// Where a result stands, the first from there on: behind its key, or a failure behind a key that nobody
// knows.
std::size_t resultIn(std::string_view text, std::size_t from) {
  const std::size_t keyed = valueOf("result", text, from);
  std::size_t at = text.find(kFail, from);
  while (at < keyed && !isOfOtherKey(text, at)) at = text.find(kFail, at + 1);
  return std::min(at, keyed);
}

// Whether it is a check to its end: what came of it was taken out.
bool isWholeCheck(std::string_view text) {
  return valueOf("device", text) != kNone && valueOf("tested", text) != kNone && Json::accept(text);
}

// Calls `each(its text)` for each result that is a failure, with what stands since the result before.
template <class Each>
void eachFailure(std::string_view text, Each each) {
  bool has_result = false;
  for (std::size_t from = 0, at = 0; (at = resultIn(text, at)) != kNone; from = at++) {
    has_result = true;
    if (isFail(text.substr(at))) each(text.substr(from, at - from));
  }
  if (!has_result && isWholeCheck(text)) each(text);
}

// A text in quotes, whatever its bytes are; null: it does not end.
Json textAt(std::string_view text) {
  std::size_t end = 1;
  while (end < text.size() && text[end] != '"') end += text[end] == '\\' ? 2 : 1;
  if (!text.starts_with('"') || end >= text.size()) return nullptr;
  const std::string cleaned = printable(text.substr(0, end + 1), "");
  const Json read = Json::parse(cleaned, nullptr, false);
  return read.is_string() ? read : Json(cleaned.substr(1, cleaned.size() - 2));
}

// A text that a key has, and where it begins.
struct Said {
  std::size_t at = 0;
  Json text;
};
std::vector<Said> textsOf(std::string_view key, std::string_view text) {
  std::vector<Said> all;
  for (std::size_t at = 0; (at = valueOf(key, text, at)) != kNone;)
    if (Json read = textAt(text.substr(at)); read.is_string()) all.push_back({at, std::move(read)});
  return all;
}

// What stands last behind the device, or else anywhere in what is said of it and others.
Json lastOf(std::string_view key, std::string_view its, std::string_view all) {
  for (const std::string_view where : {its, all})
    if (const std::vector<Said> texts = textsOf(key, where); !texts.empty()) return texts.back().text;
  return nullptr;
}

// A list of texts, whatever their bytes are; null: it does not end, or is of anything else.
Json listAt(std::string_view text) {
  bool is_quoted = false;
  std::size_t end = 0;
  while (end < text.size() && (is_quoted || text[end] != ']')) {
    if (text[end] == '"') is_quoted = !is_quoted;
    end += is_quoted && text[end] == '\\' ? 2 : 1;
  }
  if (!text.starts_with('[') || end >= text.size()) return nullptr;
  const Json read = Json::parse(printable(text.substr(0, end + 1), ""), nullptr, false);
  const auto isText = [](const Json& value) { return value.is_string(); };
  return read.is_array() && std::ranges::all_of(read, isText) ? read : Json();
}

// Whether an id may go on with it.
bool isOfId(char c) {
  return std::isalnum(static_cast<unsigned char>(c)) || c == '-' || c == '_' || c == '/' || c == '.';
}

// Where the text names the id; kNone: it does not, or only within another.
std::size_t placeOf(std::string_view id, std::string_view text) {
  for (std::size_t at = text.find(id); at != kNone; at = text.find(id, at + 1)) {
    const std::size_t end = at + id.size();
    if ((at == 0 || !isOfId(text[at - 1])) && (end == text.size() || !isOfId(text[end]))) return at;
  }
  return kNone;
}

// The devices that failed, by their key; or where that is hurt, those that are known.
std::vector<Said> devicesIn(std::string_view before, const std::set<std::string>& known) {
  std::vector<Said> devices = textsOf("device", before);
  if (!devices.empty()) return devices;
  for (const std::string& id : known)
    if (const std::size_t at = placeOf(id, before); !id.empty() && at != kNone) devices.push_back({at, id});
  std::ranges::sort(devices, {}, &Said::at);
  return devices;
}

}  // namespace

bool saysFail(std::string_view text) {
  bool says = false;
  eachFailure(text, [&](std::string_view) { says = true; });
  return says;
}

bool saysFailOfNobody(std::string_view text) {
  bool says = false;
  eachFailure(text, [&](std::string_view before) { says = says || devicesIn(before, {}).empty(); });
  return says;
}

std::vector<ReadRecord> failuresIn(std::string_view text, const std::set<std::string>& known) {
  std::vector<ReadRecord> all;
  eachFailure(text, [&](std::string_view before) {
    const std::vector<Said> devices = devicesIn(before, known);
    for (std::size_t i = 0; i < devices.size(); ++i) {
      const std::size_t begin = devices[i].at, end = i + 1 < devices.size() ? devices[i + 1].at : kNone;
      const std::string_view its = before.substr(begin, end - begin);
      Json failure = {{"result", word(inspection::Result::Fail)}, {"device", devices[i].text}};
      for (const char* key : {"at", "entered", "inspector"})
        if (const Json said = lastOf(key, its, before); said.is_string()) failure[key] = said;
      if (const std::size_t list = valueOf("machines", its); list != kNone)
        failure["machines"] = listAt(its.substr(list));
      if (ReadRecord read = readRecord(failure.dump(-1, ' ', false, Json::error_handler_t::replace));
          read.record)
        all.push_back(std::move(read));
    }
  });
  return all;
}

}  // namespace stopwalk::files
