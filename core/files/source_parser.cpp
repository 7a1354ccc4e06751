#include <yaml.h>

#include <algorithm>

#include "core/files/source_tree.h"

namespace stopwalk::files {
namespace {

constexpr std::size_t kMostBytes = std::size_t{64} << 20;
constexpr std::size_t kMostLevels = 20;
constexpr std::size_t kMostValues = 4'000'000;

// The first byte that does not belong to well-formed UTF-8, or the size.
std::size_t firstBadByte(std::string_view text) {
  const auto at = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
  for (std::size_t i = 0; i < text.size();) {
    const unsigned lead = at(i), second = at(i + 1);
    if (lead < 0x80) {
      ++i;
      continue;
    }
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    const unsigned low = lead == 0xE0 ? 0xA0 : lead == 0xF0 ? 0x90 : 0x80;
    const unsigned high = lead == 0xED ? 0x9F : lead == 0xF4 ? 0x8F : 0xBF;
    if (lead < 0xC2 || lead > 0xF4 || second < low || second > high) return i;
    for (std::size_t k = 2; k < length; ++k)
      if ((at(i + k) & 0xC0) != 0x80) return i;
    i += length;
  }
  return text.size();
}

bool isNullText(std::string_view text) {
  return text.empty() || text == "~" || text == "null" || text == "Null" || text == "NULL";
}

// The library counts characters; we count bytes. Events come in nearly the order of the text, so stepping is
// cheap.
class ByteCursor {
 public:
  ByteCursor(std::string_view text, std::size_t byte)
      : text_(text),
        byte_(byte),
        start_(byte),
        is_ascii_(std::all_of(text.begin() + static_cast<std::ptrdiff_t>(byte), text.end(),
                              [](char c) { return static_cast<unsigned char>(c) < 0x80; })) {}

  std::uint32_t at(std::size_t character) {
    if (is_ascii_) return static_cast<std::uint32_t>(std::min(start_ + character, text_.size()));
    for (; character_ < character && byte_ < text_.size(); ++character_) do
        ++byte_;
      while (byte_ < text_.size() && continues());
    for (; character_ > character; --character_) do
        --byte_;
      while (continues());
    return static_cast<std::uint32_t>(byte_);
  }

 private:
  bool continues() const { return (static_cast<unsigned char>(text_[byte_]) & 0xC0) == 0x80; }

  std::string_view text_;
  std::size_t byte_;
  std::size_t start_;
  std::size_t character_ = 0;
  bool is_ascii_;
};

struct Parser : yaml_parser_t {
  Parser() { yaml_parser_initialize(this); }
  ~Parser() { yaml_parser_delete(this); }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;
};

struct Event : yaml_event_t {
  Event() : yaml_event_t() {}
  ~Event() { yaml_event_delete(this); }
  Event(const Event&) = delete;
  Event& operator=(const Event&) = delete;
};

}  // namespace

class TreeBuilder {
 public:
  TreeBuilder(std::string_view text, std::size_t start, Problems& problems)
      : problems_(problems), cursor_(text, start), start_(start) {
    tree_.text_ = text;
    tree_.nodes_.reserve(std::min(kMostValues, text.size() / 5 + 16));
    const std::string_view body = text.substr(start);
    yaml_parser_set_encoding(&parser_, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&parser_, reinterpret_cast<const unsigned char*>(body.data()), body.size());
  }

  std::optional<SourceTree> build() {
    for (bool more = true; more;) {
      Event event;
      if (yaml_parser_parse(&parser_, &event) == 0) {
        reportLibrary();
        return std::nullopt;
      }
      if (!take(event)) return std::nullopt;
      more = event.type != YAML_STREAM_END_EVENT;
    }
    if (tree_.nodes_.empty()) {
      problems_.error(start_, "the file is empty");
      return std::nullopt;
    }
    return std::move(tree_);
  }

 private:
  // False: nothing that follows can be made sense of.
  bool take(const Event& event) {
    switch (event.type) {
      case YAML_DOCUMENT_START_EVENT:
        return startDocument(event);
      case YAML_DOCUMENT_END_EVENT:
        tree_.has_end_marker_ = event.data.document_end.implicit == 0;
        tree_.end_ = cursor_.at(event.start_mark.index);
        return true;
      case YAML_ALIAS_EVENT:
        return refuse(event, "an alias (`*`) is not part of a layout's YAML; write the value out");
      case YAML_SCALAR_EVENT:
        return addScalar(event);
      case YAML_SEQUENCE_START_EVENT: {
        const auto& s = event.data.sequence_start;
        return plainNode(event, s.anchor, s.tag) &&
               open(event, NodeKind::List, s.style == YAML_FLOW_SEQUENCE_STYLE);
      }
      case YAML_MAPPING_START_EVENT: {
        const auto& m = event.data.mapping_start;
        return plainNode(event, m.anchor, m.tag) &&
               open(event, NodeKind::Map, m.style == YAML_FLOW_MAPPING_STYLE);
      }
      case YAML_SEQUENCE_END_EVENT:
      case YAML_MAPPING_END_EVENT:
        return close(event);
      default:
        return true;
    }
  }

  bool refuse(const Event& event, std::string what) {
    problems_.error(cursor_.at(event.start_mark.index), std::move(what));
    return false;
  }

  bool startDocument(const Event& event) {
    const auto& start = event.data.document_start;
    if (start.tag_directives.start != start.tag_directives.end)
      return refuse(event, "a tag directive is not part of a layout's YAML");
    if (documents_++ > 0) return refuse(event, "more than one document; a file holds one");
    return true;
  }

  bool plainNode(const Event& event, const unsigned char* anchor, const unsigned char* tag) {
    if (anchor != nullptr)
      return refuse(event, "an anchor (`&`) is not part of a layout's YAML; write the value out");
    if (tag != nullptr) return refuse(event, "a tag (`!`) is not part of a layout's YAML; leave it out");
    return true;
  }

  bool add(const Event& event, NodeKind kind) {
    if (tree_.nodes_.size() >= kMostValues)
      return refuse(event, "over 4,000,000 values; no layout holds so many");
    if (!open_.empty()) {
      SourceTree::Data& parent = tree_.nodes_[open_.back()];
      const bool is_key = parent.kind == NodeKind::Map && parent.count % 2 == 0;
      if (is_key && (kind == NodeKind::List || kind == NodeKind::Map))
        return refuse(event, "a key must be a word, not a list or map");
      ++parent.count;
    }
    SourceTree::Data& data = tree_.nodes_.emplace_back();
    data.kind = kind;
    data.begin = cursor_.at(event.start_mark.index);
    data.end = cursor_.at(event.end_mark.index);
    data.next = static_cast<std::uint32_t>(tree_.nodes_.size());
    return true;
  }

  bool addScalar(const Event& event) {
    const auto& scalar = event.data.scalar;
    if (!plainNode(event, scalar.anchor, scalar.tag)) return false;
    const std::string_view value(reinterpret_cast<const char*>(scalar.value), scalar.length);
    const bool quoted = scalar.style != YAML_PLAIN_SCALAR_STYLE;
    if (value.find('\0') != std::string_view::npos) return refuse(event, "a text holds a NUL character");
    if (!add(event, !quoted && isNullText(value) ? NodeKind::Null : NodeKind::Scalar)) return false;
    SourceTree::Data& data = tree_.nodes_.back();
    data.quoted = quoted;
    const std::string_view source = tree_.text_.substr(data.begin, data.end - data.begin);
    if (source != value) {
      data.value = static_cast<std::uint32_t>(tree_.values_.size());
      tree_.values_.emplace_back(value);
    }
    return true;
  }

  bool open(const Event& event, NodeKind kind, bool flow) {
    if (open_.size() >= kMostLevels) return refuse(event, "nested over 20 levels deep");
    if (!add(event, kind)) return false;
    tree_.nodes_.back().flow = flow;
    open_.push_back(static_cast<std::uint32_t>(tree_.nodes_.size() - 1));
    return true;
  }

  bool close(const Event& event) {
    const std::uint32_t index = open_.back();
    open_.pop_back();
    SourceTree::Data& data = tree_.nodes_[index];
    data.next = static_cast<std::uint32_t>(tree_.nodes_.size());
    // A block ends where its last thing ends, not where the next begins.
    data.end = data.flow ? cursor_.at(event.end_mark.index) : endOfLast(index);
    if (data.kind == NodeKind::Map) checkKeys(index);
    return true;
  }

  std::uint32_t endOfLast(std::uint32_t index) const {
    if (tree_.nodes_[index].count == 0) return tree_.nodes_[index].begin;
    std::uint32_t last = index + 1;
    while (tree_.nodes_[last].next < tree_.nodes_[index].next) last = tree_.nodes_[last].next;
    return tree_.nodes_[last].end;
  }

  // By sorting, so that no choice of keys makes it slow.
  void checkKeys(std::uint32_t map) {
    const auto& nodes = tree_.nodes_;
    keys_.clear();
    for (std::uint32_t key = map + 1; key < nodes[map].next; key = nodes[nodes[key].next].next)
      keys_.push_back(key);
    std::sort(keys_.begin(), keys_.end(), [&](std::uint32_t a, std::uint32_t b) {
      const int order = tree_.textOf(a).compare(tree_.textOf(b));
      return order != 0 ? order < 0 : a < b;
    });
    for (std::size_t i = 1, first = 0; i < keys_.size(); ++i) {
      if (tree_.textOf(keys_[i]) != tree_.textOf(keys_[first])) {
        first = i;
        continue;
      }
      problems_.again(nodes[keys_[i]].begin,
                      "the key " + quoted(tree_.textOf(keys_[i])) + " is given twice in one map",
                      nodes[keys_[first]].begin);
    }
  }

  void reportLibrary() {
    const std::string what = parser_.problem != nullptr ? parser_.problem : "out of memory";
    if (parser_.error == YAML_READER_ERROR) {
      problems_.error(start_ + parser_.problem_offset, "not YAML: " + what);
      return;
    }
    std::string text = "not YAML: " + what;
    if (parser_.context != nullptr) text += std::string(", ") + parser_.context;
    if (parser_.context != nullptr && parser_.context_mark.line != parser_.problem_mark.line)
      text += " that begins on line " + std::to_string(parser_.context_mark.line + 1);
    problems_.error(cursor_.at(parser_.problem_mark.index), std::move(text));
  }

  Problems& problems_;
  SourceTree tree_;
  Parser parser_;
  ByteCursor cursor_;
  std::size_t start_;
  std::vector<std::uint32_t> open_;
  std::vector<std::uint32_t> keys_;
  int documents_ = 0;
};

std::optional<SourceTree> parseTree(std::string_view text, Problems& problems) {
  if (text.empty()) {
    problems.error(0, "the file is empty");
    return std::nullopt;
  }
  if (text.size() > kMostBytes) {
    problems.error(0, "over 64 MiB; no layout is so large");
    return std::nullopt;
  }
  const std::size_t bad = firstBadByte(text);
  const std::size_t nul = text.find('\0');
  if (nul < bad) {
    problems.error(nul, "a NUL character; a layout is a text");
    return std::nullopt;
  }
  if (bad < text.size()) {
    problems.error(bad, "not UTF-8; save the file with the encoding UTF-8");
    return std::nullopt;
  }
  const std::size_t start = text.starts_with("\xEF\xBB\xBF") ? 3 : 0;
  return TreeBuilder(text, start, problems).build();
}

}  // namespace stopwalk::files
