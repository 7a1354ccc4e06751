#pragma once

#include <string>

#include "core/audit/profile.h"

namespace stopwalk::files {

// The profile as a profile file that says everything, and can be read wherever it is put: safe to show on a
// terminal, and extending none but a bundled one.
std::string writeProfile(audit::Profile profile);

}  // namespace stopwalk::files
