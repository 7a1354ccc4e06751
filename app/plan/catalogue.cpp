#include "app/plan/catalogue.h"

#include "core/files/device_kinds_reader.h"
#include "core/files/machine_templates_reader.h"

namespace stopwalk::plan {

Catalogue bundledCatalogue() {
  return {files::bundledDeviceKinds(), files::bundledMachineTemplates()};
}

}  // namespace stopwalk::plan
