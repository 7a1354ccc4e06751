#pragma once

#include "app/edits/edited_layout.h"
#include "app/edits/selection.h"
#include "app/panels/details/desk.h"
#include "app/plan/catalogue.h"

namespace stopwalk::panels {

// An invented shop of two rooms with one of each kind of thing, on a desk.
layout::Layout smallShop();

struct Workshop {
  Workshop() { edited.reset(smallShop()); }

  const layout::Layout& layout() const { return edited.layout(); }
  QString lastStep() { return edited.history().undoText(); }

  edits::EditedLayout edited;
  edits::Selection selection;
  plan::Catalogue catalogue = plan::bundledCatalogue();
  Desk desk = {edited, selection, catalogue};
};

}  // namespace stopwalk::panels
