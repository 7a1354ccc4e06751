#pragma once

#include "app/poster/shop.h"

namespace stopwalk::poster {

// What the sheet of one machine has to tell, as the audit has it, seen from where its operator works.
struct SheetFacts {
  Content content;                     // of its room; the viewer stands at the station
  Group own;                           // what stops it and is on it
  std::vector<Listed> for_others;      // on it, and does not stop it
  std::vector<Listed> out_of_order;    // on it
  std::vector<Listed> not_stops;       // on it
  std::optional<std::size_t> station;  // the operator's, else the machine's first
  audit::Way next, next_late;          // to a stop on no part of it, in opening hours and after them
  std::optional<Listed> next_here;     // where it is in the same room
};
SheetFacts sheetFacts(const Shop& shop, std::size_t machine, std::size_t room);

}  // namespace stopwalk::poster
