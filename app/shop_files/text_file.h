#pragma once

#include <istream>
#include <optional>
#include <string>

namespace stopwalk::app {

// The bytes of a file; none if it cannot be read or is a folder. No more than tells the reader of a layout
// that it is too long.
std::optional<std::string> textOfFile(const std::string& file);
std::optional<std::string> textOfStream(std::istream& in);

// Why a file could not be read, from `errno` and what it is.
std::string whyUnreadable(const std::string& file);

}  // namespace stopwalk::app
