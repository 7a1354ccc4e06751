#pragma once

namespace stopwalk::files {

// The program's version, as reports carry it.
inline constexpr const char* kVersion = STOPWALK_VERSION;

}  // namespace stopwalk::files
