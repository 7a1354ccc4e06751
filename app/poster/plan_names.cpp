#include "app/poster/plan_names.h"

#include <algorithm>

#include "app/poster/call_out_rules.h"
#include "app/poster/colours.h"
#include "app/poster/sizes.h"

namespace stopwalk::poster {
namespace {

constexpr double kBeside_mm = 0.8;

// The narrowest width that breaks the name into no more lines than this, at spaces only.
NameBlock inLines(const QString& name, int lines, double cap, const Lettering& letters) {
  const QStringList words = name.split(' ', Qt::SkipEmptyParts);
  double longest = 0;
  for (const QString& word : words) longest = std::max(longest, letters.width(word, cap));
  double width = longest, whole = letters.width(name, cap);
  while (width < whole && letters.wrapped(name, width + 0.01, cap).size() > lines) width += cap / 2;
  return nameBlock(name, width + 0.01, cap, letters, false, inks().ink);
}

std::vector<QPointF> besides(const QRectF& footprint, QSizeF size) {
  const double dx = (footprint.width() + size.width()) / 2 + kBeside_mm;
  const double dy = (footprint.height() + size.height()) / 2 + kBeside_mm;
  const QPointF c = footprint.center();
  std::vector<QPointF> places{
      {c.x(), c.y() - dy}, {c.x(), c.y() + dy}, {c.x() + dx, c.y()}, {c.x() - dx, c.y()}};
  for (const double part : {-0.5, 0.5}) {
    places.emplace_back(c.x() + part * footprint.width(), c.y() - dy);
    places.emplace_back(c.x() + part * footprint.width(), c.y() + dy);
    places.emplace_back(c.x() + dx, c.y() + part * footprint.height());
    places.emplace_back(c.x() - dx, c.y() + part * footprint.height());
  }
  return places;
}

}  // namespace

bool Taken::free(const QRectF& box) const {
  return std::ranges::none_of(boxes_, [&](const QRectF& b) { return overlap(box, b, 0.7); }) &&
         std::ranges::none_of(lines_,
                              [&](const QLineF& l) { return meets(l, box.adjusted(-0.3, -0.3, 0.3, 0.3)); });
}

NameBlock nameBlock(const QString& name, double most_width, double cap, const Lettering& letters, bool bold,
                    QColor colour) {
  NameBlock block;
  const double line = 1.5 * cap;
  for (const QString& words : letters.wrapped(name, most_width, cap, bold)) {
    const double width = letters.width(words, cap, bold);
    const double y = static_cast<double>(block.lines.size()) * line;
    block.lines.push_back({words, {-width / 2, y + (line + cap) / 2}, cap, bold, colour});
    block.box = block.box.united(QRectF(-width / 2, y, width, line));
  }
  return block;
}

void moveCentre(NameBlock& block, QPointF to) {
  const QPointF by = to - block.box.center();
  block.box.translate(by);
  for (Text& line : block.lines) line.at += by;
}

std::optional<NameBlock> placeName(const QString& name, const QRectF& footprint, const QRectF& within,
                                   double cap, const Lettering& letters, const Taken& taken,
                                   const std::vector<QRectF>& others) {
  std::vector<NameBlock> forms;
  for (const double height : {cap, (cap + kLeastLetter_mm) / 2, kLeastLetter_mm * 1.02})
    for (const int lines : {1, 2, 3}) forms.push_back(inLines(name, lines, height, letters));

  for (NameBlock& form : forms) {
    const QSizeF room(footprint.width() - 0.8 - form.box.width(),
                      footprint.height() - 0.4 - form.box.height());
    if (room.width() < 0 || room.height() < 0) continue;
    // In the middle, else wherever in the footprint it is free.
    for (const double v : {0.0, -0.5, 0.5, -0.25, 0.25})
      for (const double u : {0.0, -0.5, 0.5, -0.25, 0.25}) {
        moveCentre(form, footprint.center() + QPointF(u * room.width(), v * room.height()));
        if (taken.free(form.box)) return form;
      }
  }
  const auto clear = [&](const QRectF& box) {
    return within.contains(box) && taken.free(box) &&
           std::ranges::none_of(others, [&](const QRectF& o) { return overlap(box, o, 0.2); });
  };
  for (NameBlock& form : forms)
    for (const QPointF place : besides(footprint, form.box.size())) {
      moveCentre(form, place);
      if (clear(form.box)) return form;
    }
  return std::nullopt;
}

}  // namespace stopwalk::poster
