#include "core/audit/context.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace stopwalk::audit {
namespace {

using geometry::Box;

constexpr double kMm = 1000;

std::vector<std::optional<std::size_t>> roomsOfMachines(const layout::Layout& layout,
                                                        const floor::Surroundings& around) {
  std::vector<std::optional<std::size_t>> rooms;
  for (const layout::Machine& m : layout.machines) rooms.push_back(around.roomAt(m.at));
  return rooms;
}

std::vector<PlacedEntry> placedDevices(const std::vector<DeviceEntry>& devices,
                                       const floor::Surroundings& around) {
  std::vector<PlacedEntry> placed;
  for (const DeviceEntry& d : devices) {
    floor::PlacedDevice p = around.placed(*d.device, *d.kind, d.machine);
    floor::Standing standing = around.standing(p);
    placed.push_back({std::move(p), std::move(standing)});
  }
  return placed;
}

std::vector<PlacedEntry> placedPhones(const layout::Layout& layout, const floor::Surroundings& around) {
  std::vector<PlacedEntry> placed;
  for (const layout::Phone& phone : layout.phones) {
    floor::PlacedDevice p = around.placed(phone);
    floor::Standing standing = around.standing(p);
    placed.push_back({std::move(p), std::move(standing)});
  }
  return placed;
}

std::vector<StationEntry> stationsOf(const layout::Layout& layout, const floor::Surroundings& around,
                                     const floor::Walks& walks,
                                     const std::vector<std::optional<std::size_t>>& machine_rooms) {
  std::vector<StationEntry> stations;
  for (std::size_t m = 0; m < layout.machines.size(); ++m) {
    const layout::Machine& machine = layout.machines[m];
    for (const layout::Station& s : machine.stations) {
      const Point at = layout::toPlan(machine.at, machine.turn, s.at);
      const auto room = around.roomAt(at);
      stations.push_back(
          {machine.id + "/" + s.id, m, &s, at, room ? room : machine_rooms[m], walks.onFloor(at)});
    }
  }
  return stations;
}

Way wayOf(const floor::Walk& walk, std::size_t index) {
  if (!walk.found()) return {};
  Way way;
  way.status = walk.status == floor::WalkStatus::Narrow ? Status::Narrow : Status::Walk;
  way.index = index;
  way.walk_m = walk.length_mm / kMm;
  way.clear_width_m = 2 * walk.clearance_mm / kMm;
  way.path = walk.path;
  return way;
}

// Of those that can be walked to: where they stand in the list, and their standing places.
struct Walkable {
  std::vector<std::size_t> index;
  std::vector<Place> places;
};

Walkable walkableOf(const std::vector<PlacedEntry>& all, std::span<const std::size_t> wanted) {
  Walkable w;
  for (const std::size_t i : wanted) {
    if (all[i].standing.place.empty()) continue;
    w.index.push_back(i);
    w.places.push_back(all[i].standing.place);
  }
  return w;
}

std::vector<Way> phoneWaysOn(const floor::Walks& walks, const std::vector<StationEntry>& stations,
                             const std::vector<PlacedEntry>& phones) {
  std::vector<std::size_t> all(phones.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
  const Walkable w = walkableOf(phones, all);
  std::vector<Way> ways(stations.size());
  std::vector<Point> from;
  std::vector<std::size_t> who;
  for (std::size_t s = 0; s < stations.size(); ++s) {
    // On the floor of these hours: a station may stand in a doorway.
    const bool on_floor = walks.onFloor(stations[s].at);
    ways[s].status = !on_floor ? Status::Unmeasured : phones.empty() ? Status::None : Status::Unreachable;
    if (on_floor) from.push_back(stations[s].at), who.push_back(s);
  }
  if (w.places.empty() || from.empty()) return ways;
  const std::vector<floor::Nearest> nearest = walks.nearestForAll(from, w.places);
  for (std::size_t i = 0; i < who.size(); ++i)
    if (nearest[i].index && nearest[i].walk.found())
      ways[who[i]] = wayOf(nearest[i].walk, w.index[*nearest[i].index]);
  return ways;
}

Box boxOf(const floor::PlacedDevice& d) {
  Box box = geometry::boxOf(d.at);
  const Point half = (d.length.value_or(0) / 2) * geometry::leftOf(geometry::direction(d.faces));
  box.add(d.at + half);
  box.add(d.at - half);
  return box;
}

geometry::BoxTree treeOf(const std::vector<StationEntry>& stations) {
  std::vector<Box> boxes;
  for (const StationEntry& s : stations) boxes.push_back(geometry::boxOf(s.at));
  return geometry::BoxTree(boxes);
}

geometry::BoxTree treeOf(const std::vector<PlacedEntry>& devices) {
  std::vector<Box> boxes;
  for (const PlacedEntry& d : devices) boxes.push_back(boxOf(d.placed));
  return geometry::BoxTree(boxes);
}

std::vector<std::size_t> near(const geometry::BoxTree& tree, Point from, double radius_mm) {
  std::vector<std::size_t> found;
  tree.any(geometry::boxOf(from).grown(radius_mm), [&](std::size_t i) { return found.push_back(i), false; });
  std::ranges::sort(found);
  return found;
}

}  // namespace

std::shared_ptr<const floor::Walks> LastWalks::next(floor::Hours hours, const floor::Plan& plan) {
  Pair& pair = of_hours_[static_cast<std::size_t>(hours)];
  pair.former = std::move(pair.last);  // must live while the next is asked
  return pair.last = std::make_shared<const floor::Walks>(floor::Walks::following(pair.former.get(), plan));
}

floor::Walks::Count LastWalks::count() const {
  floor::Walks::Count sum;
  for (const Pair& pair : of_hours_) {
    if (!pair.last) continue;
    sum.kept += pair.last->count().kept;
    sum.found += pair.last->count().found;
  }
  return sum;
}

namespace {

std::vector<std::optional<inspection::Date>> failedOn(const std::vector<DeviceEntry>& devices,
                                                      std::span<const inspection::FailedDevice> failed) {
  std::vector<std::optional<inspection::Date>> dates(devices.size());
  for (const inspection::FailedDevice& f : failed)
    if (const auto at = std::ranges::find(devices, f.device, &DeviceEntry::id); at != devices.end())
      dates[static_cast<std::size_t>(at - devices.begin())] = f.on;
  return dates;
}

std::vector<bool> outOfOrder(const std::vector<std::optional<inspection::Date>>& failed_on,
                             const Profile& profile) {
  std::vector<bool> out(failed_on.size(), false);
  if (!profile.inspection.failed_stops_count)
    for (std::size_t d = 0; d < out.size(); ++d) out[d] = failed_on[d].has_value();
  return out;
}

}  // namespace

Context::Context(const layout::Layout& of, const layout::DeviceKinds& kinds, const Profile& by,
                 floor::Hours at, std::span<const inspection::FailedDevice> failed, LastWalks* last)
    : layout(of),
      profile(by),
      hours(at),
      plan(floor::buildPlan(of, at)),
      surroundings(of, plan),
      walks_held(last ? last->next(at, plan) : std::make_shared<const floor::Walks>(plan)),
      walks(*walks_held),
      machine_rooms(roomsOfMachines(of, surroundings)),
      devices(devicesOf(of, kinds)),
      failed_on(failedOn(devices, failed)),
      relation(of, devices, machine_rooms, outOfOrder(failed_on, by)),
      placed(placedDevices(devices, surroundings)),
      phones(placedPhones(of, surroundings)),
      stations(stationsOf(of, surroundings, walks, machine_rooms)),
      stop_ways(stopWays()),
      phone_ways(phoneWaysOn(walks, stations, phones)),
      last_(last),
      station_tree_(treeOf(stations)),
      device_tree_(treeOf(placed)) {}

bool Context::mayUse(std::size_t station, std::size_t device) const {
  const StationEntry& s = stations[station];
  return !devices[device].kind->held || relation.isHeldAt(device, s.machine, *s.station);
}

double Context::straight_m(std::size_t station, std::size_t device) const {
  return floor::Surroundings::straightDistance(stations[station].at, placed[device].placed) / kMm;
}

std::optional<double> Context::atHandWithin_m(std::size_t station, std::size_t device,
                                              std::optional<double> reach_mm) const {
  if (!mayUse(station, device)) return std::nullopt;
  if (devices[device].kind->held) return straight_m(station, device);
  const floor::PlacedDevice& p = placed[device].placed;
  const auto found = reach_mm ? surroundings.atHand(stations[station].at, p, *reach_mm)
                              : surroundings.atHand(stations[station].at, p);
  return found ? std::optional<double>(*found / kMm) : std::nullopt;
}

std::optional<double> Context::atHand_m(std::size_t station, std::size_t device) const {
  return atHandWithin_m(station, device, std::nullopt);
}

std::optional<double> Context::atHand_m(std::size_t station, std::size_t device, double hand_m,
                                        double foot_m) const {
  return atHandWithin_m(station, device, kMm * (placed[device].placed.foot ? foot_m : hand_m));
}

Way Context::atHandOf(std::size_t station, std::span<const std::size_t> wanted) const {
  Way way;
  if (!stations[station].on_floor) {
    way.status = Status::Unmeasured;
    return way;
  }
  double nearest = std::numeric_limits<double>::infinity();
  for (const std::size_t d : wanted) {
    if (!mayUse(station, d)) continue;
    if (way.status == Status::None) way.status = Status::Unreachable;  // until a way is found
    const auto straight = atHand_m(station, d);
    if (!straight || *straight >= nearest) continue;
    nearest = *straight;
    way.status = Status::AtHand;
    way.index = d;
  }
  return way;
}

Way Context::nearestOf(std::size_t station, std::span<const std::size_t> wanted, double at_most_m) const {
  const Way at_hand = atHandOf(station, wanted);
  if (at_hand.status != Status::Unreachable) return at_hand;
  std::vector<std::size_t> usable(wanted.begin(), wanted.end());
  std::erase_if(usable, [&](std::size_t d) { return devices[d].kind->held; });
  const Walkable w = walkableOf(placed, usable);
  if (w.places.empty()) return at_hand;
  const floor::Nearest nearest = walks.nearest(stations[station].at, w.places, at_most_m * kMm);
  return nearest.index && nearest.walk.found() ? wayOf(nearest.walk, w.index[*nearest.index]) : at_hand;
}

std::vector<Way> Context::nearestOf(std::span<const std::size_t> who,
                                    std::span<const std::size_t> wanted) const {
  std::vector<Way> ways;
  std::vector<Point> from;
  std::vector<std::size_t> walking;
  for (std::size_t i = 0; i < who.size(); ++i) {
    ways.push_back(atHandOf(who[i], wanted));
    if (ways.back().status == Status::Unreachable) walking.push_back(i), from.push_back(stations[who[i]].at);
  }
  std::vector<std::size_t> usable(wanted.begin(), wanted.end());
  std::erase_if(usable, [&](std::size_t d) { return devices[d].kind->held; });
  const Walkable w = walkableOf(placed, usable);
  if (w.places.empty() || from.empty()) return ways;
  const std::vector<floor::Nearest> nearest = walks.nearestForAll(from, w.places);
  for (std::size_t i = 0; i < walking.size(); ++i)
    if (nearest[i].index && nearest[i].walk.found())
      ways[walking[i]] = wayOf(nearest[i].walk, w.index[*nearest[i].index]);
  return ways;
}

std::vector<Way> Context::stopWays() const {
  std::vector<Way> ways;
  std::vector<std::size_t> candidates;
  std::optional<std::size_t> machine;
  for (std::size_t s = 0; s < stations.size(); ++s) {
    if (machine != stations[s].machine) candidates = relation.candidates(stations[s].machine);
    machine = stations[s].machine;
    ways.push_back(nearestOf(s, candidates));
  }
  return ways;
}

std::vector<Way> Context::phoneWaysAt(floor::Hours other) const {
  if (other == hours) return phone_ways;
  const floor::Plan then = floor::buildPlan(layout, other);
  const floor::Surroundings around(layout, then);
  const auto walks_then = last_ ? last_->next(other, then) : std::make_shared<const floor::Walks>(then);
  return phoneWaysOn(*walks_then, stations, placedPhones(layout, around));
}

void Context::stationsNearestFirst(Point from, const std::function<double(std::size_t)>& next) const {
  const auto distance = [&](std::size_t s) { return geometry::distance(from, stations[s].at); };
  double worth = std::numeric_limits<double>::infinity();
  std::size_t asked = 0;
  for (double done = 0, radius = kMm; done < worth && asked < stations.size(); done = radius, radius *= 2) {
    std::vector<std::pair<double, std::size_t>> ring;
    for (const std::size_t s : near(station_tree_, from, radius))
      if (const double d = distance(s); (d > done || (done == 0 && d == 0)) && d <= radius)
        ring.emplace_back(d, s);
    std::ranges::sort(ring);
    for (const auto& [d, s] : ring) {
      if (d > worth) return;
      worth = next(s);
      ++asked;
    }
  }
}

std::vector<std::size_t> Context::stationsNear(Point from, double radius_mm) const {
  return near(station_tree_, from, radius_mm);
}

std::vector<std::size_t> Context::devicesNear(Point from, double radius_mm) const {
  return near(device_tree_, from, radius_mm);
}

}  // namespace stopwalk::audit
