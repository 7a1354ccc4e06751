#pragma once

#include <string>
#include <vector>

namespace stopwalk::files {

// A row by RFC 4180: commas, CR LF, quotes doubled. What a terminal would obey becomes a replacement
// character, and so does a line break. A text that a spreadsheet would compute (it begins with = + - or @,
// and is no number) has an apostrophe put before it.
std::string csvRow(const std::vector<std::string>& cells);

}  // namespace stopwalk::files
