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

// The room's name at the other end: as large as the title, else in two lines, else smaller, at last cut.
struct RoomName {
  QStringList lines;
  double cap = 0;
};

RoomName roomName(const QString& room, const Lettering& letters, double free, double height) {
  const double cap = kOver * kHeaderLetterPart * height;
  if (letters.width(room, cap) <= free) return {{room}, cap};
  for (double smaller = cap * 0.9; smaller > 0.4 * height; smaller *= 0.92)
    if (letters.width(room, smaller) <= free) return {{room}, smaller};
  for (double smaller = 0.3 * height; smaller > 2 * kLeastLetter_mm / 1.5; smaller *= 0.92)
    if (const QStringList lines = letters.wrapped(room, free, smaller); lines.size() <= 2)
      return {lines, smaller};
  return {{letters.cut(room, free, kLeastLetter_mm * 2)}, kLeastLetter_mm * 2};
}

double roomLeft(const QString& title, const Lettering& letters, double height) {
  return kMargin_mm + 1.64 * height + letters.width(title, kOver * kHeaderLetterPart * height, true);
}

RoomName roomNameOn(const Content& content, const Languages& languages, const Lettering& letters,
                    QSizeF page) {
  const double height = bandHeight(page);
  const double left = roomLeft(languages.front().say(texts::kTitle), letters, height);
  return roomName(QString::fromStdString(content.room_name), letters,
                  std::max(1.0, page.width() - kMargin_mm - left), height);
}

// The stop symbol and the words, and what stands at the other end.
void band(Block& block, const QString& title, const RoomName& room, const Lettering& letters, double width,
          double height) {
  const double top = block.height, cap = kOver * kHeaderLetterPart * height, side = 0.84 * height;
  block.marks.push_back(filled(rectanglePath({0, top, width, height}), inks().stop_sign));
  block.marks.push_back(
      Sign{"mushroom-button", plan::Ground::Stop, QRectF(kMargin_mm, top + (height - side) / 2, side, side)});
  block.marks.push_back(
      Text{title, {kMargin_mm + side + 0.3 * height, top + (height + cap) / 2}, cap, true, kPaperWhite});
  const double line = 1.5 * room.cap;
  double baseline =
      top +
      (height + room.cap - line * static_cast<double>(std::max<qsizetype>(room.lines.size() - 1, 0))) / 2;
  for (const QString& words : room.lines) {
    const double at = width - kMargin_mm - letters.width(words, room.cap);
    block.marks.push_back(Text{words, {at, baseline}, room.cap, false, kPaperWhite});
    baseline += line;
  }
  block.height += height;
}

}  // namespace

double titleCap(QSizeF page) {
  return kOver * kHeaderLetterPart * bandHeight(page);
}

double roomCap(const Content& content, const Languages& languages, const Lettering& letters, QSizeF page) {
  return roomNameOn(content, languages, letters, page).cap;
}

Block headerOf(const Content& content, const Languages& languages, const Lettering& letters, QSizeF page) {
  Block block;
  RoomName room = roomNameOn(content, languages, letters, page);
  for (const QString& title : sayEach(languages, texts::kTitle)) {
    band(block, title, room, letters, page.width(), bandHeight(page));
    room.lines.clear();
  }
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
