#include "core/planning/round_order.h"

#include <algorithm>
#include <cstdint>
#include <set>

#include "core/planning/joined_groups.h"
#include "core/planning/round_plan.h"
#include "core/planning/walk_start.h"

namespace stopwalk::planning {
namespace {

// What a walk from a place can be in, at the measuring clearance and at that of a body.
struct Parts {
  std::vector<std::int32_t> wide, narrow;
};

bool shareOne(const std::vector<std::int32_t>& a, const std::vector<std::int32_t>& b) {
  return std::ranges::find_first_of(a, b) != a.end();
}

bool areJoined(const Parts& a, const Parts& b) {
  return shareOne(a.wide, b.wide) || shareOne(a.narrow, b.narrow);
}

Parts partsOf(const InspectedDevice& device, const floor::Walks& walks) {
  const auto at = waypointAt(device.place);
  if (!at) return {};
  return {walks.parts({{*at}, {}}, floor::kMeasuringClearance_mm),
          walks.parts({{*at}, {}}, floor::kBodyHalfWidth_mm)};
}

// Devices that there is a way between from each to each, as they come: with the first of them or, where that
// is not asked for, as many as may be. The others are told.
std::vector<const InspectedDevice*> joinedOf(std::span<const InspectedDevice* const> devices,
                                             const floor::Walks& walks, bool with_first,
                                             std::vector<std::string>& others) {
  std::vector<Parts> parts;
  for (const InspectedDevice* device : devices) parts.push_back(partsOf(*device, walks));
  const auto areOf = [&](std::size_t a, std::size_t b) { return areJoined(parts[a], parts[b]); };
  const std::vector<std::size_t> group =
      with_first ? joinedTo(0, parts.size(), areOf) : largestGroup(parts.size(), areOf);
  std::vector<const InspectedDevice*> joined;
  for (std::size_t i = 0; i < devices.size(); ++i)
    std::ranges::binary_search(group, i) ? joined.push_back(devices[i]) : others.push_back(devices[i]->id);
  return joined;
}

}  // namespace

floor::Hours hoursOf(const inspection::RoundWalk& how) {
  return how.after_hours ? floor::Hours::After : floor::Hours::Open;
}

RoundOrder asWalked(std::span<const std::string> ids, const inspection::RoundWalk& how,
                    const layout::Layout& layout, const layout::DeviceKinds& kinds) {
  const floor::Plan plan = floor::buildPlan(layout, hoursOf(how));
  RoundOrder order;
  std::optional<WalkStart> start;
  if (!how.start.empty()) {
    FoundStart found = findStart(how.start, layout, kinds, plan);
    if (!found.start) return order.no_start = std::move(found.why), order;
    start = std::move(found.start);
  }
  const std::set<std::string> asked(ids.begin(), ids.end());
  std::vector<InspectedDevice> devices = inspectedDevices(layout, kinds, plan);
  std::erase_if(devices, [&](const InspectedDevice& d) { return !asked.contains(d.id); });
  const floor::Walks walks(plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly);
  order.walk = inspectionWalk(devices, walks, start, how.closed);
  for (const InspectionWalk::Stop& stop : order.walk.stops)
    if (asked.contains(stop.id)) order.devices.push_back(stop.id);
  for (const InspectionWalk::LeftOut& left : order.walk.left_out)
    if (asked.contains(left.id)) order.devices.push_back(left.id);
  return order;
}

WayPast wayPast(std::span<const std::string> ids, const inspection::RoundWalk& how,
                const layout::Layout& layout, const layout::DeviceKinds& kinds) {
  const floor::Plan plan = floor::buildPlan(layout, hoursOf(how));
  const std::vector<InspectedDevice> devices = inspectedDevices(layout, kinds, plan);
  std::vector<const InspectedDevice*> walked;
  for (const std::string& id : ids)
    if (const InspectedDevice* device = findDevice(devices, id)) walked.push_back(device);
  if (walked.empty()) return {};
  InspectedDevice start;
  if (!how.start.empty() && how.start != walked.front()->id)
    if (FoundStart found = findStart(how.start, layout, kinds, plan); found.start) {
      start.place = std::move(found.start->place);
      walked.insert(walked.begin(), &start);
    }
  const floor::Walks walks(plan);
  WayPast way;
  walked = joinedOf(walked, walks, !how.start.empty(), way.not_reached);
  InspectedDevice back;
  if (walked.empty()) return way;
  if (how.closed && walked.size() > 1) {
    back.place = walked.front()->place;
    walked.push_back(&back);
  }
  for (std::size_t i = 1; i < walked.size(); ++i)
    way.legs.push_back(
        {walked[i]->id, walks.between(*waypointAt(walked[i - 1]->place), *waypointAt(walked[i]->place))});
  return way;
}

}  // namespace stopwalk::planning
