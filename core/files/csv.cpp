#include "core/files/csv.h"

#include <cstdlib>
#include <string_view>

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

bool isNumber(const std::string& text) {
  char* end = nullptr;
  std::strtod(text.c_str(), &end);
  return end == text.c_str() + text.size();
}

// Blanks before it do not hold a spreadsheet up.
bool wouldBeComputed(const std::string& text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first != std::string::npos && first + 1 < text.size() &&
         std::string_view("=+-@").find(text[first]) != std::string_view::npos && !isNumber(text);
}

std::string cell(const std::string& raw) {
  std::string text = printable(raw, "");
  if (wouldBeComputed(text)) text.insert(0, "'");
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) quoted += c == '"' ? "\"\"" : std::string(1, c);
  return quoted + "\"";
}

}  // namespace

std::string csvRow(const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) line += (i > 0 ? "," : "") + cell(cells[i]);
  return line + "\r\n";
}

}  // namespace stopwalk::files
