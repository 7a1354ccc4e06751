#include "core/files/csv.h"

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

std::string cell(const std::string& raw) {
  const std::string text = printable(raw, "");
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
