#pragma once

#include <QRectF>
#include <vector>

#include "app/poster/sizes.h"

namespace stopwalk::poster {

// Where the parts of the first page lie, before anything is drawn.
struct Arrangement {
  QSizeF page;
  Sizes sizes;
  QRectF plan;                  // with the ring for signs, without the scale bar
  std::vector<QRectF> columns;  // of the table, in order
  double column_width = 0;
};

// Every arrangement that is tried on a page whose body, between header and foot, is this: the table beside
// the plan or below it, in one to three columns, in several widths and sizes of letters.
std::vector<Arrangement> arrangementsOf(QSizeF page, const QRectF& body);

}  // namespace stopwalk::poster
