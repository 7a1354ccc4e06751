#pragma once

#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/inspection/bundle.h"
#include "core/inspection/record.h"
#include "core/inspection/schedule.h"
#include "core/planning/inspected_devices.h"

// What rounds and checks are made of, for the command line and the window alike.
namespace stopwalk::planning {

// What a round goes over.
struct RoundScope {
  std::string room;  // id; empty: all rooms
  bool due = false;  // only what is due
  bool operator==(const RoundScope&) const = default;
};
// As a record says it: `all`, `due`, `metal`, `due in metal`.
std::string wordOf(const RoundScope& scope);

// The ids of those on which something is due on the day, in their order. `failed`: what failed by more than
// these records.
std::vector<std::string> dueAmong(std::span<const InspectedDevice> devices,
                                  const inspection::Records& records, const inspection::Schedule& schedule,
                                  const inspection::Now& day,
                                  std::span<const inspection::FailedDevice> failed = {});
// What records of them are held against.
inspection::AsOf asOf(std::span<const InspectedDevice> devices, const inspection::Now& now);
inspection::AsOf asOf(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                      const inspection::Now& now);
// Of those that failed what the layout does not have, or not under that id, and nobody said to be removed.
std::vector<inspection::FailedDevice> notInLayout(std::span<const inspection::FailedDevice> failed,
                                                  const layout::Layout& layout);
// But for devices that were said to be removed, as long as the layout does not have them.
std::vector<inspection::FailedDevice> withoutRemoved(std::vector<inspection::FailedDevice> failed,
                                                     const layout::Layout& layout);
// The same of checks that ask for something to be done.
std::vector<const inspection::Check*> withoutRemoved(std::vector<const inspection::Check*> actions,
                                                     const std::set<std::string>& removed,
                                                     const layout::Layout& layout);
// The records of a period, with what is open now but of devices that were said to be removed.
inspection::Bundle bundleOf(const inspection::Records& records, const inspection::Schedule& schedule,
                            inspection::Date from, inspection::Date to, const inspection::AsOf& as_of,
                            const layout::Layout& layout);
// The ids in the scope, in the order of the file. `failed`: as above.
std::vector<std::string> devicesIn(const RoundScope& scope, std::span<const InspectedDevice> devices,
                                   const inspection::Records& records, const inspection::Schedule& schedule,
                                   const inspection::Now& day,
                                   std::span<const inspection::FailedDevice> failed = {});

std::vector<std::string> idsOf(std::span<const InspectedDevice> devices);
const InspectedDevice* findDevice(std::span<const InspectedDevice> devices, const std::string& id);

// The layout as a record names it.
inspection::LayoutThen layoutThen(const layout::Layout& layout, std::string sha256);
// A device that the layout does not have, as it was when it was checked last; none: it never was.
std::optional<InspectedDevice> lastKnown(const std::string& device, const inspection::Records& records);
// A check of the device in the round, with all but what was found.
inspection::Check beginCheck(const inspection::Round& round, const InspectedDevice& device,
                             inspection::Moment at, inspection::LayoutThen layout);

}  // namespace stopwalk::planning
