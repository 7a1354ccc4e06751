#pragma once

#include <string>
#include <string_view>

namespace stopwalk::files {

// Safe to show on a terminal: control characters, the marks that turn or split what is shown (such as
// U+202E), and bytes that are no UTF-8 become a replacement character each, except the characters of `kept`.
std::string printable(std::string_view text, std::string_view kept = "\t");

// The text of a JSON document with the same characters escaped, `\u202e`. They can stand in its strings
// alone.
std::string printableJson(std::string_view json);

}  // namespace stopwalk::files
