#include "app/plan/items/symbol_item.h"

#include <algorithm>
#include <cmath>

#include "app/plan/items/drawing.h"
#include "app/plan/items/stamp.h"

namespace stopwalk::plan {

SymbolItem::SymbolItem(edits::Thing item_thing, std::string item_id, Look look)
    : Item(item_thing, std::move(item_id), Layer::Device), look_(std::move(look)) {}

std::optional<double> SymbolItem::distanceTo(geometry::Point at, double mm_per_pixel) const {
  const double side = symbolSide(1 / mm_per_pixel, look_.room_mm);
  return distanceToMark(at, look_.at, side > 0 ? std::max(side, kTarget_px) : kDot_px, mm_per_pixel);
}

QRectF SymbolItem::square(const PaintContext& context) const {
  const double side = symbolSide(context.view.pixelsPerMm(), look_.room_mm);
  const double shown = side > 0 ? side : kDot_px;
  QRectF box(0, 0, shown, shown);
  box.moveCenter(context.view.toPixels(look_.at));
  return box;
}

void SymbolItem::paint(QPainter& painter, const PaintContext& context) const {
  const QRectF box = square(context);
  painter.setRenderHint(QPainter::Antialiasing);
  if (!isDot(context)) {
    paintFacing(painter, context, box);
    paintSymbol(painter, box, look_.key, look_.ground, context.theme);
  } else {
    const StampKey key{StampKey::What::Dot, static_cast<int>(look_.ground), static_cast<int>(2 * kDot_px), 0};
    paintStamp(painter, context.theme, box.center(), kDot_px / 2 + 1, key, [&](QPainter& stamp) {
      paintSymbolDot(stamp, QRectF(-kDot_px / 2, -kDot_px / 2, kDot_px, kDot_px), look_.ground,
                     context.theme);
    });
  }
  paintMark(painter, context, box);
}

// A pointed mark that looks out from behind the symbol towards the one who uses it.
void SymbolItem::paintFacing(QPainter& painter, const PaintContext& context, const QRectF& box) const {
  const QPointF d = screenDirection(look_.faces), across(-d.y(), d.x());
  const double half = box.width() / 2;
  const double reach = half / std::max(std::abs(d.x()), std::abs(d.y()));
  const QPointF tip = box.center() + (reach + 5) * d;
  const QPointF mark[] = {tip, tip - 6.0 * d + 4.5 * across, tip - 6.0 * d - 4.5 * across};
  painter.setPen(Qt::NoPen);
  painter.setBrush(context.theme.ink);
  painter.drawPolygon(mark, 3);
}

void SymbolItem::paintMark(QPainter& painter, const PaintContext& context, const QRectF& box) const {
  if (!context.selected && !context.hovered) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(pen(context.selected ? context.theme.selection : faint(context.theme.selection, 0.6),
                     context.selected ? 2.5 : 1.5));
  painter.drawRoundedRect(box.adjusted(-3, -3, 3, 3), 4, 4);
}

bool SymbolItem::isDot(const PaintContext& context) const {
  return symbolSide(context.view.pixelsPerMm(), look_.room_mm) == 0;
}

void SymbolItem::addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
  boxes.push_back(square(context));
}

}  // namespace stopwalk::plan
