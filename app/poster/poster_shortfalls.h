#pragma once

#include "app/poster/plan_picture.h"
#include "app/poster/poster.h"

namespace stopwalk::poster {

// What a finished poster does not do as it should.
std::vector<Shortfall> shortfallsOf(const Document& document, const PlanPicture& plan, const Content& content,
                                    const About& about, const Wish& wish);

}  // namespace stopwalk::poster
