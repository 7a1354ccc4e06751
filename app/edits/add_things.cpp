#include "app/edits/add_things.h"

#include <QCoreApplication>

#include "app/edits/hang_things.h"
#include "app/edits/move_things.h"
#include "app/edits/new_ids.h"
#include "app/edits/step_names.h"
#include "core/geometry/box.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

Added added(const Layout& before, Layout after, std::string id) {
  const auto thing = findThing(after, id);
  if (!thing) return {noStep(before), {}};
  const QString name = QCoreApplication::translate("edits", "Add %1").arg(called(after, *thing));
  Edit edit = step(before, name, std::move(after));
  if (edit.name.isEmpty()) id.clear();
  return {std::move(edit), std::move(id)};
}

// Puts `thing` at the end of a list of things that stand on their own, under an id like `like`.
template <class T>
Added addTo(const Layout& layout, std::vector<T> Layout::*list, T thing, const std::string& like) {
  Ids taken = takenIds(layout);
  thing.id = freshId(taken, like);
  Layout after = layout;
  std::string id = thing.id;
  (after.*list).push_back(std::move(thing));
  return added(layout, std::move(after), std::move(id));
}

// The same for what is on a machine, which is handed to `place` first.
template <class T, class Place>
Added addToMachine(const Layout& layout, const std::string& machine, std::vector<T> layout::Machine::*list,
                   T thing, const std::string& like, Place place) {
  const auto found = findThing(layout, machine);
  if (!found || found->kind != ThingKind::Machine) return {noStep(layout), {}};
  Layout after = layout;
  layout::Machine& on = after.machines[found->index];
  Ids taken = takenIds(on);
  thing.id = freshId(taken, like);
  place(on, thing);
  std::string id = machine + "/" + thing.id;
  (on.*list).push_back(std::move(thing));
  return added(layout, std::move(after), std::move(id));
}

template <class T>
std::string freshNameIn(const std::vector<T>& list, const std::string& like) {
  Ids taken;
  for (const T& thing : list) taken.insert(thing.name);
  return freshName(taken, like);
}

std::string wordOf(layout::Role role) {
  switch (role) {
    case layout::Role::Operator:
      return "operator";
    case layout::Role::Helper:
      return "helper";
    case layout::Role::Setter:
      return "setter";
    case layout::Role::Instructor:
      return "instructor";
  }
  return "station";
}

}  // namespace

double widthOf(const layout::Machine& machine) {
  const geometry::Box box = geometry::boxOf(layout::outlineInPlan(machine.footprint, {}, 0));
  return box.high.x - box.low.x;
}

Added addRoom(const Layout& layout, const geometry::Polygon& outline, const std::string& name) {
  layout::Room room;
  room.name = freshNameIn(layout.rooms, name);
  room.outline = outline;
  const std::string like = idFrom(room.name, "room");
  return addTo(layout, &Layout::rooms, std::move(room), like);
}

Added addDoor(const Layout& layout, const std::string& first, const std::string& second, Point at,
              double width) {
  layout::Door door;
  door.first = first;
  door.second = second;
  door.at = at;
  door.width = width;
  return addTo(layout, &Layout::doors, std::move(door), "door");
}

Added addFixture(const Layout& layout, const std::string& name, const layout::Footprint& footprint, Point at,
                 double turn, std::optional<double> height) {
  layout::Fixture fixture;
  fixture.name = name;
  fixture.footprint = footprint;
  fixture.at = at;
  fixture.turn = turn;
  fixture.height = height;
  return addTo(layout, &Layout::fixtures, std::move(fixture), idFrom(name, "fixture"));
}

Added addMachine(const Layout& layout, const layout::MachineTemplate& from, Point at, double turn) {
  layout::Machine machine;
  machine.name = freshNameIn(layout.machines, from.label);
  machine.kind = from.key;
  machine.at = at;
  machine.turn = turn;
  machine.footprint = from.footprint;
  machine.height = from.height;
  machine.run_down = from.run_down;
  machine.hand_held = from.hand_held;
  machine.after_stop = from.after_stop;
  machine.hazard = from.hazard;
  machine.stations = from.stations;
  machine.devices = from.devices;
  return addTo(layout, &Layout::machines, std::move(machine), idFrom(from.key, "machine"));
}

Added addStation(const Layout& layout, const std::string& machine, layout::Role role, Point at) {
  layout::Station station;
  station.role = role;
  return addToMachine(
      layout, machine, &layout::Machine::stations, std::move(station), wordOf(role),
      [&](const layout::Machine& on, layout::Station& fresh) { fresh.at = rounded(inFrame(on, at)); });
}

Added addMachineDevice(const Layout& layout, const std::string& machine, const layout::DeviceKind& kind,
                       Point at, std::optional<double> length) {
  layout::Device device;
  device.kind = kind.key;
  device.length = length;
  return addToMachine(layout, machine, &layout::Machine::devices, std::move(device),
                      idFrom(kind.key, "device"), [&](const layout::Machine& on, layout::Device& fresh) {
                        fresh.at = rounded(inFrame(on, at));
                        if (kind.shape == layout::Shape::Line && !fresh.length) fresh.length = widthOf(on);
                      });
}

Added addWallDevice(const Layout& layout, const layout::DeviceKind& kind, Point at, double faces,
                    std::optional<layout::Stops> stops, std::optional<double> length) {
  layout::Device device;
  device.kind = kind.key;
  device.at = at;
  device.faces = faces;
  device.stops = std::move(stops);
  device.length = kind.shape == layout::Shape::Line && !length ? kUsualBar_mm : length;
  return addTo(layout, &Layout::devices, std::move(device), idFrom(kind.key, "device"));
}

Added addPhone(const Layout& layout, const std::string& name, Point at, double faces) {
  layout::Phone phone;
  phone.name = freshNameIn(layout.phones, name);
  phone.at = at;
  phone.faces = faces;
  const std::string like = idFrom(phone.name, "phone");
  return addTo(layout, &Layout::phones, std::move(phone), like);
}

Added addNote(const Layout& layout, const std::string& text, Point at, std::optional<Point> points_to) {
  layout::Note note;
  note.text = text;
  note.at = at;
  note.points_to = points_to;
  return addTo(layout, &Layout::notes, std::move(note), "note");
}

Added addTapeCheck(const Layout& layout, const std::string& from, const std::string& to, double taped,
                   const std::string& date, const std::string& by) {
  layout::TapeCheck check;
  check.from = from;
  check.to = to;
  check.taped = taped;
  check.date = date;
  check.by = by;
  return addTo(layout, &Layout::tape_checks, std::move(check), "tape-check");
}

Edit setUnderlay(const Layout& layout, const std::optional<layout::Underlay>& underlay) {
  Layout after = layout;
  after.underlay = underlay;
  const char* name = !underlay         ? QT_TRANSLATE_NOOP("edits", "Remove the underlay")
                     : layout.underlay ? QT_TRANSLATE_NOOP("edits", "Change the underlay")
                                       : QT_TRANSLATE_NOOP("edits", "Add the underlay");
  return step(layout, QCoreApplication::translate("edits", name), std::move(after));
}

}  // namespace stopwalk::edits
