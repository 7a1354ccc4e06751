#pragma once

#include <QString>
#include <QStringList>

#include "core/audit/profile.h"
#include "core/layout/layout.h"

namespace stopwalk::window {

struct ProfileFor {
  audit::Profile profile;
  QString trouble;    // why it is not the one that the layout names, and what it is; empty: it is
  QString why;        // the first of it alone
  QStringList files;  // that were read for it, or looked for
};

// The profile that a layout names: a bundled one, or a file beside its own. Where that cannot be read, the
// default.
ProfileFor profileFor(const layout::Layout& layout, const QString& path);

}  // namespace stopwalk::window
