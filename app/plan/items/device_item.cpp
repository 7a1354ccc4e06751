#include "app/plan/items/device_item.h"

#include <algorithm>
#include <limits>

#include "app/plan/items/drawing.h"
#include "app/plan/items/station_sign.h"

namespace stopwalk::plan {
namespace {

using edits::Thing;
using edits::ThingKind;
using geometry::Point;

constexpr double kOnWall_mm = 1100;  // room on a wall
constexpr double kOfMachine = 0.75;  // of the machine's shorter side: no symbol hides its machine

const layout::Device& deviceOf(const layout::Layout& layout, const Thing& thing) {
  return thing.kind == ThingKind::WallDevice ? layout.devices[thing.index]
                                             : layout.machines[thing.index].devices[thing.part];
}

// The nearer to the next device on the machine, the less room; of two that are close, one that stops goes
// before one that does not, and the earlier before the later.
double roomOnMachine(const layout::Machine& machine, std::size_t device, const layout::DeviceKinds& kinds) {
  const geometry::Box box = geometry::boxOf(layout::outlineInPlan(machine.footprint, {}, 0));
  double room = kOfMachine * std::min(box.high.x - box.low.x, box.high.y - box.low.y);
  const auto stops = [&](const layout::Device& d) {
    const layout::DeviceKind* kind = kinds.find(d.kind);
    return kind && kind->counts_as_stop;
  };
  const layout::Device& own = machine.devices[device];
  for (std::size_t i = 0; i < machine.devices.size(); ++i) {
    const bool goes_before = stops(machine.devices[i]) != stops(own) ? stops(machine.devices[i]) : i < device;
    if (i != device && goes_before) room = std::min(room, geometry::distance(machine.devices[i].at, own.at));
  }
  return room;
}

SymbolItem::Look lookOf(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Thing& thing) {
  const layout::Device& device = deviceOf(layout, thing);
  const layout::DeviceKind* kind = kinds.find(device.kind);
  const bool on_machine = thing.kind == ThingKind::MachineDevice;
  SymbolItem::Look look;
  look.at = *edits::placeOf(layout, thing);
  look.faces = device.faces + (on_machine ? layout.machines[thing.index].turn : 0);
  look.key = kind ? kind->symbol : "";
  look.ground = kind ? groundOf(*kind) : Ground::Plain;
  look.room_mm = on_machine ? roomOnMachine(layout.machines[thing.index], thing.part, kinds) : kOnWall_mm;
  return look;
}

}  // namespace

DeviceItem::DeviceItem(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Thing& device)
    : SymbolItem(device, edits::idOf(layout, device), lookOf(layout, kinds, device)),
      line_{look().at, look().at} {
  const layout::Device& d = deviceOf(layout, device);
  const layout::DeviceKind* kind = kinds.find(d.kind);
  pin_missing_ = d.pin == layout::Pin::Missing;
  if (!kind || kind->shape != layout::Shape::Line || !d.length) return;
  const Point half = 0.5 * *d.length * geometry::leftOf(geometry::direction(look().faces));
  line_ = {look().at - half, look().at + half};
  by_foot_ = kind->actuated_by == layout::ActuatedBy::Foot;
}

std::optional<double> DeviceItem::distanceTo(Point at, double mm_per_pixel) const {
  return std::min(*SymbolItem::distanceTo(at, mm_per_pixel), geometry::distance(line_, at));
}

void DeviceItem::paint(QPainter& painter, const PaintContext& context) const {
  const QLineF line(context.view.toPixels(line_.a), context.view.toPixels(line_.b));
  if (line.length() > kDot_px) {
    painter.setRenderHint(QPainter::Antialiasing);
    const double width = stroke(context.view, by_foot_ ? 4.0 : 2.5);
    if (context.selected || context.hovered) {
      painter.setPen(pen(faint(context.theme.selection, context.selected ? 1 : 0.6), width + 5));
      painter.drawLine(line);
    }
    QPen casing = pen(context.theme.stop_ground, width + 2);
    casing.setCapStyle(Qt::SquareCap);
    painter.setPen(casing);
    painter.drawLine(line);
    painter.setPen(pen(context.theme.stop_sign, width));
    painter.drawLine(line);
  }
  SymbolItem::paint(painter, context);
  if (!pin_missing_ || context.by_records) return;
  const QRectF box = square(context);
  paintStationSign(painter, context.theme, StationState::Fails, box.center(), box.width() / 2);
}

}  // namespace stopwalk::plan
