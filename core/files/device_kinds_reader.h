#pragma once

#include <string>
#include <string_view>

#include "core/files/diagnostic.h"
#include "core/layout/device_kind.h"

namespace stopwalk::files {

// Reads a file of device kinds: `stopwalk_device_kinds: 1` and a map `device_kinds:` of key to what the kind
// does.
Result<layout::DeviceKinds> readDeviceKinds(std::string_view text, const std::string& file);

// The kinds of resources/device-kinds.yaml, as compiled in.
const layout::DeviceKinds& bundledDeviceKinds();

// `base` with the kinds of `own` replaced or added, in the order of `base`, then of `own`.
layout::DeviceKinds mergeDeviceKinds(const layout::DeviceKinds& base, const layout::DeviceKinds& own);

}  // namespace stopwalk::files
