#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/poster/content.h"
#include "app/poster/furniture.h"
#include "app/poster/page.h"
#include "app/poster/paper.h"
#include "app/poster/shortfall.h"
#include "app/poster/words.h"

namespace stopwalk::poster {

struct Wish {
  Paper paper = *paperOf("a3");
  std::optional<bool> landscape;  // nothing: whichever shows the room larger
  Languages languages{Language("en")};
  QString family;  // of the letters; must be there
};

struct Poster {
  std::optional<Document> document;
  std::vector<Shortfall> shortfalls;
  int scale = 0;
};

// One room's poster: the best of many arrangements, chosen by rule. The same input gives the same poster.
Poster makePoster(const Content& content, const About& about, const Wish& wish);

}  // namespace stopwalk::poster
