#pragma once

#include <QString>
#include <optional>
#include <string>

#include "app/plan/symbols.h"
#include "app/poster/block.h"
#include "app/poster/words.h"

// The pieces that the paper sheet of a round is made of.
namespace stopwalk::poster {

// One device of a round in words.
struct SheetDevice {
  int number = 0;  // in the walk
  QString name;
  QString where, stops, how;  // to test it; empty: nothing is to be said
  QString no_way;             // leads there on the plan; empty: one does
  QString failed;             // on which day; empty: it is not failed
  std::string symbol;         // empty: it is no longer on the plan
  plan::Ground ground = plan::Ground::Stop;
  bool is_stop = true;  // false: it is only looked at, and nothing is timed
};

struct SheetBlock {
  Block block;
  bool cut = false;  // words too long for the sheet are cut
};

// Never higher than an upright page.
SheetBlock deviceBlock(const SheetDevice& device, const Language& language, const Lettering& letters,
                       double width);

// A line to write on, with its words before it.
void lineToFill(Block& block, const QString& words, double left, double right, double baseline,
                const Lettering& letters);

}  // namespace stopwalk::poster
