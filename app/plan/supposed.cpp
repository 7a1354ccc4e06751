#include "app/plan/supposed.h"

#include <algorithm>

#include "app/edits/things.h"
#include "app/plan/items/drawing.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

constexpr double kCross_px = 14;
constexpr double kHatch_px = 8;

void paintCross(QPainter& painter, const Theme& theme, QPointF middle) {
  const QPointF d(kCross_px, kCross_px), e(kCross_px, -kCross_px);
  for (const QPen& line : {pen(theme.floor, 6), pen(theme.fails, 3)}) {
    painter.setPen(line);
    painter.drawLine(middle - d, middle + d);
    painter.drawLine(middle - e, middle + e);
  }
}

void paintShut(QPainter& painter, const ViewTransform& view, const Theme& theme, const layout::Door& door,
               const layout::Layout& layout) {
  const auto room = std::ranges::find(layout.rooms, door.first, &layout::Room::id);
  if (room == layout.rooms.end()) return;
  const geometry::Polygon& outline = room->outline;
  std::optional<geometry::Segment> wall;
  double least = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const geometry::Segment edge = geometry::edgeOf(outline, i);
    const double off = geometry::distance(edge, door.at);
    if (!wall || off < least) wall = edge, least = off;
  }
  if (!wall || geometry::length(wall->b - wall->a) == 0) return;
  const geometry::Point along =
      (0.5 * door.width / geometry::length(wall->b - wall->a)) * (wall->b - wall->a);
  const QLineF line(view.toPixels(door.at - along), view.toPixels(door.at + along));
  painter.setPen(pen(theme.fails, 6));
  painter.drawLine(line);
  paintCross(painter, theme, line.center());
}

void paintInTheWay(QPainter& painter, const ViewTransform& view, const Theme& theme,
                   const layout::Fixture& thing) {
  QPolygonF outline;
  for (const geometry::Point p : layout::outlineInPlan(thing.footprint, thing.at, thing.turn))
    outline << view.toPixels(p);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.label_ground);
  painter.drawPolygon(outline);
  hatch(painter, outline, view.toPixels(thing.at), kHatch_px, pen(theme.fails, 1));
  painter.setPen(pen(theme.fails, 2, Qt::DashLine));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(outline);
}

}  // namespace

void paintSupposed(QPainter& painter, const ViewTransform& view, const Theme& theme,
                   const layout::Layout& layout, const planning::Suppositions& suppositions) {
  painter.save();
  for (const layout::Fixture& thing : suppositions.in_the_way) paintInTheWay(painter, view, theme, thing);
  for (const std::string& id : suppositions.shut) {
    const auto door = std::ranges::find(layout.doors, id, &layout::Door::id);
    if (door != layout.doors.end()) paintShut(painter, view, theme, *door, layout);
  }
  paintOutOfOrder(painter, view, theme, layout, suppositions.out_of_order);
  painter.restore();
}

void paintOutOfOrder(QPainter& painter, const ViewTransform& view, const Theme& theme,
                     const layout::Layout& layout, std::span<const std::string> devices) {
  painter.save();
  for (const std::string& id : devices)
    if (const auto thing = edits::findThing(layout, id))
      if (const auto at = edits::placeOf(layout, *thing)) paintCross(painter, theme, view.toPixels(*at));
  painter.restore();
}

std::optional<std::size_t> inTheWayAt(const planning::Suppositions& suppositions, geometry::Point at) {
  const auto& things = suppositions.in_the_way;
  for (std::size_t i = things.size(); i-- > 0;)
    if (geometry::IndexedPolygon(layout::outlineInPlan(things[i].footprint, things[i].at, things[i].turn))
            .holds(at))
      return i;
  return std::nullopt;
}

}  // namespace stopwalk::plan
