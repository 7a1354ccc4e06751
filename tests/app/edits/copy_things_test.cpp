#include "app/edits/copy_things.h"

#include "app/edits/change_things.h"
#include "app/edits/remove_things.h"
#include "app/edits/rename_id.h"
#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;
using Ids = std::vector<std::string>;

Pasted pastedInto(const Layout& layout, const Clip& clip, Point by = {}) {
  Pasted pasted = paste(layout, clip, by);
  expectReadable(pasted.edit.after);
  return pasted;
}

TEST(CopyThings, GiveAMachineWithAllThatIsOnItAnotherIdAndName) {
  const Layout shop = benchShop();
  const Pasted pasted = pastedInto(shop, copyThings(shop, {"saw", "saw/paddle"}), {500, 100});
  EXPECT_EQ(pasted.ids, Ids{"saw-2"});
  EXPECT_EQ(pasted.edit.name, "Paste Table saw 2");
  Layout expected = shop;
  layout::Machine saw = shop.machines[0];
  saw.id = "saw-2";
  saw.name = "Table saw 2";
  saw.at = {3500, 3100};
  saw.devices[0].stops->ids = {"lathe", "saw-2"};
  saw.devices[0].run_down_each = {{"lathe", 3}, {"saw-2", 2}};
  expected.machines.push_back(saw);
  EXPECT_EQ(pasted.edit.after, expected);
}

TEST(CopyThings, KeepTheCommentsOfWhatIsCopied) {
  const Layout shop = benchShop();
  const std::string text = files::writeLayout(pastedInto(shop, copyThings(shop, {"saw"})).edit.after);
  const std::string comment = "# takes the board";
  EXPECT_NE(text.find(comment, text.find(comment) + 1), std::string::npos) << text;
}

TEST(CopyThings, SpeakOfEachOtherWhereBothWereCopied) {
  const Layout shop = benchShop();
  const Pasted pasted =
      pastedInto(shop, copyThings(shop, {"metal", "lathe", "cut-off", "d1", "d3", "phone-1", "t1"}));
  EXPECT_EQ(pasted.ids, (Ids{"metal-2", "d4", "d5", "lathe-2", "cut-off-2", "phone-2", "t3"}));
  const Layout& after = pasted.edit.after;
  EXPECT_EQ(after.devices[1].stops->ids, Ids{"metal-2"});
  EXPECT_EQ(after.devices[1].run_down_each[0].first, "lathe-2");
  EXPECT_EQ(after.doors[3].first, "wood") << "was not copied";
  EXPECT_EQ(after.doors[3].second, "metal-2");
  EXPECT_EQ(after.tape_checks[2].from, "lathe-2/operator");
  EXPECT_EQ(after.tape_checks[2].to, "phone-2");
  EXPECT_EQ(after.machines[2].devices[0].stops->ids, Ids{"lathe-2"});
}

TEST(CopyThings, PutWhatIsOnAMachineOntoItsMachine) {
  const Layout shop = benchShop();
  const Pasted pasted = pastedInto(shop, copyThings(shop, {"saw/helper", "saw/trigger"}), {100, 0});
  EXPECT_EQ(pasted.ids, (Ids{"saw/helper-2", "saw/trigger-2"}));
  const layout::Machine& saw = pasted.edit.after.machines[0];
  EXPECT_EQ(saw.stations.at(2).at, (Point{0, 600})) << "in the frame of a saw that is turned by 90";
  EXPECT_EQ(saw.devices.at(2).held_at, (Ids{"operator", "helper-2"}));
}

TEST(CopyThings, ComeToStopNothingTheyWereNotSaidToStop) {
  const Layout shop = benchShop();
  const Clip clip = copyThings(shop, {"cut-off", "saw"});
  const auto stops = [&](const Layout& into) {
    const Layout after = pastedInto(into, clip).edit.after;
    EXPECT_TRUE(after.devices.back().stops && after.machines.back().devices[0].stops);
    Ids both = after.devices.back().stops->ids;
    const Ids& of_paddle = after.machines.back().devices[0].stops->ids;
    both.insert(both.end(), of_paddle.begin(), of_paddle.end());
    return both;
  };
  EXPECT_EQ(stops(shop), (Ids{"metal", "lathe", "saw-2"}));
  EXPECT_EQ(stops(Layout{}), Ids{"saw"});
  EXPECT_EQ(stops(removeThings(shop, {"lathe"}, files::bundledDeviceKinds()).after), (Ids{"metal", "saw-2"}));
  const Layout other = change(shop, {"metal"}, "name", [](layout::Room& r) { r.name = "Paint room"; }).after;
  EXPECT_EQ(stops(other), (Ids{"lathe", "saw-2"})) << "the same id for another room";
}

TEST(CopyThings, LeaveOutWhatHasNowhereToGo) {
  const Layout shop = benchShop();
  const Pasted pasted = pastedInto(Layout{}, copyThings(shop, {"d1", "t1", "saw/helper", "n1"}));
  EXPECT_EQ(pasted.ids, Ids{"n1"});
  EXPECT_TRUE(pasted.edit.after.machines.empty());
}

TEST(CopyThings, CanBeReadFromTheirText) {
  const Layout shop = benchShop();
  for (const Ids& ids :
       {Ids{"saw"}, Ids{"cut-off", "t1"}, Ids{"d1"}, Ids{"saw/trigger", "lathe/bar"}, Ids{"wood", "n1"}}) {
    const Clip clip = copyThings(shop, ids);
    const auto read = readClip(clipText(clip), files::bundledDeviceKinds());
    ASSERT_TRUE(read) << clipText(clip);
    EXPECT_EQ(*read, clip);
    EXPECT_EQ(files::writeLayout(paste(shop, *read, {1, 1}).edit.after),
              files::writeLayout(paste(shop, clip, {1, 1}).edit.after));
  }
}

TEST(CopyThings, AreNotReadFromOtherTexts) {
  const auto& kinds = files::bundledDeviceKinds();
  EXPECT_FALSE(readClip("", kinds));
  EXPECT_FALSE(readClip("copied: saw\n", kinds));
  EXPECT_FALSE(readClip(files::writeLayout(benchShop()), kinds)) << "a layout, but no clip";
  Clip clip = copyThings(benchShop(), {"saw"});
  clip.ids.push_back("nothing");
  EXPECT_FALSE(readClip(clipText(clip), kinds));
}

TEST(CopyThings, OfTheUnderlayOrNothingAreEmpty) {
  const Layout shop = benchShop();
  const Clip clip = copyThings(shop, {"(underlay)", "nothing"});
  EXPECT_TRUE(clip.empty());
  EXPECT_EQ(paste(shop, clip, {1, 1}).edit.after, shop);
}

TEST(DuplicateThings, IsCopyingAndPastingInOneStep) {
  const Layout shop = benchShop();
  const Pasted both = duplicateThings(shop, {"bench-1", "phone-1"}, {10, 0});
  EXPECT_EQ(both.edit.name, "Duplicate 2 things");
  EXPECT_EQ(both.ids, (Ids{"bench-2", "phone-2"}));
  EXPECT_EQ(both.edit.after, paste(shop, copyThings(shop, {"bench-1", "phone-1"}), {10, 0}).edit.after);
}

}  // namespace
}  // namespace stopwalk::edits
