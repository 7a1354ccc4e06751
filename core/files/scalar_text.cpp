#include "core/files/scalar_text.h"

#include <algorithm>
#include <array>

#include "core/layout/units.h"

namespace stopwalk::files {
namespace {

bool isLetterOrDigit(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}

// What other readers of YAML, if not ours, would take for something else than a text.
bool meansSomethingElse(std::string_view value) {
  constexpr std::array kWords = {"null", "Null", "NULL", "true", "True", "TRUE", "false", "False", "FALSE",
                                 "yes",  "Yes",  "YES",  "no",   "No",   "NO",   "on",    "On",    "ON",
                                 "off",  "Off",  "OFF",  "y",    "Y",    "n",    "N"};
  return std::find(kWords.begin(), kWords.end(), value) != kWords.end() || layout::parseNumber(value).ok();
}

// Line and paragraph separators, the byte order mark and C1 controls are not left for an editor to stumble
// over.
bool isDelicate(std::string_view value) {
  for (std::size_t i = 0; i < value.size(); ++i) {
    const auto c = static_cast<unsigned char>(value[i]);
    if (c < 0x20 || c == 0x7F) return true;
    const std::string_view rest = value.substr(i, 3);
    if (c == 0xC2 && rest.size() > 1 && static_cast<unsigned char>(rest[1]) < 0xA0) return true;
    if (rest == "\xE2\x80\xA8" || rest == "\xE2\x80\xA9" || rest == "\xEF\xBB\xBF" ||
        rest == "\xEF\xBF\xBE" || rest == "\xEF\xBF\xBF")
      return true;
  }
  return false;
}

bool isPlain(std::string_view value) {
  if (value.empty() || !(isLetterOrDigit(value.front()) || static_cast<unsigned char>(value.front()) >= 0x80))
    return false;
  if (value.back() == ' ' || value.back() == ':' || isDelicate(value) || meansSomethingElse(value))
    return false;
  if (value.find_first_of(",[]{}") != std::string_view::npos) return false;
  return value.find(": ") == std::string_view::npos && value.find(" #") == std::string_view::npos;
}

std::string hex(unsigned code, int digits) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string text;
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4) text += kDigits[(code >> shift) & 0xF];
  return text;
}

// Two- and three-byte characters that `isDelicate` finds, as their escape; 0 bytes taken: leave the
// character.
std::size_t escapeWide(std::string_view rest, std::string& out) {
  const auto at = [&](std::size_t i) { return static_cast<unsigned>(static_cast<unsigned char>(rest[i])); };
  const std::size_t length = at(0) == 0xC2 ? 2 : 3;
  if (rest.size() < length || !isDelicate(rest.substr(0, length))) return 0;
  const unsigned code = length == 2 ? (at(0) & 0x1F) << 6 | (at(1) & 0x3F)
                                    : (at(0) & 0xF) << 12 | (at(1) & 0x3F) << 6 | (at(2) & 0x3F);
  out += "\\u" + hex(code, 4);
  return length;
}

}  // namespace

std::string scalarText(std::string_view value) {
  if (isPlain(value)) return std::string(value);
  std::string out = "\"";
  for (std::size_t i = 0; i < value.size(); ++i) {
    const auto c = static_cast<unsigned char>(value[i]);
    if (c == '"' || c == '\\') {
      (out += '\\') += value[i];
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else if (c < 0x20 || c == 0x7F) {
      out += "\\x" + hex(c, 2);
    } else if (c == 0xC2 || c == 0xE2 || c == 0xEF) {
      const std::size_t taken = escapeWide(value.substr(i), out);
      if (taken == 0)
        out += value[i];
      else
        i += taken - 1;
    } else {
      out += value[i];
    }
  }
  return out + "\"";
}

}  // namespace stopwalk::files
