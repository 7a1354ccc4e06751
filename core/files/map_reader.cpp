#include "core/files/map_reader.h"

#include <algorithm>

#include "core/files/nearest.h"

namespace stopwalk::files {
namespace {

std::string kindName(Node node) {
  switch (node.kind()) {
    case NodeKind::Null:
      return "nothing";
    case NodeKind::Scalar:
      return quoted(node.text());
    case NodeKind::List:
      return "a list";
    case NodeKind::Map:
      return "a map";
  }
  return "";
}

bool expectScalar(Node node, const char* wanted, Problems& problems) {
  if (node.isScalar()) return true;
  problems.error(node.begin(), std::string(wanted) + " is expected here, not " + kindName(node));
  return false;
}

}  // namespace

std::optional<std::string> readText(Node node, Problems& problems) {
  if (!expectScalar(node, "a text", problems)) return std::nullopt;
  return std::string(node.text());
}

std::optional<bool> readFlag(Node node, Problems& problems) {
  if (!node.isQuoted() && node.isScalar()) {
    if (node.text() == "true") return true;
    if (node.text() == "false") return false;
  }
  problems.error(node.begin(), "true or false is expected here, not " + kindName(node));
  return std::nullopt;
}

std::string numberFault(std::string_view text, layout::NumberFault fault) {
  switch (fault) {
    case layout::NumberFault::LeadingZero:
      return quoted(text) + " has a leading zero; write it without";
    case layout::NumberFault::TrailingText:
      return quoted(text) + " has text after the number; write the number alone";
    case layout::NumberFault::OutOfRange:
      return quoted(text) + " is not a finite number";
    default:
      return "a number is expected here, not " + quoted(text);
  }
}

std::optional<double> readNumber(Node node, Problems& problems) {
  if (!expectScalar(node, "a number", problems)) return std::nullopt;
  if (node.isQuoted()) {
    problems.error(node.begin(), "a number is expected here, not a text; write it without quotes");
    return std::nullopt;
  }
  const layout::Number number = layout::parseNumber(node.text());
  if (number.ok()) return number.value;
  problems.error(node.begin(), numberFault(node.text(), number.fault));
  return std::nullopt;
}

std::optional<int> readWhole(Node node, int least, int most, Problems& problems) {
  const auto number = readNumber(node, problems);
  if (!number) return std::nullopt;
  if (*number == std::floor(*number) && *number >= least && *number <= most) return static_cast<int>(*number);
  problems.error(node.begin(), "a whole number from " + std::to_string(least) + " to " +
                                   std::to_string(most) + " is expected here, not " + quoted(node.text()));
  return std::nullopt;
}

bool isId(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
}

std::optional<std::string> readId(Node node, Problems& problems) {
  if (!expectScalar(node, "an id", problems)) return std::nullopt;
  if (isId(node.text())) return std::string(node.text());
  problems.error(node.begin(),
                 "the id " + quoted(node.text()) + " may hold lower-case letters, digits and hyphens only");
  return std::nullopt;
}

std::optional<std::size_t> readWord(Node node, const std::vector<std::string_view>& words,
                                    Problems& problems) {
  if (!node.isScalar()) {
    expectScalar(node, anyOf(words).c_str(), problems);
    return std::nullopt;
  }
  const auto found = std::find(words.begin(), words.end(), node.text());
  if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
  problems.error(node.begin(), quoted(node.text()) + " is not known here; " + anyOf(words) + " would be" +
                                   didYouMean(node.text(), words));
  return std::nullopt;
}

MapReader::MapReader(Node node, Problems& problems, std::string what)
    : node_(node), problems_(problems), what_(std::move(what)), is_map_(node.isMap()) {
  if (!is_map_) {
    problems.error(node.begin(), what_ + " is expected here: keys and values, not " + kindName(node));
    return;
  }
  known_.reserve(16);
  entries_.reserve(node.size());
  const auto items = node.items();
  for (auto i = items.begin(); i != items.end(); ++i) {
    const Node key = *i;
    ++i;
    entries_.push_back({key, *i});
  }
}

std::optional<Node> MapReader::optional(std::string_view key) {
  known_.push_back(key);
  for (std::size_t i = 0; i < entries_.size(); ++i) {
    Entry& entry = entries_[(next_ + i) % entries_.size()];
    if (entry.key.text() != key) continue;
    entry.asked = true;
    next_ = (next_ + i + 1) % entries_.size();
    return entry.value;
  }
  return std::nullopt;
}

std::optional<Node> MapReader::required(std::string_view key) {
  auto value = optional(key);
  if (!value && is_map_) problems_.error(node_.begin(), what_ + " needs the key `" + std::string(key) + "`");
  return value;
}

std::size_t MapReader::keyEnd(std::string_view key) const {
  for (const Entry& entry : entries_)
    if (entry.key.text() == key) return entry.key.end();
  return node_.begin();
}

void MapReader::finish() {
  for (const Entry& entry : entries_) {
    if (entry.asked || std::find(known_.begin(), known_.end(), entry.key.text()) != known_.end()) continue;
    problems_.warn(entry.key.begin(), "the key " + quoted(entry.key.text()) + " is not known in " + what_ +
                                          " and not used" + didYouMean(entry.key.text(), known_));
  }
}

}  // namespace stopwalk::files
