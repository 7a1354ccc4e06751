#pragma once

#include "app/poster/plan_picture.h"
#include "app/poster/poster.h"

namespace stopwalk::poster {

// What a finished poster does not do as it should.
std::vector<Shortfall> shortfallsOf(const Document& document, const PlanPicture& plan, const Content& content,
                                    const About& about, const Wish& wish);

// Which letters of the document no font here has, in a sentence; empty: none.
QString emptyBoxes(const Document& document);

}  // namespace stopwalk::poster
