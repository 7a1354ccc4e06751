#include "app/plan/items/wall_item.h"

#include <cmath>

#include "app/plan/items/drawing.h"
#include "core/floor/doorway.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

// What lies between two walls that face one another, nearly parallel; none if they do not.
std::optional<Polygon> between(Segment a, Segment b) {
  const geometry::Frame frame = geometry::frameOf(a);
  const Segment local{frame.in(b.a), frame.in(b.b)};
  const double run = std::abs(local.a.x - local.b.x);
  if (run < 1 || std::abs(local.a.y - local.b.y) > 0.05 * run) return std::nullopt;
  const auto part = geometry::clippedByX(local, 0, geometry::distance(a.a, a.b));
  if (!part || std::abs(part->a.x - part->b.x) < 1) return std::nullopt;
  const double gap = std::max(std::abs(part->a.y), std::abs(part->b.y));
  if (gap > floor::kThickestWall_mm) return std::nullopt;
  // A little longer, to fill the corners; the floors go over what is too much.
  const double longer = part->a.x < part->b.x ? WallItem::kNominal_mm : -WallItem::kNominal_mm;
  const double from = part->a.x - longer, to = part->b.x + longer;
  return Polygon{frame.out({from, 0}), frame.out({to, 0}), frame.out({to, part->b.y}),
                 frame.out({from, part->a.y})};
}

}  // namespace

WallItem::WallItem(const layout::Layout& layout, std::size_t room)
    : Item({edits::ThingKind::Room, room}, "", Layer::Wall), outline_(layout.rooms[room].outline) {
  const geometry::Box reach = geometry::boxOf(outline_).grown(floor::kThickestWall_mm);
  for (std::size_t other = room + 1; other < layout.rooms.size(); ++other) {
    const Polygon& next = layout.rooms[other].outline;
    if (layout.rooms[other].outdoors || !overlap(reach, geometry::boxOf(next))) continue;
    for (std::size_t i = 0; i < outline_.size(); ++i)
      for (std::size_t k = 0; k < next.size(); ++k)
        if (auto gap = between(geometry::edgeOf(outline_, i), geometry::edgeOf(next, k)))
          solid_.push_back(std::move(*gap));
  }
}

geometry::Box WallItem::bounds() const {
  geometry::Box box = geometry::boxOf(outline_).grown(kNominal_mm);
  for (const Polygon& p : solid_) box.add(geometry::boxOf(p));
  return box;
}

void WallItem::paint(QPainter& painter, const PaintContext& context) const {
  painter.setRenderHint(QPainter::Antialiasing);
  QPen band = pen(context.theme.ink, std::max(2.0, 2 * kNominal_mm * context.view.pixelsPerMm()));
  band.setMiterLimit(3);
  painter.setPen(band);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(onScreen(outline_, context.view));
  painter.setPen(pen(context.theme.ink, 1));
  painter.setBrush(context.theme.ink);
  for (const Polygon& p : solid_) painter.drawPolygon(onScreen(p, context.view));
}

// Those that run along or up; a label across a slanting wall is as well as none.
void WallItem::addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
  for (std::size_t i = 0; i < outline_.size(); ++i) {
    const geometry::Segment edge = geometry::edgeOf(outline_, i);
    if (edge.a.x != edge.b.x && edge.a.y != edge.b.y) continue;
    boxes.push_back(context.view.toPixels(geometry::boxOf(edge)).adjusted(-3, -3, 3, 3));
  }
}

}  // namespace stopwalk::plan
