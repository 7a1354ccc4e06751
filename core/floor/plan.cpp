#include "core/floor/plan.h"

#include <map>
#include <variant>

#include "core/floor/blocking_walls.h"
#include "core/floor/door_overlaps.h"
#include "core/floor/doorway.h"
#include "core/floor/fault_text.h"
#include "core/floor/faults.h"
#include "core/floor/floor_index.h"
#include "core/floor/room_walls.h"
#include "core/geometry/polygon.h"
#include "core/layout/which.h"

namespace stopwalk::floor {

namespace {

using namespace geometry;

bool isOpen(const layout::Door& door, Hours hours) {
  return door.locked == layout::Locked::Never ||
         (door.locked == layout::Locked::AfterHours && hours == Hours::Open);
}

// The outline without repeated corners; empty, and the fault told, if it cannot be built.
Polygon built(const Polygon& outline, bool drawn, const std::string& what, const std::string& id,
              const std::string& room, layout::LengthUnit unit, std::vector<Fault>& faults) {
  Polygon clean = withoutRepeats(outline);
  // A rectangle cannot cross itself.
  const std::string trouble = drawn ? outlineTrouble(clean) : hasNoArea(clean) ? "has no area" : "";
  if (trouble.empty()) return clean;
  faults.push_back({id, room,
                    "The outline of " + what + " " + id + " with its corner at " +
                        place(outline.front(), unit) + " " + trouble + "; it is left out of the floor.",
                    std::nullopt, layout::whichWord("outline")});
  return {};
}

void addRooms(const layout::Layout& layout, Plan& plan) {
  for (const layout::Room& r : layout.rooms)
    plan.rooms.push_back(
        r.outline.empty() ? Polygon{} : built(r.outline, true, "room", r.id, r.id, layout.unit, plan.faults));
}

template <class Thing>
void addSolids(const std::vector<Thing>& things, bool machines, const std::string& what,
               layout::LengthUnit unit, Plan& plan) {
  for (std::size_t i = 0; i < things.size(); ++i) {
    const Thing& t = things[i];
    const Polygon outline = layout::outlineInPlan(t.footprint, t.at, t.turn);
    if (outline.empty()) continue;
    const bool drawn = std::holds_alternative<Polygon>(t.footprint);
    Polygon clean = built(outline, drawn, what, t.id, "", unit, plan.faults);
    if (!clean.empty()) plan.solids.push_back({std::move(clean), t.height, machines, i});
  }
}

// Doors in the order of the file; those that are open at these hours become passages.
std::vector<DoorPlan> planDoors(const layout::Layout& layout, const RoomWalls& walls,
                                std::vector<Fault>& faults) {
  std::map<std::string, std::size_t> rooms;
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (!walls.rooms()[i].empty()) rooms.emplace(layout.rooms[i].id, i);
  const auto room = [&](const std::string& id) {
    const auto found = rooms.find(id);
    return found == rooms.end() ? std::nullopt : std::optional(found->second);
  };
  std::vector<DoorPlan> doors;
  for (std::size_t i = 0; i < layout.doors.size(); ++i) {
    const layout::Door& d = layout.doors[i];
    doors.push_back(planDoor(layout, i, room(d.first), room(d.second), walls));
    if (!doors.back().fault.empty())
      faults.push_back({d.id, d.first, doors.back().fault, std::nullopt, doors.back().which});
  }
  return doors;
}

void tellOverlaps(const layout::Layout& layout, const DoorOverlaps& overlaps, std::vector<Fault>& faults) {
  for (const auto& [a, b] : overlaps.pairs()) {
    const layout::Door &first = layout.doors[a], &second = layout.doors[b];
    faults.push_back({second.id, second.first,
                      "Door " + second.id + " at " + place(second.at, layout.unit) + " lies over door " +
                          first.id + " at " + place(first.at, layout.unit) +
                          " in one opening; while one of them is shut, both are left shut.",
                      std::nullopt, first.id});
  }
}

// The doorways that are open. In an opening that doors share, the one that is shut wins, or the one that
// leads elsewhere.
std::vector<const Doorway*> openWays(const layout::Layout& layout, const std::vector<DoorPlan>& doors,
                                     Hours hours, const DoorOverlaps& overlaps, Plan& plan) {
  std::vector<bool> shut, closed, leads;
  for (std::size_t i = 0; i < doors.size(); ++i) {
    shut.push_back(!isOpen(layout.doors[i], hours) || !doors[i].fault.empty());
    closed.push_back(shut.back() || !doors[i].way);
    leads.push_back(doors[i].way.has_value());
  }
  plan.shut = overlaps.underAny(shut);
  closed = overlaps.underAny(closed);
  const std::vector<bool> under_passage = overlaps.underAny(leads);
  for (std::size_t i = 0; i < doors.size(); ++i)
    if (leads[i] ? closed[i] : under_passage[i]) plan.shut[i] = true;
  std::vector<const Doorway*> open;
  for (std::size_t i = 0; i < doors.size(); ++i) {
    if (closed[i]) continue;
    open.push_back(&*doors[i].way);
    plan.passages.insert(plan.passages.end(), doors[i].way->passages.begin(), doors[i].way->passages.end());
  }
  return open;
}

void checkHazards(const layout::Layout& layout, std::vector<Fault>& faults) {
  for (const layout::Machine& m : layout.machines) {
    if (m.hazard.empty()) continue;
    const std::string trouble = outlineTrouble(withoutRepeats(m.hazard));
    if (!trouble.empty())
      faults.push_back(
          {m.id, "",
           "The hazard outline of machine " + m.id + " at " + place(m.at, layout.unit) + " " + trouble + ".",
           std::nullopt, layout::whichWord("hazard")});
  }
}

}  // namespace

Polygon outlineOf(const Passage& p) {
  return {p.first.a, p.first.b, p.second.b, p.second.a};
}

std::vector<Polygon> roomsOf(const layout::Layout& layout) {
  Plan plan;
  addRooms(layout, plan);
  return std::move(plan.rooms);
}

Plan buildPlan(const layout::Layout& layout, Hours hours) {
  Plan plan;
  addRooms(layout, plan);
  std::vector<IndexedPolygon> rooms(plan.rooms.begin(), plan.rooms.end());
  const IndexedPolygons indexed(std::move(rooms));
  const RoomWalls walls(indexed);
  const std::vector<DoorPlan> doors = planDoors(layout, walls, plan.faults);
  const DoorOverlaps overlaps(doors, walls);
  tellOverlaps(layout, overlaps, plan.faults);
  const std::vector<const Doorway*> open = openWays(layout, doors, hours, overlaps, plan);
  plan.walls = blockingWalls(walls, open);
  addSolids(layout.fixtures, false, "fixture", layout.unit, plan);
  addSolids(layout.machines, true, "machine", layout.unit, plan);
  checkHazards(layout, plan.faults);
  const FloorIndex index(plan);
  for (Fault& fault : placementFaults(layout, plan, index)) plan.faults.push_back(std::move(fault));
  return plan;
}

}  // namespace stopwalk::floor
