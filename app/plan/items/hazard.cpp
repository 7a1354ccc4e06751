#include "app/plan/items/hazard.h"

#include "app/plan/items/drawing.h"

namespace stopwalk::plan {

void paintHazard(QPainter& painter, const PaintContext& context, const geometry::Polygon& outline_in_plan) {
  if (outline_in_plan.empty()) return;
  const QPolygonF outline = onScreen(outline_in_plan, context.view);
  const QRectF box = outline.boundingRect();
  if (std::max(box.width(), box.height()) < 8) return;
  if (context.selected) hatch(painter, outline, outline[0], 6, pen(faint(context.theme.hazard, 0.6), 1));
  QPen dashes = pen(context.theme.hazard, 1.2);
  dashes.setDashPattern({4, 3});
  painter.setPen(dashes);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(outline);
}

}  // namespace stopwalk::plan
