#include "core/files/profile_writer.h"

#include "core/files/printable.h"
#include "core/files/profile_reader.h"

namespace stopwalk::files {

std::string writeProfile(audit::Profile profile) {
  if (!bundledProfile(profile.extends)) profile.extends.clear();  // its file may not be beside this one
  return printable(audit::profileText(profile), "\n");
}

}  // namespace stopwalk::files
