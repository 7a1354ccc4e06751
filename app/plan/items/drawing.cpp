#include "app/plan/items/drawing.h"

#include <QLineF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace stopwalk::plan {

QPolygonF onScreen(const geometry::Polygon& outline, const ViewTransform& view) {
  QPolygonF corners;
  corners.reserve(static_cast<int>(outline.size()));
  bool upright = true;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const geometry::Point a = outline[i], b = outline[i + 1 == outline.size() ? 0 : i + 1];
    upright = upright && (std::abs(a.x - b.x) < 0.01 || std::abs(a.y - b.y) < 0.01);
    corners.append(view.toPixels(a));
  }
  if (upright)
    for (QPointF& p : corners) p = {std::floor(p.x()) + 0.5, std::floor(p.y()) + 0.5};
  return corners;
}

bool isUprightBox(const QPolygonF& c) {
  return c.size() == 4 &&
         ((c[0].x() == c[1].x() && c[1].y() == c[2].y() && c[2].x() == c[3].x() && c[3].y() == c[0].y()) ||
          (c[0].y() == c[1].y() && c[1].x() == c[2].x() && c[2].y() == c[3].y() && c[3].x() == c[0].x()));
}

double stroke(const ViewTransform& view, double px) {
  return px * std::clamp(std::pow(view.pixelsPerMm() / 0.06, 0.25), 0.7, 2.0);
}

QPen pen(const QColor& colour, double width, Qt::PenStyle style) {
  return QPen(colour, width, style, Qt::FlatCap, Qt::MiterJoin);
}

QColor faint(QColor colour, double opacity) {
  colour.setAlphaF(static_cast<float>(opacity));
  return colour;
}

void paintOutlineMark(QPainter& painter, const PaintContext& context, const QPolygonF& outline) {
  if (!context.selected && !context.hovered) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(pen(context.selected ? context.theme.selection : faint(context.theme.selection, 0.6),
                     context.selected ? 2.5 : 1.5));
  painter.drawPolygon(outline);
}

void hatch(QPainter& painter, const QPolygonF& outline, QPointF anchor, double step, const QPen& line) {
  // What is seen of it, so that a great thing close by costs no more than the screen.
  QRectF box = outline.boundingRect();
  if (painter.hasClipping()) box &= painter.clipBoundingRect();
  box &= QRectF(painter.window()).adjusted(-16, -16, 16, 16);
  if (box.isEmpty()) return;
  painter.save();
  QPainterPath path;
  path.addPolygon(outline);
  path.closeSubpath();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(line);
  const double origin = anchor.x() + anchor.y();
  const double first = origin + std::ceil((box.left() + box.top() - origin) / step) * step;
  QVector<QLineF> lines;
  for (double sum = first; sum < box.right() + box.bottom(); sum += step)
    lines.append(QLineF(sum - box.bottom(), box.bottom(), sum - box.top(), box.top()));
  painter.drawLines(lines);
  painter.restore();
}

QPointF screenDirection(double deg) {
  const geometry::Point d = geometry::direction(deg);
  return {d.x, -d.y};
}

double symbolSide(double pixels_per_mm, double room_mm) {
  const double room = room_mm * pixels_per_mm;
  if (room < kLeastSymbol_px) return 0;
  return std::floor(std::min(std::clamp(260 * pixels_per_mm, kLeastSymbol_px, kMostSymbol_px), room));
}

double distanceToMark(geometry::Point at, geometry::Point place, double side_px, double mm_per_pixel) {
  return std::max(0.0, geometry::distance(at, place) - side_px / 2 * mm_per_pixel);
}

QPointF placeAlong(const QPolygonF& line, double part) {
  double whole = 0;
  for (qsizetype i = 1; i < line.size(); ++i) whole += QLineF(line[i - 1], line[i]).length();
  double gone = 0;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const QLineF piece(line[i - 1], line[i]);
    if (gone + piece.length() >= whole * part && piece.length() > 0)
      return piece.pointAt((whole * part - gone) / piece.length());
    gone += piece.length();
  }
  return line.last();
}

}  // namespace stopwalk::plan
