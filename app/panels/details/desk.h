#pragma once

#include "app/edits/edited_layout.h"
#include "app/edits/selection.h"
#include "app/plan/catalogue.h"

namespace stopwalk::panels {

// What the panels work on. All of it outlives them.
struct Desk {
  edits::EditedLayout& edited;
  edits::Selection& selection;
  const plan::Catalogue& catalogue;
};

}  // namespace stopwalk::panels
