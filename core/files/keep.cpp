#include "core/files/keep.h"

#include <algorithm>

#include "core/files/scalar_text.h"

namespace stopwalk::files {
namespace {

using layout::KeptEntry;
using layout::KeptText;

bool isBlank(char c) {
  return c == ' ' || c == '\t';
}
bool isBreak(char c) {
  return c == '\n' || c == '\r';
}

std::size_t lineStart(std::string_view text, std::size_t byte) {
  while (byte > 0 && !isBreak(text[byte - 1])) --byte;
  return byte;
}

std::size_t lineEnd(std::string_view text, std::size_t byte) {
  return std::min(text.find_first_of("\r\n", byte), text.size());
}

std::string_view withoutBlanks(std::string_view line) {
  while (!line.empty() && isBlank(line.front())) line.remove_prefix(1);
  while (!line.empty() && isBlank(line.back())) line.remove_suffix(1);
  return line;
}

// A block scalar is said to end where the next thing begins; the empty lines between are not its own.
std::size_t contentEnd(Node node) {
  const std::string_view text = node.whole();
  std::size_t end = node.end();
  while (end > node.begin()) {
    std::size_t start = end;
    while (start > node.begin() && isBlank(text[start - 1])) --start;
    if (start == node.begin() || !isBreak(text[start - 1])) break;
    end = start - 1;
  }
  return end;
}

// The lines of comments and the empty lines between two places that begin a line, without the indent of the
// thing below.
std::string commentLines(std::string_view text, std::size_t from, std::size_t to) {
  const std::size_t column = std::min(text.find_first_not_of(' ', to), text.size()) - to;
  std::string lines;
  for (; from < to; from = lineBelow(text, from)) {
    std::string_view line = text.substr(from, std::min(lineEnd(text, from), to) - from);
    const std::string_view bare = withoutBlanks(line);
    if (!bare.empty() && bare.front() != '#') continue;
    const auto indent = static_cast<std::size_t>(bare.begin() - line.begin());
    if (!bare.empty())
      lines += line.substr(std::min(indent, column), indent - std::min(indent, column) + bare.size());
    lines += '\n';
  }
  return lines;
}

// The comment on the line from `byte` on, with the blanks before it, if nothing else is there.
std::string commentBehind(std::string_view text, std::size_t byte) {
  const std::size_t mark = text.find_first_not_of(" \t", byte);
  if (mark == byte || mark == std::string_view::npos || text[mark] != '#') return "";
  const std::string_view rest = text.substr(byte, lineEnd(text, mark) - byte);
  const std::string_view comment = withoutBlanks(rest);
  return std::string(rest.substr(0, static_cast<std::size_t>(comment.end() - rest.begin())));
}

// Further lines lose the indent of their key.
std::string dedented(std::string_view piece, std::size_t indent) {
  std::string out;
  for (std::size_t from = 0; from <= piece.size();) {
    const std::size_t end = lineEnd(piece, from);
    std::string_view line = piece.substr(from, end - from);
    if (from > 0) {
      out += '\n';
      std::size_t drop = 0;
      while (drop < indent && drop < line.size() && line[drop] == ' ') ++drop;
      line.remove_prefix(drop);
    }
    out += line;
    if (end >= piece.size()) break;
    from = lineBelow(piece, end);
  }
  return out;
}

std::size_t afterColon(Node key, Node value) {
  const std::size_t colon = key.whole().find(':', key.end());
  return colon < std::max(value.begin(), key.end() + 1) ? colon + 1 : key.end();
}

std::string sourceOf(Node map, Node key, Node value) {
  const std::string_view text = map.whole();
  if (map.isFlow()) {
    const std::string source(value.source());
    return source.empty() ? " ~" : " " + source;
  }
  const std::size_t from = afterColon(key, value);
  const std::size_t to = std::max(contentEnd(value), from);
  return dedented(text.substr(from, to - from), key.begin() - lineStart(text, key.begin()));
}

// Keys within a footprint that the program does not know, as far as they fit into braces.
std::string unknownWithin(Node value) {
  std::string extra;
  const auto items = value.items();
  for (auto i = items.begin(); i != items.end(); ++i) {
    const std::string_view key = (*i).text();
    ++i;
    const std::string_view source = (*i).source();
    const bool one_line = source.find_first_of("\r\n") == std::string_view::npos;
    const bool fits = (*i).isFlow() || ((*i).isScalar() && one_line);
    if (key == "width" || key == "depth" || key == "outline" || !fits) continue;
    const bool as_it_is = value.isFlow() || !(*i).isScalar() || (*i).isQuoted() ||
                          source.find_first_of(",[]{}") == std::string_view::npos;
    extra += ", " + scalarText(key) + ": " + (as_it_is ? std::string(source) : scalarText((*i).text()));
  }
  return extra;
}

bool isDefault(const KeptText& kept, const std::vector<Field>& fields, bool block) {
  if (kept.flow == block || !kept.before.empty() || !kept.after.empty() || !kept.tail.empty()) return false;
  std::size_t next = 0;
  for (const Field& field : fields) {
    if (field.implied || (field.text.empty() && !field.nested)) continue;
    if (next == kept.entries.size()) return false;
    const KeptEntry& entry = kept.entries[next++];
    const bool bare = entry.known && entry.before.empty() && entry.header.empty() && entry.source.empty() &&
                      entry.after.empty() && entry.extra.empty();
    if (!bare || entry.key != field.key) return false;
  }
  return next == kept.entries.size();
}

KeptEntry keepEntry(Node map, Node key, Node value, const std::vector<Field>& fields) {
  const std::string_view text = map.whole();
  KeptEntry entry;
  entry.key = key.text();
  const auto field =
      std::find_if(fields.begin(), fields.end(), [&](const Field& f) { return f.key == entry.key; });
  entry.known = field != fields.end();
  const bool nested = entry.known && field->nested;
  if (!nested) entry.source = sourceOf(map, key, value);
  if (entry.known && !nested) {
    if (entry.source == " " + field->text)
      entry.source.clear();
    else
      entry.canonical = field->text;
    if (entry.key == "footprint") entry.extra = unknownWithin(value);
  }
  if (map.isFlow()) return entry;
  if (nested && value.begin() > lineEnd(text, key.end()))
    entry.header = commentBehind(text, afterColon(key, value));
  if (!nested || value.isFlow()) entry.after = commentBehind(text, contentEnd(value));
  return entry;
}

}  // namespace

std::size_t lineBelow(std::string_view text, std::size_t byte) {
  byte = lineEnd(text, byte);
  if (byte < text.size()) byte += text.substr(byte, 2) == "\r\n" ? 2 : 1;
  return byte;
}

std::size_t lineBelow(Node node) {
  return lineBelow(node.whole(), contentEnd(node));
}

layout::Kept keep(Node map, const std::vector<Field>& fields, bool block, layout::LengthUnit unit,
                  const Standing& standing) {
  const std::string_view text = map.whole();
  KeptText kept;
  kept.flow = map.isFlow();
  kept.unit = static_cast<int>(unit);
  std::size_t above = standing.above;
  if (standing.is_item) {
    kept.before = commentLines(text, above, lineStart(text, map.begin()));
    if (kept.flow) kept.after = commentBehind(text, contentEnd(map));
  }
  bool first = standing.is_item;
  const auto items = map.items();
  for (auto i = items.begin(); i != items.end(); ++i) {
    const Node key = *i;
    ++i;
    KeptEntry entry = keepEntry(map, key, *i, fields);
    if (!kept.flow && !first) entry.before = commentLines(text, above, lineStart(text, key.begin()));
    first = false;
    if (!kept.flow) above = lineBelow(*i);
    kept.entries.push_back(std::move(entry));
  }
  if (standing.is_file) kept.tail = commentLines(text, above, lineStart(text, standing.below));
  if (isDefault(kept, fields, block)) return {};
  return {std::make_shared<const KeptText>(std::move(kept))};
}

}  // namespace stopwalk::files
