#include "app/poster/poster_parts.h"

#include <algorithm>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/table.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

constexpr double kGap_mm = 4;
constexpr double kBetweenColumns_mm = 6;

double innerWidth(QSizeF page) {
  return page.width() - 2 * kMargin_mm;
}

}  // namespace

Block PosterParts::headerAgain(QSizeF page, std::size_t number, std::size_t pages) const {
  return goesOnHeader(content_, wish_.languages, letters_, page.width(), number, pages);
}

const Block& PosterParts::foot(QSizeF page, const Sizes& sizes) {
  Block& foot = feet_[{page.width(), sizes.table_cap, sizes.sign}];
  if (foot.marks.empty()) foot = footNew(page, sizes);
  return foot;
}

Block PosterParts::footNew(QSizeF page, const Sizes& sizes) const {
  const QString said =
      sizesText(texts::kSizes, titleCap(page), sizes.table_cap, sizes.sign, wish_.languages.front());
  return footOf(content_, about_, wish_.languages, letters_, innerWidth(page), said);
}

const std::vector<Block>& PosterParts::table(const Arrangement& a) {
  auto& table = tables_[{std::lround(a.column_width * 100), std::lround(a.sizes.table_cap * 100)}];
  if (table.empty()) table = tableBlocks(content_, wish_.languages, letters_, a.column_width, a.sizes);
  return table;
}

Block PosterParts::box(const Arrangement& a) const {
  return emergencyBox(content_, about_, wish_.languages, letters_, a.column_width, a.sizes.table_cap);
}

Block PosterParts::goesOn(const Arrangement& a, std::size_t number, std::size_t pages) const {
  Block block;
  Writer writer(block, letters_);
  for (const QString& text : sayEach(wish_.languages, texts::kGoesOn))
    writer.paragraph(text.arg(number).arg(pages), 0, a.column_width, a.sizes.table_cap, true,
                     inks().stop_sign);
  return block;
}

QRectF PosterParts::body(QSizeF page) {
  const double head = header(page).height, below = foot(page, Sizes{}).height;
  return QRectF(kMargin_mm, head + kGap_mm, innerWidth(page),
                page.height() - head - below - 2 * kGap_mm - kMargin_mm);
}

std::vector<QRectF> PosterParts::furtherColumns(const Arrangement& a) {
  const double top = headerAgain(a.page, 2, 2).height;
  const double height = a.page.height() - top - foot(a.page, a.sizes).height - kGap_mm - kMargin_mm;
  const double step = a.column_width + kBetweenColumns_mm;
  const int count = std::max(1, static_cast<int>((innerWidth(a.page) + kBetweenColumns_mm) / step));
  std::vector<QRectF> columns;
  for (int k = 0; k < count; ++k) columns.emplace_back(kMargin_mm + k * step, top, a.column_width, height);
  return columns;
}

}  // namespace stopwalk::poster
