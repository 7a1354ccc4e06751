#include "app/plan/tools/room_tool.h"

#include <cmath>

#include "app/edits/add_things.h"
#include "app/plan/guides.h"
#include "app/plan/pointing.h"
#include "app/plan/tools/placing.h"

namespace stopwalk::plan {
namespace {

constexpr double kLeast_mm = 100;

}  // namespace

RoomTool::RoomTool(ToolHost& tool_host)
    : Tool(tool_host),
      targets_(tool_host.layout(), {}),
      fields_{{tr("X")}, {tr("Y")}, {tr("Width")}, {tr("Depth")}} {}

geometry::Point RoomTool::snapped(const PointerEvent& event) {
  guides_.clear();
  if (!event.snaps()) return event.at;
  Snap snap = targets_.pull({event.at}, kSnap_px * host.view().mmPerPixel(), kGrid_mm);
  guides_ = std::move(snap.guides);
  return event.at + snap.by;
}

void RoomTool::follow(geometry::Point corner) {
  const geometry::Point d = {corner.x - fields_[X].value, corner.y - fields_[Y].value};
  if (begun_) towards_ = {d.x < 0 ? -1.0 : 1.0, d.y < 0 ? -1.0 : 1.0};
  const double values[] = {corner.x, corner.y, std::abs(d.x), std::abs(d.y)};
  for (const int i : begun_ ? std::vector<int>{Width, Depth} : std::vector<int>{X, Y})
    if (!fields_[static_cast<std::size_t>(i)].typed) fields_[static_cast<std::size_t>(i)].value = values[i];
  host.fieldsChanged();
  host.repaint();
}

void RoomTool::pressed(const PointerEvent& event) {
  pressed_at_ = event.pixel;
  follow(snapped(event));
  if (begun_) return accept();
  begun_ = true;
  fields_[X].typed = fields_[Y].typed = true;  // the next number typed is the width
  host.fieldsChanged();
}

void RoomTool::moved(const PointerEvent& event) {
  follow(snapped(event));
}

void RoomTool::released(const PointerEvent& event) {
  if (!begun_ || (event.pixel - pressed_at_).manhattanLength() < kDrag_px) return;
  follow(snapped(event));
  accept();
}

geometry::Polygon RoomTool::corners() const {
  const double x = fields_[X].value, y = fields_[Y].value;
  const double w = towards_.x * fields_[Width].value, d = towards_.y * fields_[Depth].value;
  const double low_x = std::min(x, x + w), low_y = std::min(y, y + d);
  const double high_x = std::max(x, x + w), high_y = std::max(y, y + d);
  return {{low_x, low_y}, {high_x, low_y}, {high_x, high_y}, {low_x, high_y}};
}

void RoomTool::paintOver(QPainter& painter) const {
  paintGuides(painter, host.view(), host.theme(), guides_);
  if (!begun_ && !fields_[Width].typed && !fields_[Depth].typed) return;
  const geometry::Polygon c = corners();
  paintDraft(painter, host.view(), host.theme(), c, true);
  paintLength(painter, host.view(), host.theme(), {c[0], c[1]}, host.layout().unit);
  paintLength(painter, host.view(), host.theme(), {c[1], c[2]}, host.layout().unit);
}

QString RoomTool::prompt() const {
  return begun_ ? tr("Click the opposite corner, or type width, Tab, depth, Enter.")
                : tr("Click or drag from the room's first corner, or type its numbers.");
}

void RoomTool::setField(std::size_t field, double value) {
  fields_[field].value = value;
  fields_[field].typed = true;
  host.fieldsChanged();
  host.repaint();
}

void RoomTool::accept() {
  if (std::abs(fields_[Width].value) < kLeast_mm || std::abs(fields_[Depth].value) < kLeast_mm) return;
  add(edits::addRoom(host.layout(), corners(), roomName(host.layout())));
}

bool RoomTool::cancel() {
  const bool something = begun_;
  begun_ = false;
  for (Field& field : fields_) field.typed = false;
  guides_.clear();
  host.fieldsChanged();
  host.repaint();
  return something;
}

}  // namespace stopwalk::plan
