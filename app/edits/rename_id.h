#pragma once

#include <QString>
#include <string>

#include "app/edits/edit.h"

namespace stopwalk::edits {

// Why the thing `id` cannot be given `new_id`, a sentence; empty if it can. Of what is on a machine both are
// meant: `id` as seen from outside (`lathe-1/bar`), `new_id` on the machine (`foot-bar`).
QString whyNotRename(const layout::Layout& layout, const std::string& id, const std::string& new_id);
// Gives a thing another id; whatever speaks of it follows. Changes nothing where it cannot be.
Edit renameId(const layout::Layout& layout, const std::string& id, const std::string& new_id);

}  // namespace stopwalk::edits
