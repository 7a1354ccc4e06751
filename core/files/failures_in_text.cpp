#include "core/files/failures_in_text.h"

#include <nlohmann/json.hpp>

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

using Json = nlohmann::json;

constexpr std::string_view kBlanks = " \t\r\n";
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

// No other result begins so.
bool isFail(std::string_view value) {
  return value.starts_with("\"f");
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

// All texts that a key has.
std::vector<Json> textsOf(std::string_view key, std::string_view text) {
  std::vector<Json> all;
  for (std::size_t at = 0; (at = valueOf(key, text, at)) != kNone;)
    if (Json read = textAt(text.substr(at)); read.is_string()) all.push_back(std::move(read));
  return all;
}

}  // namespace

bool saysFail(std::string_view text) {
  for (std::size_t at = 0; (at = valueOf("result", text, at)) != kNone;)
    if (isFail(text.substr(at))) return true;
  return false;
}

std::vector<ReadRecord> failuresIn(std::string_view text) {
  std::vector<ReadRecord> all;
  for (std::size_t from = 0, at = 0; (at = valueOf("result", text, at)) != kNone; from = at) {
    if (!isFail(text.substr(at))) continue;
    const std::string_view before = text.substr(from, at - from);
    Json failure = {{"result", word(inspection::Result::Fail)}};
    for (const char* key : {"at", "entered", "inspector"})
      if (const std::vector<Json> texts = textsOf(key, before); !texts.empty()) failure[key] = texts.back();
    for (const Json& device : textsOf("device", before)) {
      failure["device"] = device;
      if (ReadRecord read = readRecord(failure.dump()); read.record) all.push_back(std::move(read));
    }
  }
  return all;
}

}  // namespace stopwalk::files
