#pragma once

#include <cstddef>

#include "app/poster/shop.h"

namespace stopwalk::poster {

// One upright page for a novice at a machine: how it stops in a picture and a sentence, where the next stop
// and the phone are, seen from where its operator works. On A4, or Letter where that is wished for.
struct Sheet {
  std::optional<Page> page;
  QString why_not;                  // of there being no page: a sentence
  std::vector<QString> shortfalls;  // of a page that there is
};
Sheet noviceSheet(const Shop& shop, std::size_t machine, const Wish& wish);

}  // namespace stopwalk::poster
