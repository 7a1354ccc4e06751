#pragma once

#include <QString>
#include <vector>

#include "app/plan/catalogue.h"
#include "app/plan/choice.h"
#include "app/plan/symbols.h"

namespace stopwalk::panels {

// One thing of the gallery.
struct Offer {
  plan::Choice choice;
  QString text;
  QString what;        // a sentence for the hint and the screen reader
  std::string symbol;  // see plan/symbols.h
  plan::Ground ground = plan::Ground::None;
};

struct OfferGroup {
  QString text;
  std::vector<Offer> offers;
};

// What there is to draw, in the order of the work.
std::vector<OfferGroup> offersOf(const plan::Catalogue& catalogue);

}  // namespace stopwalk::panels
