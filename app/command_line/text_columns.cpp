#include "app/command_line/text_columns.h"

#include <algorithm>

#include "core/files/printable.h"

namespace stopwalk::app {
namespace {

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

// Bytes of the first `characters` characters.
std::size_t bytesOf(std::string_view text, std::size_t characters) {
  std::size_t i = 0;
  for (; i < text.size() && characters > 0; --characters) {
    do ++i;
    while (i < text.size() && continues(text[i]));
  }
  return i;
}

// Where a word too long for its line is cut: after a slash or hyphen, as ids have them, if there is one.
std::size_t cutOf(std::string_view word, std::size_t columns) {
  const std::size_t most = bytesOf(word, columns);
  const std::size_t mark = word.substr(0, most).find_last_of("/-");
  return mark == std::string_view::npos ? most : mark + 1;
}

bool isUnit(std::string_view word) {
  while (!word.empty() && std::string_view(".,;:)").find(word.back()) != std::string_view::npos)
    word.remove_suffix(1);
  return word == "m" || word == "s" || word == "%";
}

// Where the next word ends, if it is the unit of a number that ends at `space`; else 0.
std::size_t unitAfter(std::string_view text, std::size_t space) {
  if (space == std::string_view::npos || space == 0 || text[space - 1] < '0' || text[space - 1] > '9')
    return 0;
  const std::size_t end = std::min(text.find(' ', space + 1), text.size());
  return isUnit(text.substr(space + 1, end - space - 1)) ? end : 0;
}

}  // namespace

std::size_t width(std::string_view utf8) {
  return static_cast<std::size_t>(std::ranges::count_if(utf8, [](char c) { return !continues(c); }));
}

std::string printable(std::string_view utf8) {
  std::string line(utf8);
  std::ranges::replace_if(
      line, [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
  return files::printable(line, "");
}

std::vector<std::string> wrapped(std::string_view text, std::size_t columns) {
  std::vector<std::string> lines;
  std::string line;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    std::string_view word = text.substr(0, space);
    if (const std::size_t with_unit = unitAfter(text, space); with_unit > 0) word = text.substr(0, with_unit);
    text = word.size() == text.size() ? std::string_view() : text.substr(word.size() + 1);
    if (!line.empty() && width(line) + 1 + width(word) > columns)
      lines.push_back(std::move(line)), line.clear();
    while (line.empty() && width(word) > columns) {
      const std::size_t cut = cutOf(word, columns);
      lines.emplace_back(word.substr(0, cut));
      word = word.substr(cut);
    }
    if (!line.empty()) line += ' ';
    line += word;
  }
  if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
  return lines;
}

std::string padded(std::string text, std::size_t columns, bool to_right) {
  const std::size_t w = width(text);
  if (w >= columns) return text;
  return to_right ? std::string(columns - w, ' ') + text : text + std::string(columns - w, ' ');
}

}  // namespace stopwalk::app
