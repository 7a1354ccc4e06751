#include "app/edits/hang_things.h"

#include <QCoreApplication>

#include "app/edits/things.h"

namespace stopwalk::edits {
namespace {

Edit moveEdit(const layout::Layout& layout, const std::string& id) {
  const auto thing = findThing(layout, id);
  const QString name = QString::fromStdString(thing ? nameOf(layout, *thing) : id);
  return {QCoreApplication::translate("edits", "Move %1").arg(name), layout};
}

}  // namespace

Edit hangOnWall(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces) {
  Edit edit = moveEdit(layout, id);
  const auto thing = findThing(layout, id);
  if (thing && thing->kind == ThingKind::WallDevice) {
    edit.after.devices[thing->index].at = at;
    edit.after.devices[thing->index].faces = faces;
  } else if (thing && thing->kind == ThingKind::Phone) {
    edit.after.phones[thing->index].at = at;
    edit.after.phones[thing->index].faces = faces;
  }
  return edit;
}

Edit hangDoor(const layout::Layout& layout, const std::string& id, geometry::Point at,
              const std::string& first, const std::string& second) {
  Edit edit = moveEdit(layout, id);
  const auto thing = findThing(layout, id);
  if (!thing || thing->kind != ThingKind::Door) return edit;
  layout::Door& door = edit.after.doors[thing->index];
  door.at = at;
  door.first = first;
  door.second = second;
  return edit;
}

Edit hangOnMachine(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces) {
  Edit edit = moveEdit(layout, id);
  const auto thing = findThing(layout, id);
  if (!thing || thing->kind != ThingKind::MachineDevice) return edit;
  layout::Device& device = edit.after.machines[thing->index].devices[thing->part];
  device.at = at;
  device.faces = faces;
  return edit;
}

}  // namespace stopwalk::edits
