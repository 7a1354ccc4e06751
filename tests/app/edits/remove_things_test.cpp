#include "app/edits/remove_things.h"

#include "app/edits/things.h"
#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

TEST(RemoveThings, TakesTheDoorsOfARoomAndSaysSo) {
  const Edit edit = removeThings(benchShop(), {"wood"}, files::bundledDeviceKinds());
  EXPECT_EQ(edit.name, "Remove Wood room and 2 doors");
  ASSERT_EQ(edit.after.doors.size(), 1u);
  EXPECT_EQ(edit.after.doors[0].id, "d3");
  expectReadable(edit.after);
}

TEST(RemoveThings, TakesTheTapeChecksOfAMachineAndItsRunDowns) {
  const Edit edit = removeThings(benchShop(), {"lathe"}, files::bundledDeviceKinds());
  EXPECT_EQ(edit.name, "Remove Engine lathe and 1 tape check");
  ASSERT_EQ(edit.after.tape_checks.size(), 1u);
  EXPECT_EQ(edit.after.tape_checks[0].id, "t2");
  const layout::Device& paddle = edit.after.machines[0].devices[0];
  EXPECT_EQ(paddle.stops->ids, std::vector<std::string>{"saw"});
  EXPECT_EQ(paddle.run_down_each, (std::vector<std::pair<std::string, double>>{{"saw", 2}}));
  EXPECT_TRUE(edit.after.devices[0].run_down_each.empty());
  expectReadable(edit.after);
}

TEST(RemoveThings, TakesWhatIsAcceptedOfThem) {
  Layout layout = benchShop();
  layout.accepted_findings = {
      {"slow-run-down", "lathe", "saw/paddle, cut-off", "invented", "Ada Example", "2027-12-31", {}},
      {"unreachable", "saw/operator", "(phone)", "invented", "Ada Example", "2027-12-31", {}}};
  const auto left = [&](const char* id) {
    return removeThings(layout, {id}, files::bundledDeviceKinds()).after.accepted_findings.size();
  };
  EXPECT_EQ(left("lathe"), 1u);
  EXPECT_EQ(left("cut-off"), 1u);
  EXPECT_EQ(left("saw"), 0u);
  EXPECT_EQ(left("phone-1"), 2u);
}

TEST(RemoveThings, CountsAllThatGoes) {
  const Edit edit =
      removeThings(benchShop(), {"metal", "wood", "cut-off", "lathe/operator"}, files::bundledDeviceKinds());
  EXPECT_EQ(edit.name, "Remove 4 things, 3 doors and 2 tape checks");
  expectReadable(edit.after);
}

TEST(RemoveThings, DoesNotLetADeviceStopSomethingElse) {
  Layout layout = benchShop();
  layout.machines[0].devices[0].stops->ids = {"lathe"};
  const Layout after = removeThings(layout, {"lathe", "metal"}, files::bundledDeviceKinds()).after;
  const auto& paddle = after.machines[0].devices[0];
  ASSERT_TRUE(paddle.stops) << "would stop the machine it is on";
  EXPECT_TRUE(paddle.stops->ids.empty() && !paddle.stops->all);
  ASSERT_TRUE(after.devices[0].stops);
  EXPECT_TRUE(after.devices[0].stops->ids.empty());
  expectReadable(after);
}

TEST(RemoveThings, DoesNotLetATriggerBeHeldAtAnotherStation) {
  const auto heldAt = [](const Layout& layout) { return layout.machines[0].devices[1].held_at; };
  using Stations = std::vector<std::string>;
  const Layout shop = benchShop();
  EXPECT_EQ(heldAt(removeThings(shop, {"saw/operator"}, files::bundledDeviceKinds()).after),
            Stations{"helper"});
  const Layout none = removeThings(shop, {"saw/operator", "saw/helper"}, files::bundledDeviceKinds()).after;
  EXPECT_EQ(heldAt(none), Stations{});
  expectReadable(none);

  Layout by_first = shop;
  by_first.machines[0].devices[1].held_at.reset();
  const Layout after = removeThings(by_first, {"saw/operator"}, files::bundledDeviceKinds()).after;
  EXPECT_EQ(heldAt(after), Stations{}) << "the helper would become the first station";
  EXPECT_FALSE(after.machines[0].devices[0].held_at) << "a paddle is not held";
  EXPECT_FALSE(heldAt(removeThings(by_first, {"saw/helper"}, files::bundledDeviceKinds()).after));
}

TEST(RemoveThings, IgnoresUnknownIds) {
  const Layout before = benchShop();
  EXPECT_EQ(removeThings(before, {"nothing", "saw/nothing", ""}, files::bundledDeviceKinds()).after, before);
  EXPECT_EQ(removeThings(before, {"nothing", "n1"}, files::bundledDeviceKinds()).name, "Remove note n1");
}

TEST(RemoveThings, CanTakeEverything) {
  const Layout before = benchShop();
  std::vector<std::string> ids;
  for (const Thing& thing : allThings(before)) ids.push_back(idOf(before, thing));
  const Edit edit = removeThings(before, ids, files::bundledDeviceKinds());
  EXPECT_TRUE(allThings(edit.after).empty());
  EXPECT_EQ(edit.after.site, before.site);
  expectReadable(edit.after);
}

TEST(RemoveThings, AsksTheShopsOwnKindsWhatIsHeld) {
  Layout shop = benchShop();
  shop.machines[0].devices[1].kind = "own-trigger";
  shop.machines[0].devices[1].held_at.reset();
  const auto kinds = [](bool held) {
    layout::DeviceKind own = *files::bundledDeviceKinds().find("trigger");
    own.key = "own-trigger";
    own.held = held;
    return layout::DeviceKinds({own});
  };
  const auto after = [&](bool held) {
    return removeThings(shop, {"saw/operator"}, kinds(held)).after.machines[0].devices[1].held_at;
  };
  EXPECT_EQ(after(true), std::vector<std::string>{}) << "held nowhere rather than at the next";
  EXPECT_EQ(after(false), std::nullopt) << "nobody holds it";
}

}  // namespace
}  // namespace stopwalk::edits
