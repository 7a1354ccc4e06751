#pragma once

#include "app/poster/poster_parts.h"

namespace stopwalk::poster {

// One way to put a poster together, but for the signs on its plan.
struct Choice {
  Arrangement arrangement;
  int scale = 0;
  std::vector<std::vector<std::size_t>> taken;  // for each page, the blocks of the table in each column
  double cost = 0;
};

struct Choices {
  std::vector<Choice> by_cost;  // none: the room or the table is too large for the paper
  bool room_fits = false;
};

// Every arrangement into which the room and all of the table go.
Choices choicesOf(const Content& content, const layout::Layout& layout, const Wish& wish, PosterParts& parts);

}  // namespace stopwalk::poster
