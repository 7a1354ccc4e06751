#pragma once

#include <string>
#include <string_view>

namespace stopwalk::files {

// The SHA-256 of the bytes, in lower-case hexadecimal.
std::string sha256(std::string_view bytes);

}  // namespace stopwalk::files
