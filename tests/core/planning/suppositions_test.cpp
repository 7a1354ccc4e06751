#include "core/planning/suppositions.h"

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::planning {
namespace {

audit::Report reportOf(const layout::Layout& layout, floor::Hours hours = floor::Hours::Open) {
  return audit::audit(layout, files::bundledDeviceKinds(), audit::defaultProfile(), hours);
}

// No way at all is farther than any.
double farness(const audit::Nearest& nearest) {
  return nearest.walk_m.value_or(std::numeric_limits<double>::infinity());
}

Suppositions randomOf(const layout::Layout& layout, support::Random& random) {
  Suppositions s;
  for (const auto& machine : layout.machines)
    for (const auto& device : machine.devices)
      if (random.between(0, 1) < 0.2) s.out_of_order.push_back(machine.id + "/" + device.id);
  for (const auto& device : layout.devices)
    if (random.between(0, 1) < 0.2) s.out_of_order.push_back(device.id);
  for (const auto& door : layout.doors)
    if (random.between(0, 1) < 0.3) s.shut.push_back(door.id);
  return s;
}

TEST(Suppositions, NoneLeaveTheLayoutAsItIs) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    EXPECT_EQ(supposed(layout, {}), layout) << seed;
  }
}

TEST(Suppositions, OfWhatIsNotThereChangeNothing) {
  const layout::Layout layout = support::randomLayout(3);
  Suppositions s;
  s.out_of_order = {"no-such-machine/stop", "nothing"};
  s.shut = {"no-such-door"};
  EXPECT_EQ(supposed(layout, s), layout);
  EXPECT_EQ(knownOnly(s, layout), Suppositions());
}

// A device that fails or a door that is shut may take a walk away or make it longer, never shorter.
TEST(Suppositions, NeverBringAStopOrPhoneNearer) {
  int farther = 0;
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    support::Random random(seed);
    const Suppositions s = randomOf(layout, random);
    const audit::Report before = reportOf(layout), after = reportOf(supposed(layout, s));
    ASSERT_EQ(before.stations.size(), after.stations.size()) << seed;
    for (std::size_t i = 0; i < before.stations.size(); ++i) {
      const auto &was = before.stations[i], &is = after.stations[i];
      // A station off the floor, or beside a wall that a shut door completes, steps out another way.
      if (was.stop.status == audit::Status::Walk && is.stop.status == audit::Status::Walk) {
        EXPECT_GE(farness(is.stop), farness(was.stop) - 1e-6) << is.id << " seed " << seed;
      }
      farther += farness(is.stop) > farness(was.stop) + 1e-6;
    }
  }
  EXPECT_GT(farther, 20);
}

TEST(Suppositions, AnOutOfOrderDeviceIsNobodysStop) {
  int asked = 0;
  for (std::uint64_t seed = 1; seed <= 30; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    const audit::Report before = reportOf(layout);
    for (const auto& station : before.stations) {
      if (station.stop.device.empty()) continue;
      ++asked;
      Suppositions s;
      s.out_of_order = {station.stop.device};
      const audit::Report after = reportOf(supposed(layout, s));
      for (const auto& other : after.stations) EXPECT_NE(other.stop.device, station.stop.device) << seed;
      break;
    }
  }
  EXPECT_GT(asked, 20);
}

TEST(Suppositions, AShutDoorIsShutAtAllHours) {
  layout::Layout layout = support::randomLayout(5);
  ASSERT_FALSE(layout.doors.empty());
  Suppositions s;
  s.shut = {layout.doors[0].id};
  EXPECT_EQ(supposed(layout, s).doors[0].locked, layout::Locked::Always);
}

TEST(Suppositions, TapeChecksOfADeviceThatIsOutGoWithIt) {
  layout::Layout layout = support::randomLayout(5);
  ASSERT_FALSE(layout.phones.empty());
  layout.tape_checks = {{"t1", layout.phones[0].id, "0,0", 1000, "", "", {}}};
  Suppositions s;
  s.out_of_order = {layout.phones[0].id};
  EXPECT_TRUE(supposed(layout, s).tape_checks.empty());
}

TEST(Suppositions, WhatStandsInTheWayStandsThere) {
  const layout::Layout layout = support::randomLayout(5);
  Suppositions s;
  layout::Fixture block;
  block.id = "in-the-way-1";
  block.footprint = layout::Rectangle{1200, 800};
  s.in_the_way = {block};
  EXPECT_EQ(supposed(layout, s).fixtures.size(), layout.fixtures.size() + 1);
  EXPECT_FALSE(s.empty());
}

}  // namespace
}  // namespace stopwalk::planning
