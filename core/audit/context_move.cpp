// How a context follows a move: what lies near it is worked out again, the rest stays.
#include <algorithm>

#include "core/audit/context_parts.h"
#include "core/floor/faults.h"
#include "core/geometry/polygon.h"

namespace stopwalk::audit {
namespace {

using geometry::Box;

// What stands farther from a device than this is nothing to who stands before it.
constexpr double kRoundDevice_mm = 1000;

bool meetsAny(const Box& box, const std::vector<Box>& places) {
  return std::ranges::any_of(places, [&](const Box& place) { return overlap(box, place); });
}

bool sameStanding(const floor::Standing& a, const floor::Standing& b) {
  return a.place.points == b.place.points && a.place.lines == b.place.lines && a.reason == b.reason &&
         a.room == b.room;
}

// The outline as a plan has it; empty where a plan leaves it out.
template <class Thing>
geometry::Polygon outlineOf(const Thing& thing) {
  const geometry::Polygon outline =
      geometry::withoutRepeats(layout::outlineInPlan(thing.footprint, thing.at, thing.turn));
  return floor::outlineTrouble(outline).empty() ? outline : geometry::Polygon{};
}

}  // namespace

std::optional<Changed> Context::move(std::span<const Move> moves) {
  Moving moving;
  if (!moveThings(moves, moving)) return std::nullopt;
  moveDevices(moving);
  moveStations(moving);
  moveFaults(moving);
  seekAgain(moving);
  moveWaysOut(moving);
  std::ranges::sort(moving.changed.stations);
  moving.changed.stations.erase(std::ranges::unique(moving.changed.stations).begin(),
                                moving.changed.stations.end());
  return std::move(moving.changed);
}

// The solids and what is known of the floor. False where a fault comes or goes, or a machine leaves its room.
bool Context::moveThings(std::span<const Move> moves, Moving& moving) {
  std::vector<floor::Walks::SolidMoved> solids;
  for (const Move& m : moves) {
    const std::size_t solid = m.machine ? solid_of_machine_[m.index] : solid_of_fixture_[m.index];
    geometry::Polygon outline =
        m.machine ? outlineOf(layout.machines[m.index]) : outlineOf(layout.fixtures[m.index]);
    if (solid == plan.solids.size() || outline.empty()) return false;
    moving.footprints.push_back(geometry::boxOf(plan.solids[solid].outline));
    moving.footprints.push_back(geometry::boxOf(outline));
    solids.push_back({solid, std::move(outline)});
    if (!m.machine) continue;
    const layout::Machine& machine = layout.machines[m.index];
    if (surroundings.roomAt(machine.at) != machine_rooms[m.index]) return false;
    if (!machine.hazard.empty() && !floor::outlineTrouble(geometry::withoutRepeats(machine.hazard)).empty())
      return false;
    moving.machines.push_back(m.index);
  }
  if (!walks_held->moveSolids(solids)) return false;
  if (other_hours_ && !other_hours_->walks->moveSolids(solids)) return false;
  for (const auto& [solid, outline] : solids) {
    plan.solids[solid].outline = outline;
    surroundings.moveSolid(solid, outline);
    if (!other_hours_) continue;
    other_hours_->plan.solids[solid].outline = outline;
    other_hours_->around.moveSolid(solid, outline);
  }
  for (const std::size_t m : moving.machines) {
    if (!layout.machines[m].hazard.empty()) moving.changed.places.push_back(surroundings.hazardBox(m));
    surroundings.moveMachine(m, layout.machines[m]);
    if (other_hours_) other_hours_->around.moveMachine(m, layout.machines[m]);
    if (!layout.machines[m].hazard.empty()) moving.changed.places.push_back(surroundings.hazardBox(m));
  }
  for (const Box& box : moving.footprints) moving.changed.places.push_back(box);
  for (const floor::Walks* w : {walks_held.get(), other_hours_ ? other_hours_->walks.get() : nullptr})
    if (w)
      for (const geometry::Segment& s : w->linesTouched())
        moving.changed.places.push_back(geometry::boxOf(s));
  return true;
}

// Those on what moved, and those before which it stands or stood.
void Context::moveDevices(Moving& moving) {
  std::vector<Box>& places = moving.changed.places;
  std::vector<std::size_t> who;
  for (const Box& box : moving.footprints)
    device_tree_.any(box.grown(kRoundDevice_mm), [&](std::size_t d) { return who.push_back(d), false; });
  for (std::size_t d = 0; d < devices.size(); ++d)
    if (devices[d].machine &&
        std::ranges::find(moving.machines, *devices[d].machine) != moving.machines.end())
      who.push_back(d);
  std::ranges::sort(who);
  who.erase(std::ranges::unique(who).begin(), who.end());
  for (const std::size_t d : who) {
    PlacedEntry entry = placedDevice(devices[d], surroundings);
    const bool moved = entry.placed.at != placed[d].placed.at || entry.placed.faces != placed[d].placed.faces;
    if (!moved && sameStanding(entry.standing, placed[d].standing)) continue;
    places.push_back(boxOf(placed[d].placed));
    places.push_back(boxOf(entry.placed));
    placed[d] = std::move(entry);
    if (moved) device_tree_.move(d, boxOf(placed[d].placed));
  }
  const auto seePhones = [&](std::vector<PlacedEntry>& known, const floor::Surroundings& around) {
    for (std::size_t p = 0; p < known.size(); ++p) {
      if (!meetsAny(boxOf(known[p].placed).grown(kRoundDevice_mm), moving.footprints)) continue;
      floor::Standing standing = around.standing(known[p].placed);
      if (sameStanding(standing, known[p].standing)) continue;
      known[p].standing = std::move(standing);
      moving.phones_changed = true;
      places.push_back(boxOf(known[p].placed));
    }
  };
  seePhones(phones, surroundings);
  if (other_hours_) seePhones(other_hours_->phones, other_hours_->around);
}

void Context::moveStations(Moving& moving) {
  std::vector<std::size_t> who;
  for (const Box& box : moving.footprints)
    station_tree_.any(box.grown(1), [&](std::size_t s) { return who.push_back(s), false; });
  on_what_moved_.clear();
  for (const std::size_t m : moving.machines)
    for (auto [s, end] = stationsOf(m); s < end; ++s) on_what_moved_.push_back(s);
  std::ranges::sort(on_what_moved_);
  who.insert(who.end(), on_what_moved_.begin(), on_what_moved_.end());
  std::ranges::sort(who);
  who.erase(std::ranges::unique(who).begin(), who.end());
  for (const std::size_t s : who) {
    StationEntry& entry = stations[s];
    const layout::Machine& m = machine(entry);
    const Point at = layout::toPlan(m.at, m.turn, entry.station->at);
    const bool on_floor = walks.onFloor(at);
    if (at == entry.at && on_floor == entry.on_floor) continue;
    moving.changed.places.push_back(geometry::boxOf(entry.at));
    moving.changed.places.push_back(geometry::boxOf(at));
    const auto room = surroundings.roomAt(at);
    entry.at = at;
    entry.room = room ? room : machine_rooms[entry.machine];
    entry.on_floor = on_floor;
    station_tree_.move(s, geometry::boxOf(at));
  }
}

// Of the machines that moved, that overlap them or whose stations they stand on.
void Context::moveFaults(const Moving& moving) {
  std::vector<std::size_t> who = moving.machines;
  for (const Box& box : moving.footprints) {
    surroundings.index().solids().boxes().any(box.grown(1), [&](std::size_t i) {
      if (plan.solids[i].is_machine) who.push_back(plan.solids[i].index);
      return false;
    });
    station_tree_.any(box.grown(1), [&](std::size_t s) { return who.push_back(stations[s].machine), false; });
  }
  std::ranges::sort(who);
  who.erase(std::ranges::unique(who).begin(), who.end());
  std::erase_if(plan.faults, [&](const floor::Fault& fault) {
    return fault.machine && std::ranges::binary_search(who, *fault.machine);
  });
  for (floor::Fault& fault : floor::placementFaults(layout, plan, surroundings.index(), who))
    plan.faults.push_back(std::move(fault));
}

std::vector<char> Context::areOnWhatMoved(std::span<const std::size_t> who) const {
  std::vector<char> are;
  if (on_what_moved_.empty()) return are;
  for (const std::size_t s : who) are.push_back(std::ranges::binary_search(on_what_moved_, s));
  return are;
}

// Which of the stations have another way once it is sought again.
std::vector<std::size_t> Context::otherwise(Ways& ways, const std::vector<std::size_t>& who,
                                            const std::function<void()>& seek) {
  std::vector<Way> before;
  for (const std::size_t s : who) before.push_back(std::move(ways.of[s]));
  seek();
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < who.size(); ++i)
    if (ways.of[who[i]] != before[i]) found.push_back(who[i]);
  return found;
}

// Those whose way may be another one now.
std::vector<std::size_t> Context::touched(const Ways& ways, const Moving& moving, bool all) const {
  std::vector<std::size_t> who;
  for (std::size_t s = 0; s < stations.size(); ++s)
    if (all || ways.traces[s].meets(moving.changed.places)) who.push_back(s);
  return who;
}

void Context::seekAgain(Moving& moving) {
  const auto again = [&](Ways& ways, bool all, const auto& seek) {
    const std::vector<std::size_t> who = touched(ways, moving, all);
    const std::vector<std::size_t> found = otherwise(ways, who, [&] { seek(who); });
    moving.changed.stations.insert(moving.changed.stations.end(), found.begin(), found.end());
    return found;
  };
  again(stops, false, [&](const auto& who) { seekStops(who); });
  const std::vector<std::size_t> by_day = again(phones_reached, moving.phones_changed, [&](const auto& who) {
    seekPhones(walks, phones, who, phones_reached);
  });
  if (cut_off_ways_) again(*cut_off_ways_, false, [&](const auto& who) { seekCutOffs(who, *cut_off_ways_); });
  if (other_hours_ && !other_hours_->ways.of.empty()) seekAfterHours(moving, by_day);
}

void Context::seekAfterHours(Moving& moving, std::span<const std::size_t> otherwise_by_day) {
  OtherHours& other = *other_hours_;
  const std::vector<std::size_t> who = touched(other.ways, moving, moving.phones_changed);
  const std::vector<std::size_t> found = otherwise(other.ways, who, [&] {
    if (other.by_day) {
      other.by_day->phonesMoved(*this, other, moving.footprints, moving.phones_changed);
      for (const std::size_t s : otherwise_by_day) other.by_day->forget(s);
    }
    by_day_ = seekPhonesThen(other, who);
  });
  moving.changed.stations.insert(moving.changed.stations.end(), found.begin(), found.end());
}

}  // namespace stopwalk::audit
