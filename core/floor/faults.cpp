#include "core/floor/faults.h"

#include <algorithm>
#include <cmath>

#include "core/floor/doorway.h"
#include "core/floor/fault_text.h"
#include "core/layout/which.h"

namespace stopwalk::floor {

namespace {

using namespace geometry;

// A heap of a thousand machines drawn at one place needs no thousand faults each.
constexpr std::size_t kMostNamed = 16;
constexpr std::size_t kMostLookedAt = 1000;

class Placement {
 public:
  Placement(const layout::Layout& layout, const Plan& plan, const FloorIndex& index)
      : layout_(layout), plan_(plan), index_(index), solid_of_machine_(layout.machines.size(), kNone) {
    for (std::size_t i = 0; i < plan.solids.size(); ++i)
      if (plan.solids[i].is_machine) solid_of_machine_[plan.solids[i].index] = i;
    for (const Solid& s : plan.solids) areas_.push_back(std::abs(signedArea(s.outline)));
  }

  std::vector<Fault> ofMachines(std::span<const std::size_t> machines) {
    for (const std::size_t i : machines) checkMachine(i);
    return std::move(faults_);
  }

  std::vector<Fault> all() {
    for (std::size_t i = 0; i < layout_.rooms.size(); ++i) checkRoom(i);
    for (std::size_t i = 0; i < layout_.machines.size(); ++i) checkMachine(i);
    machine_ = std::nullopt;
    for (const layout::Device& d : layout_.devices) checkAtRoom(d.id, "Device ", d.at);
    for (const layout::Phone& p : layout_.phones) checkAtRoom(p.id, "Phone ", p.at);
    return std::move(faults_);
  }

 private:
  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

  void add(const std::string& subject, std::string which, Point where, std::string text) {
    const auto room = index_.roomAt(where);
    faults_.push_back(
        {subject, room ? layout_.rooms[*room].id : "", std::move(text), machine_, std::move(which)});
  }

  void checkRoom(std::size_t i) {
    const layout::Room& room = layout_.rooms[i];
    std::vector<std::size_t> others;
    index_.rooms().boxes().any(index_.rooms()[i].box(), [&](std::size_t j) {
      if (j < i && overlapDeeper(index_.rooms()[j], index_.rooms()[i], kRoomOverlap_mm + kTouch_mm))
        others.push_back(j);
      return others.size() > kMostNamed;
    });
    std::ranges::sort(others);
    tellEach(others, layout_.rooms, "room", [&](const std::string& other, std::string which) {
      faults_.push_back({room.id, room.id,
                         "Room " + room.id + " with its corner at " +
                             place(room.outline.front(), layout_.unit) + " overlaps " + other +
                             " by more than " + lengthOf(kRoomOverlap_mm, layout_.unit) + ".",
                         std::nullopt, std::move(which)});
    });
  }

  // Each by its name and, where there are too many, that there are others.
  template <class Things, class Tell>
  static void tellEach(const std::vector<std::size_t>& others, const Things& things, const std::string& what,
                       const Tell& tell) {
    for (std::size_t i = 0; i < std::min(others.size(), kMostNamed); ++i)
      tell(what + " " + things[others[i]].id, things[others[i]].id);
    if (others.size() > kMostNamed) tell("other " + what + "s besides", layout::whichWord("others"));
  }

  void checkMachine(std::size_t i) {
    const layout::Machine& m = layout_.machines[i];
    machine_ = i;
    const bool in_room = index_.roomAt(m.at).has_value();
    if (!in_room)
      add(m.id, layout::whichWord("room"), m.at,
          "Machine " + m.id + " has its origin at " + place(m.at, layout_.unit) + ", in no room.");
    if (const std::size_t solid = solid_of_machine_[i]; solid != kNone) checkOverlap(m, solid);
    for (const layout::Station& s : m.stations) checkStation(m, s);
    for (std::size_t d = 0; in_room && !m.hand_held && d < m.devices.size(); ++d)
      checkAtRoom(m.id + "/" + m.devices[d].id, "Device ", layout::toPlan(m.at, m.turn, m.devices[d].at));
  }

  // The smaller of two machines stands in the larger.
  bool standsIn(std::size_t small, std::size_t large) const {
    if (!plan_.solids[large].is_machine) return false;
    const double a = areas_[small], b = areas_[large];
    if (std::abs(a - b) > kTouch_mm * std::max(a, b)) return a < b;
    return layout_.machines[plan_.solids[small].index].id < layout_.machines[plan_.solids[large].index].id;
  }

  // The solids about there, the first of the file; in a heap not all.
  std::vector<std::size_t> firstAt(const Box& box) const {
    std::vector<std::size_t> found;
    index_.solids().boxes().any(box, [&](std::size_t i) { return found.push_back(i), false; });
    std::ranges::sort(found);
    found.resize(std::min(found.size(), kMostLookedAt));
    return found;
  }

  void checkOverlap(const layout::Machine& m, std::size_t solid) {
    std::vector<std::size_t> others;
    const IndexedPolygon& outline = index_.solids()[solid];
    for (const std::size_t j : firstAt(outline.box())) {
      if (j != solid && standsIn(solid, j) &&
          overlapDeeper(index_.solids()[j], outline, kMachineOverlap_mm + kTouch_mm))
        others.push_back(plan_.solids[j].index);
      if (others.size() > kMostNamed) break;
    }
    tellEach(others, layout_.machines, "machine", [&](const std::string& other, std::string which) {
      add(m.id, std::move(which), m.at,
          "Machine " + m.id + " at " + place(m.at, layout_.unit) + " stands in " + other + " by more than " +
              lengthOf(kMachineOverlap_mm, layout_.unit) + ".");
    });
  }

  void checkStation(const layout::Machine& m, const layout::Station& s) {
    const Point p = layout::toPlan(m.at, m.turn, s.at);
    const std::string id = m.id + "/" + s.id;
    const std::string start = "Station " + id + " at " + place(p, layout_.unit);
    if (!index_.roomAt(p) && !index_.doorAt(p)) {
      add(id, layout::whichWord("floor"), p,
          start + " is in no room and no open passage; its distances are unmeasured.");
    } else if (const auto solid = solidAt(p)) {
      add(id, *solid, p, start + " is inside the footprint of " + *solid + "; its distances are unmeasured.");
    } else if (!index_.touchesFloor(p)) {
      add(id, layout::whichWord("floor"), p,
          start + " is where " + touchingAt(p) +
              " touch, with no floor between; its distances are unmeasured.");
    }
  }

  // Two of those that leave no floor there: "saw and bench", "saw and a wall".
  std::string touchingAt(Point p) const {
    std::vector<std::size_t> solids;
    index_.solids().boxes().any(boxOf(p).grown(kTouch_mm), [&](std::size_t i) {
      if (index_.solids()[i].holds(p, kTouch_mm)) solids.push_back(i);
      return false;
    });
    std::ranges::sort(solids);
    if (solids.empty()) return "two walls";
    return idOf(solids[0]) + " and " + (solids.size() > 1 ? idOf(solids[1]) : "a wall");
  }

  // What has `p` inside: the first in the order of the file, fixtures before machines.
  std::optional<std::string> solidAt(Point p) const {
    std::size_t first = kNone;
    index_.solids().boxes().any(boxOf(p), [&](std::size_t i) {
      if (i < first && index_.solids()[i].sideOf(p) == Side::Inside) first = i;
      return false;
    });
    return first == kNone ? std::nullopt : std::optional(idOf(first));
  }

  const std::string& idOf(std::size_t solid) const {
    const Solid& s = plan_.solids[solid];
    return s.is_machine ? layout_.machines[s.index].id : layout_.fixtures[s.index].id;
  }

  void checkAtRoom(const std::string& id, const std::string& what, Point p) {
    const double allowed = kFromRoom_mm + kTouch_mm;
    const bool near = index_.rooms().boxes().any(
        boxOf(p).grown(allowed), [&](std::size_t i) { return index_.rooms()[i].distanceTo(p) <= allowed; });
    if (!near)
      add(id, layout::whichWord("wall"), p,
          what + id + " at " + place(p, layout_.unit) + " is more than " +
              lengthOf(kFromRoom_mm, layout_.unit) + " from every room.");
  }

  const layout::Layout& layout_;
  const Plan& plan_;
  const FloorIndex& index_;
  std::vector<std::size_t> solid_of_machine_;
  std::vector<double> areas_;  // of the solids
  std::vector<Fault> faults_;
  std::optional<std::size_t> machine_;  // that is looked at
};

}  // namespace

std::string outlineTrouble(const Polygon& outline) {
  if (crossesItself(outline)) return "crosses itself";
  if (hasNoArea(outline)) return "has no area";
  return "";
}

std::vector<Fault> placementFaults(const layout::Layout& layout, const Plan& plan, const FloorIndex& index) {
  return Placement(layout, plan, index).all();
}

std::vector<Fault> placementFaults(const layout::Layout& layout, const Plan& plan, const FloorIndex& index,
                                   std::span<const std::size_t> machines) {
  return Placement(layout, plan, index).ofMachines(machines);
}

}  // namespace stopwalk::floor
