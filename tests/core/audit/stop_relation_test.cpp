#include "core/audit/stop_relation.h"

#include <gtest/gtest.h>

#include "core/files/device_kinds_reader.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

// A random shop in which each device is also wired to some machines, to rooms, or to all.
layout::Layout wired(std::uint64_t seed) {
  layout::Layout layout = support::randomLayout(seed);
  support::Random random(seed);
  const auto wire = [&](layout::Device& device) {
    layout::Stops stops;
    for (const layout::Machine& m : layout.machines)
      if (random.chance(0.2)) stops.ids.push_back(m.id);
    for (const layout::Room& r : layout.rooms)
      if (random.chance(0.2)) stops.ids.push_back(r.id);
    stops.all = random.chance(0.1);
    if (random.chance(0.9)) device.stops = stops;
  };
  for (layout::Device& device : layout.devices) wire(device);
  for (layout::Machine& machine : layout.machines)
    for (layout::Device& device : machine.devices) wire(device);
  return layout;
}

TEST(StopRelation, TheMachinesOfADeviceAreThoseThatItStopsInTheirOrder) {
  const layout::DeviceKinds kinds = files::bundledDeviceKinds();
  std::size_t some = 0;
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    const layout::Layout layout = wired(seed);
    support::Random random(seed + 1000);
    std::vector<std::optional<std::size_t>> rooms(layout.machines.size());  // any, or none
    for (auto& room : rooms)
      if (const auto r = static_cast<std::size_t>(random.below(5)); r < layout.rooms.size()) room = r;
    const std::vector<DeviceEntry> devices = devicesOf(layout, kinds);
    const StopRelation relation(layout, devices, rooms);
    for (std::size_t d = 0; d < devices.size(); ++d) {
      std::vector<std::size_t> stopped;
      for (std::size_t m = 0; m < layout.machines.size(); ++m)
        if (relation.stops(d, m)) stopped.push_back(m);
      EXPECT_EQ(relation.machinesOf(d), stopped) << seed << " " << devices[d].id;
      EXPECT_EQ(relation.stopsNothing(d), stopped.empty()) << seed << " " << devices[d].id;
      some += stopped.size() > 1 && stopped.size() < layout.machines.size();
    }
  }
  EXPECT_GT(some, 100u);
}

}  // namespace
}  // namespace stopwalk::audit
