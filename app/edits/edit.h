#pragma once

#include <QString>

#include "core/layout/layout.h"

namespace stopwalk::edits {

// One change of a layout, as a value: made by the verbs of this folder from the layout before it, carried out
// and undone by EditedLayout. Nothing else changes a layout.
struct Edit {
  QString name;  // of the undo step: "Move Engine lathe 1"
  layout::Layout after;
  // Steps with the same key, not empty, that follow one another without a pause become one: the key names the
  // field and the thing, such as `height of lathe-1`.
  QString merge_key = {};
  // Why it cannot be, as a sentence; then it changes nothing.
  QString refused = {};
};

}  // namespace stopwalk::edits
