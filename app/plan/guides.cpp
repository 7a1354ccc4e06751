#include "app/plan/guides.h"

#include <algorithm>

#include "app/plan/rulers.h"
#include "core/layout/units.h"

namespace stopwalk::plan {
namespace {

constexpr QMarginsF kAround(6, 3, 6, 3);  // a text on its ground
constexpr double kWidest_px = 440;

}  // namespace

void paintGuides(QPainter& painter, const ViewTransform& view, const Theme& theme,
                 const std::vector<geometry::Segment>& guides) {
  painter.save();
  painter.setPen(QPen(theme.selection, 1, Qt::DashLine));
  painter.setBrush(theme.selection);
  for (const geometry::Segment& guide : guides) {
    painter.drawLine(view.toPixels(guide.a), view.toPixels(guide.b));
    painter.drawEllipse(view.toPixels(guide.a), 2.5, 2.5);
  }
  painter.restore();
}

void paintDraft(QPainter& painter, const ViewTransform& view, const Theme& theme,
                const geometry::Polygon& corners, bool closed) {
  QPolygonF pixels;
  for (const geometry::Point p : corners) pixels << view.toPixels(p);
  painter.save();
  painter.setPen(QPen(theme.selection, 2));
  QColor fill = theme.selection;
  fill.setAlphaF(0.08f);
  painter.setBrush(closed ? QBrush(fill) : Qt::NoBrush);
  if (closed)
    painter.drawPolygon(pixels);
  else
    painter.drawPolyline(pixels);
  for (const QPointF p : pixels) paintHandle(painter, theme, p, false);
  painter.restore();
}

void paintTag(QPainter& painter, const Theme& theme, const QRectF& box, const QString& text) {
  painter.save();
  QColor ground = theme.label_ground;
  ground.setAlpha(255);  // what is under it must not be read into its numbers
  painter.setPen(QPen(theme.grid, 1));
  painter.setBrush(ground);
  painter.drawRect(box);
  painter.setPen(theme.ink);
  painter.drawText(box.marginsRemoved(kAround), Qt::AlignLeft | Qt::TextWordWrap, text);
  painter.restore();
}

QRectF tagBox(QSizeF size, QPointF pointer, const QRectF& inside, double below) {
  constexpr double kAway_px = 10;
  QRectF box(pointer + QPointF(kAway_px, kAway_px + below), size);
  if (box.right() > inside.right()) box.moveRight(pointer.x() - kAway_px);
  if (box.left() < inside.left()) box.moveLeft(std::max(inside.left(), inside.right() - size.width()));
  if (box.bottom() > inside.bottom()) box.moveBottom(pointer.y() - kAway_px - below);
  if (box.top() < inside.top()) box.moveTop(std::max(inside.top(), inside.bottom() - size.height()));
  return box;
}

QRectF tagRoom(const QRectF& view) {
  return view.adjusted(kRuler_px, kRuler_px, -2, -2);
}

QSizeF tagSize(const QString& text, const QFont& font, const QRectF& inside) {
  const QRectF most(0, 0, std::min(kWidest_px, inside.width() - kAround.left() - kAround.right()), 10000);
  const QRectF lines = QFontMetricsF(font).boundingRect(most, Qt::AlignLeft | Qt::TextWordWrap, text);
  // A hair more, lest rounding break a line once more.
  return lines.marginsAdded(kAround).size() + QSizeF(1, 1);
}

void paintTagAtPointer(QPainter& painter, const Theme& theme, QPointF pointer, const QString& text,
                       double below) {
  if (text.isEmpty()) return;
  const QRectF inside = tagRoom(painter.viewport());
  const QSizeF size = tagSize(text, painter.font(), inside);
  paintTag(painter, theme, tagBox(size, pointer, inside, below), text);
}

void paintLength(QPainter& painter, const ViewTransform& view, const Theme& theme, geometry::Segment line,
                 layout::LengthUnit unit) {
  const double length = geometry::distance(line.a, line.b);
  if (length * view.pixelsPerMm() < 24) return;
  const QPointF middle = (view.toPixels(line.a) + view.toPixels(line.b)) / 2;
  const QString text = QString::fromStdString(layout::formatLength(length, unit));
  const QSizeF size = QFontMetricsF(painter.font()).boundingRect(text).marginsAdded(kAround).size();
  paintTag(painter, theme, QRectF(middle - QPointF(14, 3), size + QSizeF(1, 1)), text);
}

void paintFaultMark(QPainter& painter, const Theme& theme, const QRectF& box, bool is_current) {
  constexpr double kHalf_px = 9;
  const QPointF at = box.topLeft();
  painter.save();
  painter.setPen(QPen(is_current ? theme.fails : theme.quiet_ink, 1.5, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(box);
  painter.setPen(QPen(is_current ? theme.ink : theme.quiet_ink, 1.5));
  painter.setBrush(is_current ? theme.warns : theme.floor);
  painter.drawPolygon(QPolygonF{at + QPointF(0, -kHalf_px), at + QPointF(kHalf_px, kHalf_px * 0.8),
                                at + QPointF(-kHalf_px, kHalf_px * 0.8)});
  if (is_current) painter.setPen(Theme::light().ink);  // on the orange, dark or light
  painter.drawText(QRectF(at - QPointF(kHalf_px, kHalf_px * 0.6), QSizeF(2 * kHalf_px, 1.5 * kHalf_px)),
                   Qt::AlignCenter, "!");
  painter.restore();
}

QRectF handleBox(QPointF middle) {
  return QRectF(middle.x() - kHandle_px / 2, middle.y() - kHandle_px / 2, kHandle_px, kHandle_px);
}

void paintHandle(QPainter& painter, const Theme& theme, QPointF middle, bool round) {
  painter.save();
  painter.setPen(QPen(theme.selection, 2));
  painter.setBrush(theme.floor);
  const QRectF box = handleBox(middle).adjusted(1, 1, -1, -1);
  if (round)
    painter.drawEllipse(box);
  else
    painter.drawRect(box);
  painter.restore();
}

}  // namespace stopwalk::plan
