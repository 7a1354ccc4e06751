#pragma once

#include "core/layout/device_kind.h"
#include "core/layout/machine_template.h"

namespace stopwalk::plan {

// What there is to put on a plan: bundled, or the shop's own.
struct Catalogue {
  layout::DeviceKinds kinds;
  layout::MachineTemplates templates;
};

// As compiled in.
Catalogue bundledCatalogue();

}  // namespace stopwalk::plan
