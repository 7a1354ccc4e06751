#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/audit/profile.h"
#include "core/files/diagnostic.h"

namespace stopwalk::files {

struct NamedText {
  std::string file;  // as messages name it
  std::string text;
};

// Finds the file that `asked` names in the file `beside`; none: there is no such file.
using FileSource =
    std::function<std::optional<NamedText>(const std::string& asked, const std::string& beside)>;

// Reads a profile. What it extends is a bundled profile, or else a file that `files` finds; a profile that
// extends itself, directly or by others, is refused. What it does not say is as in the profile it extends, or
// as the rules have it.
Result<audit::Profile> readProfile(const NamedText& source, const FileSource& files);

// The bundled profiles' names, sorted.
std::vector<std::string> bundledProfiles();
std::optional<audit::Profile> bundledProfile(std::string_view name);

}  // namespace stopwalk::files
