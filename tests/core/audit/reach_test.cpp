#include "core/audit/reach.h"

#include <gtest/gtest.h>

#include "core/audit/context.h"
#include "tests/core/audit/shop.h"

namespace stopwalk::audit {
namespace {

using What = ReachTarget::What;

Reach reachIn(const std::string& text, const ReachTarget& target, floor::Hours hours = floor::Hours::Open) {
  return reachOf(layoutOf(text), files::bundledDeviceKinds(), hours, target, 2000);
}

// Each sample against the walk from there to the nearest standing place of these devices of the audit.
void expectWalksTo(const std::string& text, const Reach& reach, const std::vector<std::string>& ids) {
  const layout::Layout layout = layoutOf(text);
  const Profile profile = defaultProfile();
  const layout::DeviceKinds kinds = files::bundledDeviceKinds();
  const Context context(layout, kinds, profile, floor::Hours::Open);
  std::vector<floor::Place> places;
  for (const std::string& id : ids) {
    for (std::size_t d = 0; d < context.devices.size(); ++d)
      if (context.devices[d].id == id) places.push_back(context.placed[d].standing.place);
    for (std::size_t p = 0; p < layout.phones.size(); ++p)
      if (layout.phones[p].id == id) places.push_back(context.phones[p].standing.place);
  }
  ASSERT_EQ(places.size(), ids.size());
  int walked = 0;
  for (int row = 0; row < reach.map.rows(); ++row)
    for (int column = 0; column < reach.map.columns(); ++column) {
      const auto length = reach.map.length_mm(column, row);
      const auto nearest = context.walks.nearest(reach.map.at(column, row), places);
      ASSERT_EQ(length.has_value(), nearest.walk.status == floor::WalkStatus::Walk);
      if (!length) continue;
      EXPECT_NEAR(*length, nearest.walk.length_mm, 0.02);
      ++walked;
    }
  EXPECT_GT(walked, 500);
}

const Edit kBar =
    before("devices:\n  - {id: cut-off",
           "  - id: planer\n    name: Planer\n    at: [6800, 1200]\n"
           "    footprint: {width: 1000, depth: 600}\n    height: 900\n"
           "    stations:\n      - {id: operator, at: [0, -600]}\n"
           "    devices:\n      - {id: bar, kind: foot-bar, at: [0, 300], faces: 90, length: 800}\n"
           "      - {id: grip, kind: trigger, at: [0, 0]}\n"
           "      - {id: start, kind: guarded-start, at: [200, 300], faces: 90}\n");

// A stop that failed and has not passed since is none, whichever stops are asked for.
TEST(ReachOf, WhatIsOutOfOrderIsNoStop) {
  const std::string text = shopWith({kBar});
  for (const ReachTarget& target : {ReachTarget{What::AnyStop, ""}, {What::MachineStop, "planer"}}) {
    const Reach before = reachIn(text, target);
    const Reach after = reachOf(layoutOf(text), files::bundledDeviceKinds(), floor::Hours::Open, target, 2000,
                                {"planer/bar", "no-such-device"});
    EXPECT_EQ(after.devices + 1, before.devices);
    bool farther = false;
    for (int row = 0; row < before.map.rows(); ++row)
      for (int column = 0; column < before.map.columns(); ++column) {
        const auto was = before.map.length_mm(column, row), is = after.map.length_mm(column, row);
        if (!was || !is) continue;
        EXPECT_GE(*is, *was - 1e-6);
        farther = farther || *is > *was + 500;
      }
    EXPECT_TRUE(farther);
  }
}

TEST(ReachOf, PhonesIsTheWalkToTheNearestPhone) {
  const std::string two =
      shopWith({before("...", "  - {id: other, at: [8000, 5000], faces: 180, height: 1200}\n")});
  const Reach reach = reachIn(two, {What::Phone, ""});
  EXPECT_EQ(reach.devices, 2u);
  expectWalksTo(two, reach, {"phone", "other"});
}

TEST(ReachOf, AnyStopLeavesOutWhatIsHeldAndWhatStopsNothing) {
  const std::string text = shopWith({kBar});
  const Reach reach = reachIn(text, {What::AnyStop, ""});
  EXPECT_EQ(reach.devices, 4u);
  expectWalksTo(text, reach, {"saw/stop", "drill/stop", "planer/bar", "cut-off"});
}

TEST(ReachOf, AMachinesStopIsAnyThatStopsIt) {
  const std::string text = shopWith({kBar});
  expectWalksTo(text, reachIn(text, {What::MachineStop, "planer"}), {"planer/bar", "cut-off"});
  expectWalksTo(text, reachIn(text, {What::MachineStop, "saw"}), {"saw/stop", "cut-off"});
}

TEST(ReachOf, CutOffsAreByKindOrByWhatTheyStop) {
  expectWalksTo(kShop, reachIn(kShop, {What::CutOff, ""}), {"cut-off"});
  const std::string one = shopWith({{"stops: [shop]", "stops: [saw]"}});
  EXPECT_EQ(reachIn(one, {What::CutOff, ""}).devices, 1u);
  const std::string button = shopWith({{"kind: room-cut-off", "kind: mushroom-button"}});
  EXPECT_EQ(reachIn(button, {What::CutOff, ""}).devices, 1u);
  const std::string none = shopWith({{", stops: [shop]", ""}});
  EXPECT_EQ(reachIn(none, {What::CutOff, ""}).devices, 0u);
}

TEST(ReachOf, WhatIsBlockedIsNotWalkedTo) {
  // A cupboard before the phone.
  const std::string text = shopWith({before(
      "machines:", "fixtures:\n  - {id: box, at: [500, 3000], footprint: {width: 1000, depth: 2000}}\n")});
  const Reach reach = reachIn(text, {What::Phone, ""});
  EXPECT_EQ(reach.devices, 1u);
  EXPECT_EQ(reach.blocked, 1u);
  EXPECT_FALSE(reach.map.longest_mm());
  EXPECT_TRUE(reach.contours.empty());
}

TEST(ReachOf, AMachineThatIsGoneHasNoStops) {
  const Reach reach = reachIn(kShop, {What::MachineStop, "gone"});
  EXPECT_EQ(reach.devices, 0u);
  EXPECT_FALSE(reach.map.longest_mm());
}

TEST(ReachOf, ContoursAreInTheUnitOfTheLayout) {
  EXPECT_EQ(reachIn(kShop, {What::Phone, ""}).contour_mm, 1000);
  layout::Layout feet = layoutOf(kShop);
  feet.unit = layout::LengthUnit::Foot;
  EXPECT_EQ(reachOf(feet, files::bundledDeviceKinds(), floor::Hours::Open, {}, 2000).contour_mm, 1524);
}

TEST(ReachOf, HoursShutDoors) {
  const std::string text = shopWith(
      {before(
           "doors:",
           "  - {id: store, name: Store, outline: [[8100, 0], [12000, 0], [12000, 6000], [8100, 6000]]}\n"),
       before(
           "  - {id: out",
           "  - {id: inner, joins: [shop, store], at: [8000, 3000], width: 1000, locked: after-hours}\n")});
  const auto storeReached = [&](floor::Hours hours) {
    const floor::ReachMap map = reachIn(text, {What::Phone, ""}, hours).map;
    return map.length_mm(map.columns() - 3, map.rows() / 2).has_value();
  };
  EXPECT_TRUE(storeReached(floor::Hours::Open));
  EXPECT_FALSE(storeReached(floor::Hours::After));
}

TEST(ReachOf, AnEmptyLayoutIsAnEmptyMap) {
  EXPECT_EQ(reachOf({}, files::bundledDeviceKinds(), floor::Hours::Open, {}, 2000).map.columns(), 0);
}

}  // namespace
}  // namespace stopwalk::audit
