#include "app/poster/arrangement.h"

#include <algorithm>

namespace stopwalk::poster {
namespace {

constexpr double kGap_mm = 6;
constexpr double kScaleBar_mm = 6;
constexpr double kNarrowest_mm = 80;  // a column of the table

// From a column's top left corner on, side by side.
std::vector<QRectF> columnsFrom(QPointF corner, int count, double width, double height) {
  std::vector<QRectF> columns;
  for (int k = 0; k < count; ++k)
    columns.emplace_back(corner + QPointF(k * (width + kGap_mm), 0), QSizeF(width, height));
  return columns;
}

void addBeside(std::vector<Arrangement>& all, const Arrangement& start, const QRectF& body) {
  for (const int count : {1, 2})
    for (const double part : {0.22, 0.27, 0.32, 0.38, 0.44}) {
      const double width = part * body.width() * (count == 1 ? 1.0 : 0.75);
      const double taken = count * (width + kGap_mm);
      if (width < kNarrowest_mm || body.width() - taken < body.width() / 4) continue;
      Arrangement a = start;
      a.plan = body.adjusted(0, 0, -taken, -kScaleBar_mm);
      a.column_width = width;
      a.columns = columnsFrom({body.right() - taken + kGap_mm, body.top()}, count, width, body.height());
      all.push_back(a);
    }
}

void addBelow(std::vector<Arrangement>& all, const Arrangement& start, const QRectF& body) {
  for (const int count : {1, 2, 3, 4})
    for (const double part : {0.3, 0.4, 0.5, 0.6}) {
      const double width = (body.width() - (count - 1) * kGap_mm) / count, height = part * body.height();
      if (width < kNarrowest_mm) continue;
      Arrangement a = start;
      a.plan = body.adjusted(0, 0, 0, -height - kScaleBar_mm);
      a.column_width = width;
      a.columns = columnsFrom({body.left(), body.bottom() - height}, count, width, height);
      all.push_back(a);
    }
}

// What is comfortable on a sheet of this size; where that does not fit, down to the least.
Sizes comfortable(QSizeF page) {
  const double side = std::min(page.width(), page.height());
  Sizes sizes;
  sizes.sign = side < 250 ? 8 : side < 350 ? 10 : 13;
  sizes.name_cap = side < 250 ? 2.3 : side < 350 ? 3 : 4;
  return sizes;
}

}  // namespace

std::vector<Arrangement> arrangementsOf(QSizeF page, const QRectF& body) {
  std::vector<Arrangement> all;
  Arrangement start;
  start.page = page;
  start.sizes = comfortable(page);
  const double usual = start.sizes.sign;
  for (const double sign : {usual, kLeastSign_mm * 1.02})
    for (const double cap : {8.0, 6.0, 5.0, kLeastTableLetter_mm * 1.02}) {
      start.sizes.sign = sign;
      start.sizes.table_cap = cap;
      addBeside(all, start, body);
      addBelow(all, start, body);
    }
  return all;
}

}  // namespace stopwalk::poster
