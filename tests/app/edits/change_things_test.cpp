#include "app/edits/change_things.h"

#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

TEST(ChangeThings, SetsAFieldOfTheThingsThatHaveIt) {
  const Layout shop = benchShop();
  const auto set = [](auto& thing) requires requires {
    thing.height = 950;
  }
  { thing.height = 950; };
  const Edit edit = change(shop, {"saw", "wood", "bench-1", "saw/paddle", "nothing", "saw"}, "height", set);
  EXPECT_EQ(edit.name, "Change the height of 3 things");
  EXPECT_EQ(edit.merge_key, "height of saw bench-1 saw/paddle");
  Layout expected = shop;
  expected.machines[0].height = expected.fixtures[0].height = expected.machines[0].devices[0].height = 950;
  EXPECT_EQ(edit.after, expected);
}

TEST(ChangeThings, TellsAMachineFromWhatIsOnIt) {
  const Edit edit =
      change(benchShop(), {"saw", "saw/operator"}, "name", [](layout::Machine& m) { m.name = "Saw"; });
  EXPECT_EQ(edit.name, "Change the name of Table saw");
  EXPECT_EQ(edit.after.machines[0].name, "Saw");
}

TEST(ChangeThings, LeavesTheIdAlone) {
  const Layout shop = benchShop();
  const Edit edit = change(shop, {"wood"}, "id", [](layout::Room& r) { r.id = "other"; });
  EXPECT_EQ(edit.after, shop);
}

TEST(ChangeThings, TakesNothingThatNoFileCanHold) {
  const Layout shop = benchShop();
  EXPECT_EQ(change(shop, {"saw"}, "height", [](layout::Machine& m) { m.height = -1; }).after, shop);
  EXPECT_EQ(change(shop, {"d1"}, "rooms", [](layout::Door& d) { d.second = "nowhere"; }).after, shop);
  EXPECT_EQ(change(shop, {"cut-off"}, "stops", [](layout::Device& d) { d.stops->ids = {"phone-1"}; }).after,
            shop);
}

TEST(ChangeThings, OfNothingMakesNoStep) {
  const Layout shop = benchShop();
  const Edit edit = change(shop, {"wood", "t1"}, "height", [](layout::Machine& m) { m.height = 1; });
  EXPECT_EQ(edit.after, shop);
  EXPECT_TRUE(edit.name.isEmpty());
}

TEST(ChangeThings, ReachesTheHeadOfTheLayoutToo) {
  const Layout shop = benchShop();
  const Edit site = changeSite(shop, "address", [](layout::Site& s) { s.address = "1 Invented Lane"; });
  EXPECT_EQ(site.name, "Change the address of the workshop");
  EXPECT_EQ(site.after.site.address, "1 Invented Lane");
  const Edit revision = changeRevision(shop, "number", [](layout::Revision& r) { r.number = 2; });
  EXPECT_EQ(revision.after.revision->number, 2);
  EXPECT_EQ(setProfile(shop, "teaching-shop").after.profile, "teaching-shop");
  const Edit underlay = change(shop, {"(underlay)"}, "opacity", [](layout::Underlay& u) { u.opacity = 0.5; });
  EXPECT_EQ(underlay.name, "Change the opacity of underlay");
  EXPECT_EQ(underlay.after.underlay->opacity, 0.5);
}

TEST(ChangeThings, KeepEveryLengthInAnotherUnit) {
  const Layout shop = benchShop();
  for (const auto unit : {layout::LengthUnit::Metre, layout::LengthUnit::Inch, layout::LengthUnit::Foot}) {
    Layout expected = shop;
    expected.unit = unit;
    const Layout after = setUnit(shop, unit).after;
    EXPECT_EQ(after, expected);
    expectReadable(after);
  }
}

TEST(ChangeThings, GiveADeviceThatBecomesABarALength) {
  const Layout shop = benchShop();
  const auto& kinds = files::bundledDeviceKinds();
  const Layout bars =
      setDeviceKind(shop, {"saw/paddle", "cut-off", "lathe/bar", "saw"}, *kinds.find("pull-cord")).after;
  EXPECT_EQ(bars.machines[0].devices[0].length, 1000) << "as wide as the saw";
  EXPECT_EQ(bars.devices[0].length, 1000);
  EXPECT_EQ(bars.machines[1].devices[0].length, 1800) << "as before";
  expectReadable(bars);
  const Layout buttons = setDeviceKind(bars, {"lathe/bar"}, *kinds.find("mushroom-button")).after;
  EXPECT_EQ(buttons.machines[1].devices[0].length, std::nullopt);
}

}  // namespace
}  // namespace stopwalk::edits
