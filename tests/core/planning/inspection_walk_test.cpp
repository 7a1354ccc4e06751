#include "core/planning/inspection_walk.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/files/device_kinds_reader.h"
#include "core/planning/round_plan.h"
#include "tests/support/random_layout.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::planning {
namespace {

struct Shop {
  explicit Shop(const layout::Layout& layout, floor::Hours hours = floor::Hours::Open)
      : plan(floor::buildPlan(layout, hours)),
        walks(plan, floor::kMeasuringClearance_mm, floor::Paths::LengthsOnly),
        devices(inspectedDevices(layout, files::bundledDeviceKinds(), plan)) {}

  floor::Plan plan;
  floor::Walks walks;
  std::vector<InspectedDevice> devices;
};

std::vector<std::string> idsOf(const std::vector<InspectedDevice>& devices) {
  std::vector<std::string> ids;
  for (const auto& d : devices) ids.push_back(d.id);
  std::ranges::sort(ids);
  return ids;
}

TEST(InspectionWalk, NamesEveryDeviceOnceOnTheWalkOrLeftOut) {
  int left_out = 0, searched = 0;
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    support::RandomLayoutOptions options;
    if (seed % 3 == 0) options.fewest_machines = 30, options.most_machines = 40;
    const Shop shop(support::randomLayout(seed, options));
    const InspectionWalk walk = inspectionWalk(shop.devices, shop.walks, std::nullopt, seed % 2 == 0);
    std::vector<std::string> named;
    double length = walk.back_mm;
    for (const auto& stop : walk.stops) named.push_back(stop.id), length += stop.leg_mm;
    for (const auto& left : walk.left_out) {
      named.push_back(left.id);
      EXPECT_FALSE(left.why.empty()) << seed;
    }
    std::ranges::sort(named);
    EXPECT_EQ(named, idsOf(shop.devices)) << seed;
    EXPECT_NEAR(walk.length_mm, length, 1e-6) << seed;
    EXPECT_LE(walk.bound_mm, walk.length_mm) << seed;
    left_out += !walk.left_out.empty();
    searched += !walk.shortest;
  }
  EXPECT_GT(left_out, 0);
  EXPECT_GT(searched, 0);
}

TEST(InspectedDevices, AreHeldAgainstRecordsAlikeWithTheFloorAndWithout) {
  int stops = 0, others = 0;
  std::vector<layout::Layout> layouts = {support::shopLayout(support::kShopSizes[1])};
  for (std::uint64_t seed = 1; seed <= 20; ++seed) layouts.push_back(support::randomLayout(seed));
  for (const layout::Layout& layout : layouts) {
    const auto now = devicesNow(layout, files::bundledDeviceKinds());
    EXPECT_EQ(now, asOf(Shop(layout).devices, {}).devices);
    for (const inspection::DeviceNow& device : now) ++(device.is_stop ? stops : others);
  }
  EXPECT_GT(stops, 0);
  EXPECT_GT(others, 0);
}

TEST(InspectionWalk, LegsAreTheWalksBetweenThePlacesAndTheSameBothWays) {
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    const Shop shop(support::randomLayout(seed));
    const InspectionWalk walk = inspectionWalk(shop.devices, shop.walks, std::nullopt, false);
    const auto place = [&](const std::string& id) {
      return std::ranges::find(shop.devices, id, &InspectedDevice::id)->place;
    };
    for (std::size_t i = 1; i < walk.stops.size(); ++i) {
      const floor::Place from = place(walk.stops[i - 1].id), to = place(walk.stops[i].id);
      // Never below the nearest of a bar's places.
      EXPECT_GE(walk.stops[i].leg_mm, shop.walks.between(from, to).length_mm - 0.001) << seed;
      if (from.points.empty() || to.points.empty()) continue;
      const geometry::Point a = from.points.front(), b = to.points.front();
      EXPECT_NEAR(walk.stops[i].leg_mm, shop.walks.between(b, a).length_mm, 0.001) << seed;
      EXPECT_GE(walk.stops[i].leg_mm, geometry::distance(a, b) - 0.001) << seed;
    }
  }
}

// A door that is locked after hours may lengthen the walk or leave a device out.
// Of a bar or cord another stretch may be the longest where a door is shut, and a gap shorter than the way
// that is left: such layouts are passed by.
TEST(InspectionWalk, DoorsThatAreShutLengthenItOrLeaveDevicesOut) {
  int left_out = 0, compared = 0, longer = 0;
  for (std::uint64_t seed = 1; seed <= 90; ++seed) {
    layout::Layout layout = support::randomLayout(seed);
    const Shop open(layout);
    for (std::size_t i = seed % 3; i < layout.doors.size(); i += seed % 3 + 1)
      layout.doors[i].locked = layout::Locked::AfterHours;
    const Shop after(layout, floor::Hours::After);
    const auto walked = [](const std::vector<InspectedDevice>& devices, const Shop& shop) {
      return inspectionWalk(devices, shop.walks, std::nullopt, false);
    };
    const InspectionWalk by_night = walked(after.devices, after);
    std::vector<InspectedDevice> same;  // past which one goes at night, by day
    bool stand_there = true;
    for (std::size_t d = 0; d < open.devices.size(); ++d) {
      const std::string& id = open.devices[d].id;
      if (std::ranges::find(by_night.stops, id, &InspectionWalk::Stop::id) == by_night.stops.end()) continue;
      same.push_back(open.devices[d]);
      stand_there = stand_there && waypointAt(open.devices[d].place) == waypointAt(after.devices[d].place);
    }
    const InspectionWalk all = walked(open.devices, open);
    EXPECT_GE(by_night.left_out.size(), all.left_out.size()) << seed;
    left_out += by_night.left_out.size() > all.left_out.size();
    const InspectionWalk by_day = walked(same, open);
    EXPECT_TRUE(by_day.left_out.empty()) << seed;
    const bool narrow = std::ranges::any_of(by_night.stops, &InspectionWalk::Stop::narrow);
    if (!stand_there || narrow || !by_day.shortest) continue;
    ++compared;
    EXPECT_GE(by_night.length_mm, by_day.length_mm - 0.01) << seed;
    longer += by_night.length_mm > by_day.length_mm + 1;
  }
  EXPECT_GT(left_out, 0);
  EXPECT_GT(compared, 30);
  EXPECT_GT(longer, 0);
}

TEST(InspectionWalk, BeginsAtTheStartAskedFor) {
  const Shop shop(support::randomLayout(4));
  const InspectionWalk any = inspectionWalk(shop.devices, shop.walks, std::nullopt, false);
  ASSERT_GE(any.stops.size(), 2u);
  const std::string last = any.stops.back().id;
  const InspectionWalk from_last = inspectionWalk(shop.devices, shop.walks, WalkStart{last, {}}, false);
  EXPECT_EQ(from_last.stops.front().id, last);
  EXPECT_EQ(from_last.stops.size(), any.stops.size());

  const floor::Place corner = std::ranges::find(shop.devices, last, &InspectedDevice::id)->place;
  const InspectionWalk from_place =
      inspectionWalk(shop.devices, shop.walks, WalkStart{"the door", corner}, false);
  EXPECT_EQ(from_place.stops.front().id, "the door");
  EXPECT_EQ(from_place.stops.size(), any.stops.size() + 1);
}

TEST(InspectionWalk, OfNoDevicesIsEmpty) {
  const Shop shop(support::randomLayout(4));
  EXPECT_TRUE(inspectionWalk({}, shop.walks, std::nullopt, true).stops.empty());
}

}  // namespace
}  // namespace stopwalk::planning
