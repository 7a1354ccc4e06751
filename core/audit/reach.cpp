#include "core/audit/reach.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "core/audit/stop_relation.h"
#include "core/floor/surroundings.h"

namespace stopwalk::audit {
namespace {

constexpr double kMetre_mm = 1000;
constexpr double kFiveFeet_mm = 1524;

double contourOf(layout::LengthUnit unit) {
  const bool feet = unit == layout::LengthUnit::Foot || unit == layout::LengthUnit::Inch;
  return feet ? kFiveFeet_mm : kMetre_mm;
}

// The stops that the target asks for. What is held stops for nobody who walks to it.
std::vector<std::size_t> stopsFor(const ReachTarget& target, const layout::Layout& layout,
                                  const std::vector<DeviceEntry>& devices, const StopRelation& relation) {
  std::vector<std::size_t> found;
  if (target.what == ReachTarget::What::MachineStop) {
    const auto machine = std::ranges::find(layout.machines, target.machine, &layout::Machine::id);
    if (machine != layout.machines.end())
      found = relation.candidates(static_cast<std::size_t>(machine - layout.machines.begin()));
  } else {
    found.resize(devices.size());
    std::iota(found.begin(), found.end(), std::size_t{0});
  }
  std::erase_if(found, [&](std::size_t d) {
    return !devices[d].kind->counts_as_stop || devices[d].kind->held || relation.stopsNothing(d) ||
           relation.isOutOfOrder(d) || (target.what == ReachTarget::What::CutOff && !relation.isCutOff(d));
  });
  return found;
}

std::vector<floor::PlacedDevice> placedFor(const ReachTarget& target, const layout::Layout& layout,
                                           const layout::DeviceKinds& kinds,
                                           const floor::Surroundings& around,
                                           const std::vector<std::string>& out_of_order) {
  std::vector<floor::PlacedDevice> placed;
  if (target.what == ReachTarget::What::Phone) {
    for (const layout::Phone& phone : layout.phones) placed.push_back(around.placed(phone));
    return placed;
  }
  std::vector<std::optional<std::size_t>> rooms;
  for (const layout::Machine& m : layout.machines) rooms.push_back(around.roomAt(m.at));
  const std::vector<DeviceEntry> devices = devicesOf(layout, kinds);
  std::vector<bool> out;
  for (const DeviceEntry& device : devices)
    out.push_back(std::ranges::find(out_of_order, device.id) != out_of_order.end());
  const StopRelation relation(layout, devices, rooms, out);
  for (const std::size_t d : stopsFor(target, layout, devices, relation))
    placed.push_back(around.placed(*devices[d].device, *devices[d].kind, devices[d].machine));
  return placed;
}

}  // namespace

Reach reachOf(const layout::Layout& layout, const layout::DeviceKinds& kinds, floor::Hours hours,
              const ReachTarget& target, std::size_t most_samples,
              const std::vector<std::string>& out_of_order) {
  const floor::Plan plan = floor::buildPlan(layout, hours);
  const floor::Surroundings around(layout, plan);
  Reach reach;
  reach.target = target;
  reach.unit = layout.unit;
  reach.contour_mm = contourOf(layout.unit);
  std::vector<floor::Place> places;
  for (const floor::PlacedDevice& device : placedFor(target, layout, kinds, around, out_of_order)) {
    ++reach.devices;
    floor::Standing standing = around.standing(device);
    if (standing.place.empty())
      ++reach.blocked;
    else
      places.push_back(std::move(standing.place));
  }
  const floor::Walks walks(plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  reach.map = floor::ReachMap(plan, walks, places, floor::stepFor(plan, most_samples));
  reach.passages = plan.passages;
  reach.contours = floor::contoursOf(reach.map, reach.contour_mm);
  return reach;
}

}  // namespace stopwalk::audit
