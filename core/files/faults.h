#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/files/diagnostic.h"
#include "core/floor/plan.h"

namespace stopwalk::files {

// The drawing faults of a layout as diagnostics, at the places in its text of the things they are about, in
// the order of the text.
std::vector<Diagnostic> faultsAt(std::string_view text, const std::string& file,
                                 const std::vector<floor::Fault>& faults);

// An error about what a layout that was read says at a key of its own, such as `profile`.
std::vector<Diagnostic> errorAtKey(std::string_view text, const std::string& file, std::string_view key,
                                   std::string what);

}  // namespace stopwalk::files
