#include "app/plan/items/machine_item.h"

#include <algorithm>
#include <cmath>

#include "app/plan/items/drawing.h"
#include "app/plan/items/hazard.h"
#include "app/plan/items/name_label.h"

namespace stopwalk::plan {
namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

constexpr int kImportance = 50;
constexpr double kNotch_mm = 110;  // deep; twice as wide
constexpr double kLeastDetailed_px = 24;

// The outline in the machine's frame with a notch cut in where the line from the origin towards the operator
// leaves it; as it is where the side there is too short.
Polygon notched(const Polygon& outline) {
  std::size_t side = outline.size();
  double lowest = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment edge = geometry::edgeOf(outline, i);
    if ((edge.a.x < 0) == (edge.b.x < 0)) continue;
    const double y = edge.a.y + (edge.b.y - edge.a.y) * edge.a.x / (edge.a.x - edge.b.x);
    if (side == outline.size() || y < lowest) side = i, lowest = y;
  }
  if (side == outline.size()) return outline;
  const Segment edge = geometry::edgeOf(outline, side);
  const Point middle{0, lowest}, along = geometry::unit(edge.b - edge.a);
  const double free = std::min(geometry::distance(middle, edge.a), geometry::distance(middle, edge.b));
  const double half = std::min(kNotch_mm, 0.4 * free);
  const double inwards = geometry::signedArea(outline) > 0 ? 1 : -1;
  Polygon out;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    out.push_back(outline[i]);
    if (i != side) continue;
    out.push_back(middle - half * along);
    out.push_back(middle + inwards * half * geometry::leftOf(along));
    out.push_back(middle + half * along);
  }
  return out;
}

Polygon carried(const layout::Machine& machine, Polygon outline) {
  for (Point& p : outline) p = layout::toPlan(machine.at, machine.turn, p);
  return outline;
}

}  // namespace

MachineItem::MachineItem(const layout::Layout& layout, std::size_t machine)
    : Item({edits::ThingKind::Machine, machine}, layout.machines[machine].id, Layer::Machine),
      outline_(layout::outlineInPlan(layout.machines[machine].footprint, layout.machines[machine].at,
                                     layout.machines[machine].turn)),
      notched_(carried(layout.machines[machine],
                       notched(layout::outlineInPlan(layout.machines[machine].footprint, {}, 0)))),
      hazard_(carried(layout.machines[machine], layout.machines[machine].hazard)),
      name_(QString::fromStdString(edits::nameOf(layout, thing))) {}

geometry::Box MachineItem::bounds() const {
  geometry::Box box = outline_.box();
  box.add(geometry::boxOf(hazard_));
  return box;
}

std::optional<double> MachineItem::distanceTo(geometry::Point at, double) const {
  return outline_.distanceTo(at);
}

void MachineItem::paint(QPainter& painter, const PaintContext& context) const {
  const Theme& theme = context.theme;
  const QRectF box = context.view.toPixels(outline_.box());
  const bool detailed = std::max(box.width(), box.height()) >= kLeastDetailed_px;
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(pen(theme.ink, stroke(context.view, 1.2)));
  painter.setBrush(theme.machine);
  const QPolygonF outline = onScreen(detailed ? notched_ : outline_.corners(), context.view);
  if (detailed || !isUprightBox(outline)) {
    painter.drawPolygon(outline);
  } else {
    painter.setRenderHint(QPainter::Antialiasing, false);  // as crisp, and many times faster
    painter.setPen(pen(theme.ink, 1));
    painter.drawRect(QRectF(outline[0], outline[2]).normalized().translated(-0.5, -0.5));
  }
  if (detailed) paintHazard(painter, context, hazard_);
  paintOutlineMark(painter, context, outline);
}

void MachineItem::addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
  boxes.push_back(context.view.toPixels(outline_.box()));
}

std::optional<Label> MachineItem::label(const PaintContext& context) const {
  auto label = nameLabel(name_, context.view.toPixels(outline_.box()), kImportance);
  if (label) label->clear_of = Layer::Machine;
  return label;
}

}  // namespace stopwalk::plan
