#include "core/audit/context.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/audit/context_parts.h"

namespace stopwalk::audit {

geometry::Box boxOf(const floor::PlacedDevice& d) {
  geometry::Box box = geometry::boxOf(d.at);
  const Point half = (d.length.value_or(0) / 2) * geometry::leftOf(geometry::direction(d.faces));
  box.add(d.at + half);
  box.add(d.at - half);
  return box;
}

PlacedEntry placedDevice(const DeviceEntry& device, const floor::Surroundings& around) {
  floor::PlacedDevice p = around.placed(*device.device, *device.kind, device.machine);
  floor::Standing standing = around.standing(p);
  return {std::move(p), std::move(standing)};
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

namespace {

using geometry::Box;

constexpr double kMm = 1000;
constexpr double kTouches_mm = 10;

std::vector<std::optional<std::size_t>> roomsOfMachines(const layout::Layout& layout,
                                                        const floor::Surroundings& around) {
  std::vector<std::optional<std::size_t>> rooms;
  for (const layout::Machine& m : layout.machines) rooms.push_back(around.roomAt(m.at));
  return rooms;
}

std::vector<PlacedEntry> placedDevices(const std::vector<DeviceEntry>& devices,
                                       const floor::Surroundings& around) {
  std::vector<PlacedEntry> placed;
  for (const DeviceEntry& d : devices) placed.push_back(placedDevice(d, around));
  return placed;
}

std::vector<StationEntry> allStations(const layout::Layout& layout, const floor::Surroundings& around,
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

// What lies on the reach from a person to a device, and touches it.
Box boxBetween(Point p, const floor::PlacedDevice& d) {
  Box box = boxOf(d);
  box.add(p);
  return box.grown(kTouches_mm);
}

std::vector<std::size_t> firstStations(const layout::Layout& layout) {
  std::vector<std::size_t> first{0};
  for (const layout::Machine& m : layout.machines) first.push_back(first.back() + m.stations.size());
  return first;
}

// For each of so many things of the layout its solid.
std::vector<std::size_t> solidsOf(const floor::Plan& plan, bool machines, std::size_t count) {
  std::vector<std::size_t> solids(count, plan.solids.size());
  for (std::size_t i = 0; i < plan.solids.size(); ++i)
    if (plan.solids[i].is_machine == machines) solids[plan.solids[i].index] = i;
  return solids;
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

std::shared_ptr<floor::Walks> LastWalks::next(floor::Hours hours, const floor::Plan& plan) {
  std::shared_ptr<floor::Walks>& last = of_hours_[static_cast<std::size_t>(hours)];
  return last = std::make_shared<floor::Walks>(floor::Walks::following(last.get(), plan));
}

floor::Walks::Count LastWalks::count() const {
  floor::Walks::Count sum;
  for (const std::shared_ptr<floor::Walks>& last : of_hours_) {
    if (!last) continue;
    sum.kept += last->count().kept;
    sum.found += last->count().found;
  }
  return sum;
}

namespace {

using Failures = std::vector<std::optional<inspection::FailedDevice>>;

Failures failuresOf(const std::vector<DeviceEntry>& devices,
                    std::span<const inspection::FailedDevice> failed) {
  Failures failures(devices.size());
  for (const inspection::FailedDevice& f : failed)
    if (const auto at = std::ranges::find(devices, f.device, &DeviceEntry::id); at != devices.end())
      failures[static_cast<std::size_t>(at - devices.begin())] = f;
  return failures;
}

std::vector<bool> outOfOrder(const Failures& failures, const Profile& profile) {
  std::vector<bool> out(failures.size(), false);
  if (!profile.inspection.failed_stops_count)
    for (std::size_t d = 0; d < out.size(); ++d) out[d] = failures[d].has_value();
  return out;
}

}  // namespace

Context::Context(const layout::Layout& of, const layout::DeviceKinds& kinds, const Profile& by,
                 floor::Hours at, std::span<const inspection::FailedDevice> failed, LastWalks* last,
                 const Wanted& wanted)
    : layout(of),
      profile(by),
      hours(at),
      plan(floor::buildPlan(of, at)),
      surroundings(of, plan),
      walks_held(last ? last->next(at, plan) : std::make_shared<floor::Walks>(plan)),
      walks(*walks_held),
      machine_rooms(roomsOfMachines(of, surroundings)),
      devices(devicesOf(of, kinds)),
      failures(failuresOf(devices, failed)),
      relation(of, devices, machine_rooms, outOfOrder(failures, by)),
      placed(placedDevices(devices, surroundings)),
      phones(placedPhones(of, surroundings)),
      stations(allStations(of, surroundings, walks, machine_rooms)),
      stop_ways(stops.of),
      phone_ways(phones_reached.of),
      room_names_(of.rooms),
      machine_names_(of.machines),
      phone_names_(of.phones),
      last_(last),
      station_tree_(treeOf(stations)),
      device_tree_(treeOf(placed)),
      first_station_(firstStations(of)),
      solid_of_machine_(solidsOf(plan, true, of.machines.size())),
      solid_of_fixture_(solidsOf(plan, false, of.fixtures.size())),
      candidates_(of.machines.size()),
      cut_offs_(of.rooms.size()) {
  std::vector<std::size_t> all(stations.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  constexpr std::size_t kBetweenLooks = 64;
  for (std::span<const std::size_t> rest = all; !rest.empty();) {
    goOnIf(wanted);
    seekStops(rest.first(std::min(kBetweenLooks, rest.size())));
    rest = rest.subspan(std::min(kBetweenLooks, rest.size()));
  }
  seekPhones(walks, phones, all, phones_reached);
}

Context::~Context() = default;

std::pair<std::size_t, std::size_t> Context::stationsOf(std::size_t machine) const {
  return {first_station_[machine], first_station_[machine + 1]};
}

const std::vector<std::size_t>& Context::candidates(std::size_t machine) const {
  auto& known = candidates_[machine];
  if (!known) known = relation.candidates(machine);
  for (const std::size_t d : *known) note(boxOf(placed[d].placed));
  return *known;
}

const std::vector<std::size_t>& Context::cutOffs(std::size_t room) const {
  auto& known = cut_offs_[room];
  if (!known) known = relation.cutOffs(room);
  for (const std::size_t d : *known) note(boxOf(placed[d].placed));
  return *known;
}

bool Context::mayUse(std::size_t station, std::size_t device) const {
  const StationEntry& s = stations[station];
  return !devices[device].kind->held || relation.isHeldAt(device, s.machine, *s.station);
}

double Context::straight_m(std::size_t station, std::size_t device) const {
  note(geometry::boxOf(stations[station].at));
  note(boxOf(placed[device].placed));
  return floor::Surroundings::straightDistance(stations[station].at, placed[device].placed) / kMm;
}

std::optional<double> Context::atHandWithin_m(std::size_t station, std::size_t device,
                                              std::optional<double> reach_mm) const {
  if (!mayUse(station, device)) return std::nullopt;
  const double straight = straight_m(station, device);
  if (devices[device].kind->held) return straight;
  const floor::PlacedDevice& p = placed[device].placed;
  const double reach = reach_mm.value_or(p.foot ? floor::kFootReach_mm : floor::kHandReach_mm);
  if (straight * kMm <= reach + 1) note(boxBetween(stations[station].at, p));
  const auto found = surroundings.atHand(stations[station].at, p, reach);
  return found ? std::optional<double>(*found / kMm) : std::nullopt;
}

bool Context::inSight(std::size_t station, std::size_t device) const {
  note(boxBetween(stations[station].at, placed[device].placed));
  return surroundings.inSight(stations[station].at, placed[device].placed);
}

bool Context::clearBetween(Point a, Point b) const {
  note(geometry::boxOf(geometry::Segment{a, b}).grown(kTouches_mm));
  return surroundings.clearBetween(a, b);
}

std::optional<double> Context::atHand_m(std::size_t station, std::size_t device) const {
  return atHandWithin_m(station, device, std::nullopt);
}

std::optional<double> Context::atHand_m(std::size_t station, std::size_t device, double hand_m,
                                        double foot_m) const {
  return atHandWithin_m(station, device, kMm * (placed[device].placed.foot ? foot_m : hand_m));
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
    note(geometry::boxOf(from).grown(radius));
    for (const auto& [d, s] : ring) {
      if (d > worth) return;
      worth = next(s);
      ++asked;
    }
  }
  if (asked == stations.size()) noteAll();
}

std::vector<std::size_t> Context::stationsNear(Point from, double radius_mm) const {
  note(geometry::boxOf(from).grown(radius_mm));
  return near(station_tree_, from, radius_mm);
}

std::vector<std::size_t> Context::devicesNear(Point from, double radius_mm) const {
  note(geometry::boxOf(from).grown(radius_mm));
  return near(device_tree_, from, radius_mm);
}

}  // namespace stopwalk::audit
