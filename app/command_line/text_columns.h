#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

// Text for a terminal or a page of fixed width. Widths count characters, not bytes.
namespace stopwalk::app {

std::size_t width(std::string_view utf8);

// Safe on one line of a terminal: line breaks become spaces, what a terminal would obey a replacement
// character.
std::string printable(std::string_view utf8);

// Lines of at most `columns` characters, broken at spaces, or within a word that is longer than that. At
// least one line.
std::vector<std::string> wrapped(std::string_view text, std::size_t columns);

std::string padded(std::string text, std::size_t columns, bool to_right = false);

}  // namespace stopwalk::app
