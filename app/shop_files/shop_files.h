#pragma once

#include <string>
#include <vector>

#include "core/files/diagnostic.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"
#include "core/layout/machine_template.h"

namespace stopwalk::app {

// The kinds of device and the machine templates that a layout is read with: the bundled ones, with those of
// the shop's own files merged over them.
struct ShopFiles {
  layout::DeviceKinds kinds;
  layout::MachineTemplates templates;
  std::vector<std::string> merged;             // the files that were
  std::vector<files::Diagnostic> diagnostics;  // of those files
  std::string unreadable;                      // a file that could not be read, and why
  bool good = true;                            // no error, and nothing unreadable
};

// The names of the shop's own files, as they stand beside a layout.
inline constexpr const char* kKindsFile = "device-kinds.yaml";
inline constexpr const char* kTemplatesFile = "machine-templates.yaml";

// The file of this name beside the layout; empty if there is none. A link that leads nowhere is there, and
// cannot be read.
std::string fileBesideLayout(const std::string& layout_file, const char* name);

// The files that a layout in `folder` is made with, there or not: the shop's own, the picture under the plan,
// the profile. Nothing that is exported may take the place of one.
std::vector<std::string> madeWith(const layout::Layout& layout, const std::string& folder);

// Looks for `device-kinds.yaml` and `machine-templates.yaml` beside `layout_file`; beside nothing if that is
// empty or `-`, standard input. `kinds_file`, unless empty, takes the place of the `device-kinds.yaml` there.
ShopFiles readShopFiles(const std::string& layout_file, const std::string& kinds_file = "");

}  // namespace stopwalk::app
