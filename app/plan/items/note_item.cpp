#include "app/plan/items/note_item.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/plan/items/drawing.h"
#include "app/plan/text.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 80;
constexpr double kLeast = 0.012;  // pixels a millimetre, under which the text is not shown
constexpr double kWidest_px = 150;

}  // namespace

NoteItem::NoteItem(const layout::Layout& layout, std::size_t note)
    : Item({edits::ThingKind::Note, note}, layout.notes[note].id, Layer::Note),
      at_(layout.notes[note].at),
      points_to_(layout.notes[note].points_to),
      text_(
          wrapped(QString::fromStdString(layout.notes[note].text), kWidest_px, QFontMetricsF(labelFont()))) {}

geometry::Box NoteItem::bounds() const {
  geometry::Box box = geometry::boxOf(at_);
  if (points_to_) box.add(*points_to_);
  return box;
}

std::optional<double> NoteItem::distanceTo(geometry::Point at, double mm_per_pixel) const {
  const double mark = distanceToMark(at, at_, kTarget_px, mm_per_pixel);
  return points_to_ ? std::min(mark, geometry::distance(geometry::Segment{at_, *points_to_}, at)) : mark;
}

void NoteItem::paint(QPainter& painter, const PaintContext& context) const {
  const QPointF at = context.view.toPixels(at_);
  const bool marked = context.selected || context.hovered;
  const QColor colour = marked ? context.theme.selection : context.theme.quiet_ink;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(pen(colour, context.selected ? 2.5 : 1.2));
  if (points_to_) {
    const QPointF tip = context.view.toPixels(*points_to_);
    painter.drawLine(at, tip);
    const double length = QLineF(at, tip).length();
    if (length > 1) {
      const QPointF d = (tip - at) / length, across(-d.y(), d.x());
      const QPointF head[] = {tip, tip - 8.0 * d + 3.0 * across, tip - 8.0 * d - 3.0 * across};
      painter.setBrush(colour);
      painter.drawPolygon(head, 3);
    }
  }
  painter.setBrush(context.theme.label_ground);
  painter.drawEllipse(at, 3, 3);
}

std::optional<Label> NoteItem::label(const PaintContext& context) const {
  if (context.view.pixelsPerMm() < kLeast) return std::nullopt;
  const QPointF at = context.view.toPixels(at_);
  const QSizeF size = textSize(text_, QFontMetricsF(labelFont()));
  const double dx = size.width() / 2 + 6, dy = size.height() / 2 + 6;
  return Label{
      text_,       {at, at + QPointF(dx, 0), at - QPointF(dx, 0), at - QPointF(0, dy), at + QPointF(0, dy)},
      kImportance, {},
      false,       Layer::Station};
}

}  // namespace stopwalk::plan
