#pragma once

#include <string>
#include <string_view>

#include "core/files/diagnostic.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::files {

// Reads a whole layout file. Every problem is reported, in the order of the text; with any error there is no
// value. Cost is in proportion to the text, whatever it holds. `file` is only used to name it.
Result<layout::Layout> readLayout(std::string_view text, const std::string& file,
                                  const layout::DeviceKinds& kinds);

}  // namespace stopwalk::files
