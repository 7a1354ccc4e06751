#pragma once

#include <string>
#include <string_view>

namespace stopwalk::files {

// `value` as a YAML scalar on one line: plain where it cannot be mistaken, even within brackets, else in
// double quotes.
std::string scalarText(std::string_view value);

}  // namespace stopwalk::files
