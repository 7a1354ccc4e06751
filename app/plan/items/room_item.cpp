#include "app/plan/items/room_item.h"

#include "app/plan/items/drawing.h"
#include "app/plan/rulers.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 30;
constexpr double kLeastNamed_px = 60;

}  // namespace

RoomItem::RoomItem(const layout::Layout& layout, std::size_t room)
    : Item({edits::ThingKind::Room, room}, layout.rooms[room].id, Layer::Floor),
      outline_(layout.rooms[room].outline),
      outdoors_(layout.rooms[room].outdoors),
      name_(QString::fromStdString(edits::nameOf(layout, thing))) {}

std::optional<double> RoomItem::distanceTo(geometry::Point at, double) const {
  return outline_.distanceTo(at);
}

void RoomItem::paint(QPainter& painter, const PaintContext& context) const {
  const Theme& theme = context.theme;
  const QPolygonF outline = onScreen(outline_.corners(), context.view);
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor& ground = outdoors_ ? theme.outdoors : theme.floor;
  painter.setPen(Qt::NoPen);
  painter.setBrush(ground);
  painter.drawPolygon(outline);
  if (context.grid) paintGrid(painter, context.view, theme, ground, outline, *context.grid);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(outdoors_ ? pen(theme.quiet_ink, 1, Qt::DashLine) : pen(theme.ink, 1));
  painter.drawPolygon(outline);
  paintOutlineMark(painter, context, outline);
}

std::optional<Label> RoomItem::label(const PaintContext& context) const {
  const QRectF box = context.view.toPixels(outline_.box());
  if (outline_.empty() || std::min(box.width(), box.height()) < kLeastNamed_px) return std::nullopt;
  const auto at = [&](double x, double y) {
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
  };
  Label label{name_, {}, kImportance, box, true};
  for (const double y : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9})
    for (const double x : {0.5, 0.35, 0.65, 0.2, 0.8}) {
      const geometry::Point place = context.view.toPlan(at(x, y));
      if (outline_.holds(place)) label.middles.push_back(at(x, y));
    }
  return label;
}

}  // namespace stopwalk::plan
