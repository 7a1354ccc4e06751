#include "app/plan/routes.h"

#include <QLineF>
#include <QPolygonF>

#include "core/audit/wording.h"

namespace stopwalk::plan {
namespace {

constexpr double kArrow_px = 10;

QPolygonF pixelsOf(const ViewTransform& view, const std::vector<geometry::Point>& path_m) {
  QPolygonF pixels;
  for (const geometry::Point p : path_m) pixels << view.toPixels(1000 * p);
  return pixels;
}

void paintArrow(QPainter& painter, QPointF from, QPointF tip) {
  const QLineF line(tip, from);
  if (line.length() < 1) return;
  QLineF left = line, right = line;
  left.setAngle(line.angle() + 25);
  right.setAngle(line.angle() - 25);
  left.setLength(kArrow_px);
  right.setLength(kArrow_px);
  painter.drawPolygon(QPolygonF{tip, left.p2(), right.p2()});
}

// The place half way along.
QPointF middleOf(const QPolygonF& line) {
  double whole = 0;
  for (qsizetype i = 1; i < line.size(); ++i) whole += QLineF(line[i - 1], line[i]).length();
  double gone = 0;
  for (qsizetype i = 1; i < line.size(); ++i) {
    const QLineF piece(line[i - 1], line[i]);
    if (gone + piece.length() >= whole / 2 && piece.length() > 0)
      return piece.pointAt((whole / 2 - gone) / piece.length());
    gone += piece.length();
  }
  return line.last();
}

void paintLengthOn(QPainter& painter, const Theme& theme, QPointF middle, const QString& text,
                   const QColor& ink) {
  const QFontMetricsF metrics(painter.font());
  QRectF box = metrics.boundingRect(text).adjusted(-4, -2, 4, 2);
  box.moveCenter(middle);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.label_ground);
  painter.drawRect(box);
  painter.setPen(ink);
  painter.drawText(box, Qt::AlignCenter, text);
}

}  // namespace

void paintRoute(QPainter& painter, const ViewTransform& view, const Theme& theme,
                const audit::Nearest& nearest, RouteTo to, layout::LengthUnit unit) {
  if (nearest.path_m.size() < 2 || !nearest.walk_m) return;
  const QPolygonF line = pixelsOf(view, nearest.path_m);
  const QColor ink = to == RouteTo::Phone ? theme.selection : theme.ink;
  painter.save();
  painter.setBrush(Qt::NoBrush);
  painter.setPen(
      QPen(ink, 2.5, to == RouteTo::Phone ? Qt::DashLine : Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(line);
  painter.setPen(QPen(ink, 1));
  painter.setBrush(ink);
  paintArrow(painter, line[line.size() - 2], line.last());
  paintLengthOn(painter, theme, middleOf(line),
                QString::fromStdString(audit::lengthText(*nearest.walk_m, unit)), ink);
  painter.restore();
}

}  // namespace stopwalk::plan
