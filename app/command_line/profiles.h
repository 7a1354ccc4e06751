#pragma once

#include <map>
#include <optional>
#include <string>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "core/audit/profile.h"

namespace stopwalk::app {

struct ChosenProfile {
  std::optional<audit::Profile> profile;
  Exit exit = Exit::Done;  // why there is none
};

// A bundled profile or a file, as a person names it; tells the person if there is none.
ChosenProfile chooseProfile(const std::string& name, Session& session);

// The profiles of the layouts of one run. Each file is read, and told of, once.
class Profiles {
 public:
  explicit Profiles(Session& session) : session_(session) {}
  // What the layout names: a bundled profile, or a file beside it or below; the default if it names none.
  const ChosenProfile& of(const Input& layout);

 private:
  struct Found {
    ChosenProfile chosen;
    bool there = false;
  };
  Found find(const Input& layout) const;

  Session& session_;
  std::map<std::string, Found> found_;
};

}  // namespace stopwalk::app
