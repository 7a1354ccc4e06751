#include "app/plan/items/door_item.h"

#include <limits>

#include "app/plan/items/drawing.h"
#include "app/plan/items/wall_item.h"
#include "app/plan/symbols.h"
#include "core/floor/doorway.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

const layout::Room* roomOf(const layout::Layout& layout, const std::string& id) {
  for (const layout::Room& r : layout.rooms)
    if (r.id == id) return &r;
  return nullptr;
}

// The wall that carries the door, as a unit vector along it.
Point alongWall(const layout::Room* room, Point at) {
  Point along{1, 0};
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; room && i < room->outline.size(); ++i) {
    const Segment edge = geometry::edgeOf(room->outline, i);
    const double distance = geometry::distance(edge, at);
    if (distance >= least || edge.a == edge.b) continue;
    least = distance;
    along = geometry::unit(edge.b - edge.a);
  }
  return along;
}

// From a place on the first room's wall, outwards, to the second room; the nominal wall if there is none.
double depthTo(const layout::Room* second, Point from, Point outwards) {
  if (!second) return WallItem::kNominal_mm;
  const geometry::Frame frame{from, outwards};
  double depth = floor::kThickestWall_mm;
  for (std::size_t i = 0; i < second->outline.size(); ++i) {
    const Segment edge = geometry::edgeOf(second->outline, i);
    const auto met = geometry::clippedByY({frame.in(edge.a), frame.in(edge.b)}, -1, 1);
    if (met && met->a.x >= -floor::kDoorOnWall_mm) depth = std::min(depth, std::max(0.0, met->a.x));
  }
  return depth < floor::kThickestWall_mm ? depth : WallItem::kNominal_mm;
}

Polygon openingOf(const layout::Layout& layout, const layout::Door& door) {
  const layout::Room* first = roomOf(layout, door.first);
  const Point along = alongWall(first, door.at);
  Point outwards = geometry::leftOf(along);
  if (first && geometry::IndexedPolygon(first->outline).holds(door.at + 30.0 * outwards))
    outwards = -outwards;
  const Point half = 0.5 * door.width * along;
  const double depth = depthTo(roomOf(layout, door.second), door.at, outwards);
  return {door.at - half, door.at + half, door.at + half + depth * outwards,
          door.at - half + depth * outwards};
}

QPointF middle(QPointF a, QPointF b) {
  return (a + b) / 2;
}

}  // namespace

DoorItem::DoorItem(const layout::Layout& layout, std::size_t door)
    : Item({edits::ThingKind::Door, door}, layout.doors[door].id, Layer::Door),
      opening_(openingOf(layout, layout.doors[door])),
      locked_(layout.doors[door].locked),
      width_(layout.doors[door].width) {}

std::optional<double> DoorItem::distanceTo(geometry::Point at, double) const {
  return geometry::IndexedPolygon(opening_).distanceTo(at);
}

void DoorItem::paintGround(QPainter& painter, const PaintContext& context) const {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(pen(context.theme.floor, 1.5));
  painter.setBrush(context.theme.floor);
  painter.drawPolygon(onScreen(opening_, context.view));
}

void DoorItem::paint(QPainter& painter, const PaintContext& context) const {
  const QPolygonF gap = onScreen(opening_, context.view);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(pen(context.theme.ink, stroke(context.view, 1.5)));
  painter.drawLine(gap[0], gap[3]);
  painter.drawLine(gap[1], gap[2]);
  paintLeaf(painter, context);
  paintOutlineMark(painter, context, gap);
  if (locked_ != layout::Locked::Never)
    if (const double side = symbolSide(context.view.pixelsPerMm(), width_); side > 0) {
      QRectF box(0, 0, side, side);
      box.moveCenter(gap.boundingRect().center());
      painter.setPen(Qt::NoPen);
      painter.setBrush(context.theme.label_ground);
      painter.drawEllipse(box);
      paintSymbol(painter, box.adjusted(1, 1, -1, -1),
                  locked_ == layout::Locked::Always ? "door-locked" : "door-after-hours", Ground::None,
                  context.theme);
    }
}

void DoorItem::paintLeaf(QPainter& painter, const PaintContext& context) const {
  const QPolygonF gap = onScreen(opening_, context.view);
  const QPointF left = middle(gap[0], gap[3]), right = middle(gap[1], gap[2]);
  const double thick = std::clamp(50 * context.view.pixelsPerMm(), 2.0, 10.0);
  const double ink = std::min(1.0, thick / 3);
  painter.setPen(pen(context.theme.ink, thick));
  painter.drawLine(left, right);
  painter.setPen(pen(context.theme.floor, thick - 2 * ink));
  const QPointF in =
      QLineF(left, right).length() > 0 ? (right - left) / QLineF(left, right).length() : QPointF();
  painter.drawLine(left + in, right - in);
}

}  // namespace stopwalk::plan
