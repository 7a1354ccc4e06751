#include "app/plan/tools/placing.h"

#include <QCoreApplication>
#include <map>

#include "app/edits/hang_things.h"
#include "app/edits/things.h"
#include "app/plan/walls.h"
#include "core/geometry/box.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::plan {
namespace {

using edits::Added;
using edits::ThingKind;
using geometry::Point;
using layout::Layout;

constexpr double kUsualDoor_mm = 900;
constexpr double kFromMachine_mm = 250;  // so near, a device is meant for the machine
constexpr double kFarthestWall_mm = 1e5;

// The machine whose footprint is within `most_mm` of a place.
const layout::Machine* machineNear(const Layout& layout, Point at, double most_mm) {
  const layout::Machine* best = nullptr;
  double least = most_mm;
  for (const layout::Machine& m : layout.machines) {
    const double off = geometry::IndexedPolygon(outlineInPlan(m.footprint, m.at, m.turn)).distanceTo(at);
    if (off > least || (best && off == least)) continue;
    best = &m;
    least = off;
  }
  return best;
}

// The machine that is selected, or that something selected is on.
const layout::Machine* machineSelected(const Layout& layout, const std::string& selected) {
  const auto thing = edits::findThing(layout, selected);
  using enum ThingKind;
  if (!thing || (thing->kind != Machine && thing->kind != Station && thing->kind != MachineDevice))
    return nullptr;
  return &layout.machines[thing->index];
}

std::optional<Added> putDoor(const Layout& layout, Point at) {
  const auto wall = nearestWall(layout, at, kFarthestWall_mm);
  if (!wall) return std::nullopt;
  return edits::addDoor(layout, layout.rooms[wall->room].id, roomBehind(layout, *wall),
                        doorWithin(*wall, kUsualDoor_mm), kUsualDoor_mm);
}

std::optional<Added> putStation(const Layout& layout, const std::string& role, Point at,
                                const std::string& selected) {
  const layout::Machine* m = machineSelected(layout, selected);
  if (!m) m = machineNear(layout, at, kFarthestWall_mm);
  if (!m) return std::nullopt;
  static const std::map<std::string, layout::Role> roles = {{"operator", layout::Role::Operator},
                                                            {"helper", layout::Role::Helper},
                                                            {"setter", layout::Role::Setter},
                                                            {"instructor", layout::Role::Instructor}};
  const auto known = roles.find(role);
  return edits::addStation(layout, m->id, known == roles.end() ? layout::Role::Operator : known->second, at);
}

Added onMachine(const Layout& layout, const layout::Machine& m, const layout::DeviceKind& kind, Point at,
                bool pulled) {
  const Point in_frame = edits::inFrame(m, at);
  OnFootprint side = nearestSide(m.footprint, in_frame);
  if (!pulled) side.at = in_frame;
  Added added = edits::addMachineDevice(layout, m.id, kind, at);
  added.edit.after = edits::hangOnMachine(added.edit.after, added.id, side.at, side.faces).after;
  return added;
}

std::optional<Added> putDevice(const Layout& layout, const layout::DeviceKind& kind, Point at, bool pulled) {
  if (const layout::Machine* m = machineNear(layout, at, kFromMachine_mm))
    return onMachine(layout, *m, kind, at, pulled);
  const auto wall = nearestWall(layout, at, kFromWall_mm);
  const double faces = wall ? wall->faces : 270;
  // What hangs on a wall usually stops the room it hangs in.
  std::optional<layout::Stops> stops;
  if (wall && kind.counts_as_stop) stops = layout::Stops{false, {layout.rooms[wall->room].id}};
  return edits::addWallDevice(layout, kind, wall && pulled ? wall->at : at, faces, stops);
}

std::optional<Added> putPhone(const Layout& layout, Point at, bool pulled) {
  const auto wall = nearestWall(layout, at, kFromWall_mm);
  return edits::addPhone(layout, QCoreApplication::translate("plan", "Emergency phone").toStdString(),
                         wall && pulled ? wall->at : at, wall ? wall->faces : 270);
}

std::string fixtureName(const std::string& key) {
  if (key == "column") return QCoreApplication::translate("plan", "Column").toStdString();
  if (key == "rack") return QCoreApplication::translate("plan", "Rack").toStdString();
  return QCoreApplication::translate("plan", "Bench").toStdString();
}

}  // namespace

std::string roomName(const Layout& layout) {
  return QCoreApplication::translate("plan", "Room %1").arg(layout.rooms.size() + 1).toStdString();
}

layout::Rectangle fixtureSize(const std::string& key) {
  if (key == "column") return {400, 400};
  if (key == "rack") return {2000, 600};
  return {1800, 750};
}

std::optional<Added> put(const Choice& choice, const Layout& layout, const Catalogue& catalogue, Point at,
                         double turn, const std::string& selected, bool pulled) {
  using What = Choice::What;
  switch (choice.what) {
    case What::Door:
      return putDoor(layout, at);
    case What::Fixture:
      return edits::addFixture(layout, fixtureName(choice.key), fixtureSize(choice.key), at, turn);
    case What::Station:
      return putStation(layout, choice.key, at, selected);
    case What::Phone:
      return putPhone(layout, at, pulled);
    case What::Machine:
      if (const auto* from = catalogue.templates.find(choice.key))
        return edits::addMachine(layout, *from, at, turn);
      return std::nullopt;
    case What::Device:
      if (const auto* kind = catalogue.kinds.find(choice.key)) return putDevice(layout, *kind, at, pulled);
      return std::nullopt;
    default:
      return std::nullopt;
  }
}

}  // namespace stopwalk::plan
