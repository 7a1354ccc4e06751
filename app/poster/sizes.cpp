#include "app/poster/sizes.h"

#include <array>

namespace stopwalk::poster {

double readTo_m(double letter_mm) {
  struct Row {
    double distance_m, letter_mm;
  };
  static constexpr std::array<Row, 13> kTable{{{0.5, 2},
                                               {1, 4},
                                               {2, 8},
                                               {3, 10},
                                               {4, 14},
                                               {5, 17},
                                               {6, 20},
                                               {8, 27},
                                               {9, 30},
                                               {10, 34},
                                               {15, 50},
                                               {20, 67},
                                               {30, 100}}};
  double to = 0;
  for (const Row& row : kTable)
    if (letter_mm >= row.letter_mm - 1e-9) to = row.distance_m;
  return to;
}

}  // namespace stopwalk::poster
