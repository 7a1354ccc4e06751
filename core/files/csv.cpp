#include "core/files/csv.h"

#include <charconv>
#include <string_view>

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

constexpr std::size_t kNone = std::string_view::npos;

// Whether a sign and digits are all there is. Independent of the locale.
bool isSignedNumber(std::string_view text) {
  const std::string_view digits = text.substr(1);
  if (std::string_view("+-").find(text[0]) == kNone || digits.find_first_not_of("0123456789.eE+-") != kNone ||
      digits[0] == '-')
    return false;
  double value = 0;
  return std::from_chars(digits.data(), digits.data() + digits.size(), value).ptr ==
         digits.data() + digits.size();
}

// Blanks before it do not hold a spreadsheet up.
bool wouldBeComputed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  return first != kNone && first + 1 < text.size() && std::string_view("=+-@").find(text[first]) != kNone &&
         !isSignedNumber(text.substr(first));
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
