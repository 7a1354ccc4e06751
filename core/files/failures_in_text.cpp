#include "core/files/failures_in_text.h"

#include <algorithm>
#include <array>
#include <map>
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

// Calls `each(value)` for each value of the key, until that answers no.
template <class Each>
void eachValue(std::string_view key, std::string_view text, Each each) {
  for (std::size_t at = valueOf(key, text); at != kNone; at = valueOf(key, text, at))
    if (!each(at)) return;
}

constexpr std::array<std::string_view, 3> kOthers = {"\"pass\"", "\"not-tested\"", "\"not-accessible\""};

bool isOther(std::string_view value) {
  return std::ranges::any_of(kOthers, [&](std::string_view other) { return value.starts_with(other); });
}

// What a crash leaves of another result.
bool isBegunOther(std::string_view value) {
  return std::ranges::any_of(kOthers, [&](std::string_view other) { return other.starts_with(value); });
}

// What a text says by its results: one that is no other is a failure.
enum class Says { Nothing, Fail, Other };
Says resultIn(std::string_view text) {
  Says says = Says::Nothing;
  eachValue("result", text, [&](std::size_t at) {
    says = isOther(text.substr(at)) ? Says::Other : Says::Fail;
    return says == Says::Other;
  });
  return says;
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
  eachValue(key, text, [&](std::size_t at) {
    if (Json read = textAt(text.substr(at)); read.is_string()) all.push_back({at, std::move(read)});
    return true;
  });
  return all;
}

// The last text of a key; null: there is none.
Json lastOf(std::string_view key, std::string_view text) {
  const std::vector<Said> texts = textsOf(key, text);
  return texts.empty() ? Json() : texts.back().text;
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
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
         std::string_view("-_/.").find(c) != kNone;
}

// Where the text first names each of the ids, by itself and not within another.
std::vector<Said> namedIn(std::string_view text, const std::set<std::string>& ids) {
  std::vector<Said> named;
  std::set<std::string> seen;
  for (std::size_t at = 0; at < text.size() && !ids.empty(); ++at) {
    std::size_t end = at;
    while (end < text.size() && isOfId(text[end])) ++end;
    std::string word(text.substr(at, end - at));
    if (!word.empty() && ids.contains(word) && seen.insert(word).second) named.push_back({at, word});
    at = end;
  }
  return named;
}

// Whether it says of no device that can be told that it failed: by its result, or, in what is no round, by
// that word alone.
bool saysItFailed(std::string_view text) {
  const Says says = resultIn(text);
  const bool is_by_word = text.find(kFail) != kNone && valueOf("devices", text) == kNone;
  return says == Says::Fail || (says == Says::Nothing && is_by_word);
}

// The devices that failed, with what stands behind each.
struct Failed {
  std::vector<Said> devices;
  bool is_sure = true;  // false: the key of a device or its quotes are hurt, or its id
};

Failed failedIn(std::string_view text, const std::set<std::string>& known) {
  std::vector<std::size_t> keyed;
  eachValue("device", text, [&](std::size_t at) {
    if (text[at] == '"') keyed.push_back(at);
    return true;
  });
  Failed failed;
  for (std::size_t i = 0; i < keyed.size(); ++i) {
    // Up to the next of them; that of the first is all that stands before it, too.
    const std::size_t begin = i == 0 ? 0 : keyed[i], end = i + 1 < keyed.size() ? keyed[i + 1] : text.size();
    const std::string_view part = text.substr(begin, end - begin);
    if (resultIn(part) == Says::Other) continue;
    const Json device = textAt(text.substr(keyed[i]));
    if (!device.is_string()) continue;
    const auto& said = device.get_ref<const std::string&>();
    const bool is_id = !said.empty() && std::ranges::all_of(said, isOfId);
    failed.is_sure = failed.is_sure && is_id;
    std::vector<Said> within = is_id ? std::vector<Said>() : namedIn(said.empty() ? part : said, known);
    if (within.empty() && !said.empty()) within.push_back({0, device});
    for (Said& it : within) failed.devices.push_back({keyed[i], std::move(it.text)});
  }
  if (keyed.empty() && saysItFailed(text)) failed = {namedIn(text, known), false};
  return failed;
}

// A failure of the device, with what else `its` part of the text says, or else all of it.
ReadRecord failureOf(const Json& device, std::string_view its, const std::map<std::string, Json>& said) {
  Json failure = {{"result", word(inspection::Result::Fail)}, {"device", device}};
  for (const auto& [key, of_all] : said) {
    const Json of_it = lastOf(key, its);
    if (const Json& known = of_it.is_string() ? of_it : of_all; known.is_string()) failure[key] = known;
  }
  if (const std::size_t list = valueOf("machines", its); list != kNone)
    failure["machines"] = listAt(its.substr(list));
  return readRecord(failure.dump(-1, ' ', false, Json::error_handler_t::replace));
}

}  // namespace

bool saysFail(std::string_view text) {
  bool says = false;
  text = text.substr(0, text.find_last_not_of('\0') + 1);  // zeros that were never written over
  eachValue("result", text, [&](std::size_t at) {
    const std::string_view value = text.substr(at);
    return !(says = !isOther(value) && !isBegunOther(value));
  });
  return says;
}

bool wantsKnown(std::string_view text) {
  return !failedIn(text, {}).is_sure;
}

std::vector<ReadRecord> failuresIn(std::string_view text, const std::set<std::string>& known) {
  const std::vector<Said> devices = failedIn(text, known).devices;
  if (devices.empty()) return {};
  std::map<std::string, Json> said;
  for (const char* key : {"at", "entered", "inspector"}) said[key] = lastOf(key, text);
  std::vector<ReadRecord> all;
  for (std::size_t i = 0; i < devices.size(); ++i) {
    const std::size_t begin = devices[i].at, end = i + 1 < devices.size() ? devices[i + 1].at : kNone;
    ReadRecord read = failureOf(devices[i].text, text.substr(begin, end - begin), said);
    if (read.record) all.push_back(std::move(read));
  }
  return all;
}

}  // namespace stopwalk::files
