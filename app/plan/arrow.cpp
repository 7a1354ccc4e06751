#include "app/plan/arrow.h"

#include <QLineF>
#include <QPolygonF>

namespace stopwalk::plan {
namespace {

constexpr double kArrow_px = 10;

}  // namespace

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

}  // namespace stopwalk::plan
