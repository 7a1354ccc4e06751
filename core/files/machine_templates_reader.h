#pragma once

#include <string>
#include <string_view>

#include "core/files/diagnostic.h"
#include "core/layout/device_kind.h"
#include "core/layout/machine_template.h"

namespace stopwalk::files {

// Reads a file of machine templates: `stopwalk_machine_templates: 1`, `units`, and a map `machine_templates:`
// of key to `label` and the keys that a machine has in a layout, but for its place.
Result<layout::MachineTemplates> readMachineTemplates(std::string_view text, const std::string& file,
                                                      const layout::DeviceKinds& kinds);

// The templates of resources/machine-templates.yaml, as compiled in.
const layout::MachineTemplates& bundledMachineTemplates();

// `base` with the templates of `own` replaced or added, in the order of `base`, then of `own`.
layout::MachineTemplates mergeMachineTemplates(const layout::MachineTemplates& base,
                                               const layout::MachineTemplates& own);

}  // namespace stopwalk::files
