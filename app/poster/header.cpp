#include <algorithm>

#include "app/poster/colours.h"
#include "app/poster/furniture.h"
#include "app/poster/texts.h"

namespace stopwalk::poster {
namespace {

// A little more than the least, so that rounding never falls short.
constexpr double kOver = 1.02;

double bandHeight(QSizeF page) {
  return kOver * kHeaderPart * std::min(page.width(), page.height());
}

// The stop symbol, the words, and at the other end the room, in letters as large as there is room for.
void band(Block& block, const QString& title, const QString& room, const Lettering& letters, double width,
          double height) {
  const double top = block.height, cap = kOver * kHeaderLetterPart * height;
  const double margin = kMargin_mm, side = 0.84 * height;
  const double baseline = top + (height + cap) / 2;
  block.marks.push_back(filled(rectanglePath({0, top, width, height}), inks().stop_sign));
  block.marks.push_back(
      Sign{"mushroom-button", plan::Ground::Stop, QRectF(margin, top + (height - side) / 2, side, side)});
  const double left = margin + side + 0.3 * height;
  block.marks.push_back(Text{title, {left, baseline}, cap, true, kPaperWhite});

  const double room_left = left + letters.width(title, cap, true) + 0.5 * height;
  const double free = width - margin - room_left;
  const double fits = std::min(cap, cap * free / std::max(letters.width(room, cap), 1e-9));
  const double room_cap = std::max(fits, std::min(cap, 0.3 * height));
  const QString shown = letters.cut(room, std::max(free, 0.0), room_cap);
  const double at = width - margin - letters.width(shown, room_cap);
  block.marks.push_back(Text{shown, {at, top + (height + room_cap) / 2}, room_cap, false, kPaperWhite});
  block.height += height;
}

}  // namespace

double titleCap(QSizeF page) {
  return kOver * kHeaderLetterPart * bandHeight(page);
}

Block headerOf(const Content& content, const Languages& languages, const Lettering& letters, QSizeF page) {
  Block block;
  const QStringList titles = sayEach(languages, texts::kTitle);
  for (const QString& title : titles)
    band(block, title, title == titles.front() ? QString::fromStdString(content.room_name) : QString(),
         letters, page.width(), bandHeight(page));
  return block;
}

Block goesOnHeader(const Content& content, const Languages& languages, const Lettering& letters, double width,
                   std::size_t page, std::size_t pages) {
  Block block;
  Writer writer(block, letters);
  const QString text = languages.front().say(texts::kTitleGoesOn).arg(page).arg(pages);
  writer.gap(kMargin_mm);
  writer.paragraph(QString::fromStdString(content.room_name) + " - " + text, kMargin_mm, width - kMargin_mm,
                   5, true, inks().stop_sign);
  writer.gap(2);
  return block;
}

}  // namespace stopwalk::poster
