#pragma once

#include "core/layout/layout.h"

namespace stopwalk::files {

// Whether the layout, written, is read again without an error: ids that are well formed, given once and
// there where they are mentioned, lengths within 10 km, sizes above 0, outlines of three corners. The kinds
// of devices, and what they ask for, are not looked at.
bool isReadable(const layout::Layout& layout);

}  // namespace stopwalk::files
