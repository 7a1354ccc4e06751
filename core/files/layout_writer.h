#pragma once

#include <string>

#include "core/layout/layout.h"

namespace stopwalk::files {

// The layout as a file's text, ending with the end marker. Reading it gives an equal layout.
std::string writeLayout(const layout::Layout& layout);

}  // namespace stopwalk::files
