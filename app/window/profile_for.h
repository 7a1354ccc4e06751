#pragma once

#include <QString>

#include "core/audit/profile.h"
#include "core/layout/layout.h"

namespace stopwalk::window {

struct ProfileFor {
  audit::Profile profile;
  QString trouble;  // why it is not the one that the layout names; empty: it is
};

// The profile that a layout names: a bundled one, or a file beside its own. Where that cannot be read, the
// default.
ProfileFor profileFor(const layout::Layout& layout, const QString& path);

}  // namespace stopwalk::window
