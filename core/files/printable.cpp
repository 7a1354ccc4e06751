#include "core/files/printable.h"

#include <utf8proc.h>

#include <algorithm>
#include <cstdint>
#include <cstdio>

namespace stopwalk::files {
namespace {

struct Character {
  std::size_t length = 1;
  char32_t code = 0;
  bool well_formed = false;
};

Character characterAt(std::string_view text, std::size_t byte) {
  const std::string_view rest = text.substr(byte);
  utf8proc_int32_t code = 0;
  const auto length = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(rest.data()),
                                       static_cast<utf8proc_ssize_t>(rest.size()), &code);
  if (length <= 0) return {};
  return {static_cast<std::size_t>(length), static_cast<char32_t>(code), true};
}

bool isHidden(char32_t c) {
  const bool control = c < 0x20 || (c >= 0x7F && c < 0xA0);
  const bool turns = c == 0x61C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
                     (c >= 0x2066 && c <= 0x2069);
  const bool splits = c == 0x2028 || c == 0x2029;
  return control || turns || splits;
}

// `shown` gives what stands for a character that is not to be shown as it is.
template <class Shown>
std::string with(std::string_view text, std::string_view kept, Shown shown) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t i = 0; i < text.size();) {
    const Character c = characterAt(text, i);
    const bool keep = kept.find(text[i]) != std::string_view::npos;
    if (keep || (c.well_formed && !isHidden(c.code)))
      out += text.substr(i, c.length);
    else
      out += shown(c);
    i += c.length;
  }
  return out;
}

}  // namespace

std::string printable(std::string_view text, std::string_view kept) {
  return with(text, kept, [](const Character&) { return "\uFFFD"; });
}

std::string printableJson(std::string_view json) {
  return with(json, "\n", [](const Character& c) {
    char escape[8];
    std::snprintf(escape, sizeof escape, "\\u%04x", static_cast<unsigned>(c.well_formed ? c.code : 0xFFFD));
    return std::string(escape);
  });
}

}  // namespace stopwalk::files
