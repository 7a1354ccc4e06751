#include "core/planning/round_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/files/device_kinds_reader.h"
#include "core/planning/round_plan.h"
#include "tests/support/random_layout.h"
#include "tests/support/slow_walks.h"

namespace stopwalk::planning {
namespace {

layout::Layout shopOf(std::uint64_t seed, int fewest, int most) {
  support::RandomLayoutOptions options;
  options.fewest_machines = fewest;
  options.most_machines = most;
  return support::randomLayout(seed, options);
}

std::vector<InspectedDevice> devicesOf(const layout::Layout& layout) {
  return inspectedDevices(layout, files::bundledDeviceKinds(), floor::buildPlan(layout, floor::Hours::Open));
}

double lengthOf(const std::vector<geometry::Point>& path) {
  double length = 0;
  for (std::size_t i = 1; i < path.size(); ++i) length += geometry::distance(path[i - 1], path[i]);
  return length;
}

// Legs as a walk is drawn: their arcs are chords of five degrees or finer, shorter by 0.04 % at most.
TEST(RoundOrder, OfManyDevicesIsAsLongAsItsLegsAndItsGapIsStated) {
  int shops = 0, slow = 0;
  double worst = 0;
  for (std::uint64_t seed = 1; shops < 12; ++seed) {
    const layout::Layout layout = shopOf(seed, 12, 26);
    const auto ids = idsOf(devicesOf(layout));
    if (ids.size() < 14 || ids.size() > 40) continue;
    const inspection::RoundWalk how{false, {}, seed % 2 == 0};
    const RoundOrder order = asWalked(ids, how, layout, files::bundledDeviceKinds());
    if (order.walk.shortest) continue;  // few can be walked to
    ++shops;
    EXPECT_EQ(order.devices.size(), ids.size());
    ASSERT_LE(order.walk.bound_mm, order.walk.length_mm) << seed;
    const auto gap = gapPercent(order.walk);
    ASSERT_TRUE(gap.has_value()) << seed << ": nothing is proven";
    EXPECT_LE(order.walk.length_mm * (1 - *gap / 100), order.walk.bound_mm + 1e-6) << seed;
    worst = std::max(worst, *gap);

    const WayPast way = wayPast(order.devices, how, layout, files::bundledDeviceKinds());
    ASSERT_EQ(way.legs.size() + !how.closed, order.walk.stops.size()) << seed;
    const floor::Plan plan = floor::buildPlan(layout, floor::Hours::Open);
    const floor::Walks walks(plan);
    double length = 0;
    for (std::size_t i = 0; i < way.legs.size(); ++i) {
      const floor::Walk& leg = way.legs[i].walk;
      const double drawn = lengthOf(leg.path);
      const double stated =
          i + 1 < order.walk.stops.size() ? order.walk.stops[i + 1].leg_mm : order.walk.back_mm;
      length += drawn;
      if (i > 0) {
        EXPECT_EQ(leg.path.front(), way.legs[i - 1].walk.path.back()) << seed << ": they join";
      }
      EXPECT_LE(drawn, stated + 0.01) << seed;
      EXPECT_GE(drawn, stated * (1 - 4e-4) - 0.01) << seed;
      const geometry::Point a = leg.path.front(), b = leg.path.back();
      if (i % 6 != 0 || !walks.keeps(a, 305) || !walks.keeps(b, 305)) continue;
      EXPECT_NEAR(stated, support::slowWalk(plan, 305, a, b), 0.01) << seed;
      ++slow;
    }
    EXPECT_NEAR(order.walk.length_mm, length, 4e-4 * length + 1) << seed;
  }
  RecordProperty("worst_gap_percent", std::to_string(worst));
  EXPECT_LT(worst, 10);
  EXPECT_GT(slow, 6);
}

TEST(RoundOrder, TheWayPastItsOwnStopsGoesItsOwnLegsAndPassesByWhereNobodyCanStand) {
  int legs_seen = 0, passed_by = 0;
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    const auto devices = devicesOf(layout);
    const RoundOrder order = asWalked(idsOf(devices), {}, layout, files::bundledDeviceKinds());
    std::vector<std::string> ids, blocked;
    for (const auto& stop : order.walk.stops) ids.push_back(stop.id);
    for (const auto& device : devices)
      if (!waypointAt(device.place)) blocked.push_back(device.id);
    ids.insert(ids.begin() + ids.size() / 2, blocked.begin(), blocked.end());
    const WayPast way = wayPast(ids, {}, layout, files::bundledDeviceKinds());
    EXPECT_EQ(way.not_reached, blocked) << seed;
    ASSERT_EQ(way.legs.size() + 1, std::max<std::size_t>(order.walk.stops.size(), 1)) << seed;
    for (std::size_t i = 0; i < way.legs.size(); ++i) {
      EXPECT_EQ(way.legs[i].to, order.walk.stops[i + 1].id) << seed;
      EXPECT_NEAR(way.legs[i].walk.length_mm, order.walk.stops[i + 1].leg_mm, 1e-3) << seed;
    }
    legs_seen += static_cast<int>(way.legs.size());
    passed_by += static_cast<int>(blocked.size());
  }
  EXPECT_GT(legs_seen, 50);
  EXPECT_GT(passed_by, 0);
}

TEST(RoundOrder, IsTheSameHoweverTheDevicesAreGiven) {
  const layout::Layout layout = shopOf(5, 10, 14);
  auto ids = idsOf(devicesOf(layout));
  const RoundOrder order = asWalked(ids, {}, layout, files::bundledDeviceKinds());
  std::ranges::reverse(ids);
  EXPECT_EQ(asWalked(ids, {}, layout, files::bundledDeviceKinds()).devices, order.devices);
  EXPECT_EQ(asWalked(order.devices, {}, layout, files::bundledDeviceKinds()).devices, order.devices);
  ids.resize(3);
  EXPECT_EQ(asWalked(ids, {}, layout, files::bundledDeviceKinds()).devices.size(), 3u);
}

TEST(RoundOrder, BeginsWhereItIsAskedToAndAPlaceThatIsNoDeviceOfItIsNotChecked) {
  const layout::Layout layout = shopOf(4, 6, 8);
  const auto ids = idsOf(devicesOf(layout));
  const RoundOrder any = asWalked(ids, {}, layout, files::bundledDeviceKinds());
  ASSERT_GE(any.walk.stops.size(), 3u);
  const std::string last = any.walk.stops.back().id;
  EXPECT_EQ(asWalked(ids, {false, last, false}, layout, files::bundledDeviceKinds()).devices.front(), last);
  std::vector<std::string> without = ids;
  std::erase(without, last);
  const RoundOrder from = asWalked(without, {false, last, true}, layout, files::bundledDeviceKinds());
  EXPECT_EQ(from.walk.stops.front().id, last);
  EXPECT_EQ(from.devices.size(), without.size());
  const WayPast way = wayPast(from.devices, {false, last, true}, layout, files::bundledDeviceKinds());
  ASSERT_EQ(way.legs.size(), from.walk.stops.size());
  EXPECT_EQ(way.legs.front().to, from.devices.front());
  EXPECT_EQ(way.legs.back().to, "");
  const RoundOrder nowhere =
      asWalked(ids, {false, "no-such-place", false}, layout, files::bundledDeviceKinds());
  EXPECT_TRUE(nowhere.devices.empty());
  EXPECT_TRUE(nowhere.no_start.starts_with("there is no such place")) << nowhere.no_start;
}

TEST(RoundOrder, NamesThoseThatNoWayLeadsToAndThePlanDrawsNoWayThere) {
  int left = 0, after = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    layout::Layout layout = support::randomLayout(seed);
    for (auto& door : layout.doors) door.locked = layout::Locked::AfterHours;
    const auto ids = idsOf(devicesOf(layout));
    for (const bool after_hours : {false, true}) {
      const inspection::RoundWalk how{after_hours, {}, false};
      const RoundOrder order = asWalked(ids, how, layout, files::bundledDeviceKinds());
      const WayPast way = wayPast(order.devices, how, layout, files::bundledDeviceKinds());
      std::vector<std::string> not_on_it;
      for (const auto& l : order.walk.left_out) not_on_it.push_back(l.id);
      EXPECT_EQ(way.not_reached, not_on_it) << seed;
      for (const auto& leg : way.legs) EXPECT_TRUE(leg.walk.found()) << seed;
      // However the plan has changed since it was ordered: who is cut off now is not who comes first.
      std::vector<std::string> cut_off_first = not_on_it;
      for (const auto& stop : order.walk.stops) cut_off_first.push_back(stop.id);
      EXPECT_LE(wayPast(cut_off_first, how, layout, files::bundledDeviceKinds()).not_reached.size(),
                not_on_it.size())
          << seed;
      (after_hours ? after : left) += static_cast<int>(not_on_it.size());
    }
  }
  EXPECT_GT(left, 0);
  EXPECT_GT(after, left) << "doors that are locked by night are not walked through";
}

}  // namespace
}  // namespace stopwalk::planning
