#include "app/edits/add_things.h"

#include "app/edits/things.h"
#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

const layout::DeviceKind& kind(const char* key) {
  return *files::bundledDeviceKinds().find(key);
}

layout::MachineTemplate tableSaw() {
  layout::MachineTemplate t;
  t.key = "table-saw";
  t.label = "Table saw";
  t.footprint = layout::Rectangle{1000, 800};
  t.height = 900;
  t.stations.push_back({"operator", layout::Role::Operator, {0, -700}, {}});
  layout::Device paddle;
  paddle.id = "paddle";
  paddle.kind = "paddle";
  t.devices.push_back(paddle);
  return t;
}

TEST(AddThings, BuildsAShopFromNothing) {
  Layout layout;
  const auto take = [&](const Added& added) {
    EXPECT_FALSE(added.id.empty());
    layout = added.edit.after;
    expectReadable(layout);
    return added.id;
  };
  EXPECT_EQ(take(addRoom(layout, {{0, 0}, {6000, 0}, {6000, 4000}, {0, 4000}}, "Wood room")), "wood-room");
  EXPECT_EQ(take(addRoom(layout, {{6100, 0}, {9000, 0}, {9000, 4000}}, "Wood room")), "wood-room-2");
  EXPECT_EQ(take(addDoor(layout, "wood-room", "wood-room-2", {6000, 2000}, 900)), "door");
  EXPECT_EQ(take(addDoor(layout, "wood-room", "outside", {0, 2000}, 900)), "door-2");
  EXPECT_EQ(take(addFixture(layout, "Bench", layout::Rectangle{2400, 900}, {1, 2}, 90, 900)), "bench");
  EXPECT_EQ(take(addMachine(layout, tableSaw(), {3000, 2000}, 90)), "table-saw");
  EXPECT_EQ(take(addMachine(layout, tableSaw(), {4000, 2000}, 0)), "table-saw-2");
  EXPECT_EQ(layout.machines[1].name, "Table saw 2");
  EXPECT_EQ(take(addStation(layout, "table-saw", layout::Role::Helper, {3000, 2900})), "table-saw/helper");
  EXPECT_EQ(take(addMachineDevice(layout, "table-saw", kind("paddle"), {3100, 2000})), "table-saw/paddle-2");
  EXPECT_EQ(take(addMachineDevice(layout, "table-saw", kind("foot-bar"), {3400, 2000})),
            "table-saw/foot-bar");
  EXPECT_EQ(
      take(addWallDevice(layout, kind("room-cut-off"), {0, 1000}, 0, layout::Stops{false, {"wood-room"}})),
      "room-cut-off");
  EXPECT_EQ(take(addWallDevice(layout, kind("pull-cord"), {0, 1500}, 0)), "pull-cord");
  EXPECT_EQ(take(addPhone(layout, "Phone", {0, 3000}, 0)), "phone");
  EXPECT_EQ(take(addNote(layout, "Keep clear", {1, 1}, Point{2, 2})), "note");
  EXPECT_EQ(take(addTapeCheck(layout, "table-saw/helper", "phone", 3456)), "tape-check");
}

TEST(AddThings, PlacesWhatIsOnAMachineWhereItIsInThePlan) {
  const Layout shop = benchShop();
  const Added helper = addStation(shop, "saw", layout::Role::Setter, {3100, 3900});
  EXPECT_EQ(placeOf(helper.edit.after, *findThing(helper.edit.after, "saw/setter")), (Point{3100, 3900}));
  const Added bar = addMachineDevice(shop, "lathe", kind("foot-bar"), {12000, 2600});
  EXPECT_EQ(bar.id, "lathe/foot-bar");
  EXPECT_EQ(bar.edit.after.machines[1].devices[1].length, 2000) << "as wide as the machine";
  EXPECT_EQ(bar.edit.name, "Add foot-bar of Engine lathe");
}

TEST(AddThings, NamesTheStep) {
  EXPECT_EQ(addMachine(benchShop(), tableSaw(), {0, 0}, 0).edit.name, "Add Table saw 2");
  EXPECT_EQ(addDoor(benchShop(), "wood", "outside", {0, 0}, 900).edit.name, "Add door");
}

TEST(AddThings, ThatCannotBeChangeNothing) {
  const Layout shop = benchShop();
  const Added impossible[] = {addRoom(shop, {{0, 0}, {1, 1}}, "Two corners"),
                              addDoor(shop, "outside", "wood", {0, 0}, 900),
                              addDoor(shop, "wood", "nowhere", {0, 0}, 900),
                              addDoor(shop, "wood", "metal", {0, 0}, 0),
                              addStation(shop, "phone-1", layout::Role::Helper, {0, 0}),
                              addMachineDevice(shop, "nothing", kind("paddle"), {0, 0}),
                              addPhone(shop, "Phone", {1e8, 0}, 0),
                              addTapeCheck(shop, "saw", "phone-1", 1)};
  for (const Added& added : impossible) {
    EXPECT_EQ(added.edit.after, shop);
    EXPECT_EQ(added.id, "");
  }
}

TEST(AddThings, GiveIdsThatAreNotReserved) {
  EXPECT_EQ(addRoom(Layout{}, {{0, 0}, {1, 0}, {0, 1}}, "Outside").id, "outside-2");
  EXPECT_EQ(addFixture(Layout{}, "Všechno", layout::Rectangle{1, 1}, {}, 0).id, "v-echno");
  EXPECT_EQ(addRoom(Layout{}, {{0, 0}, {1, 0}, {0, 1}}, "木").id, "room");
}

TEST(AddThings, SetTheUnderlay) {
  const Layout shop = benchShop();
  const Edit gone = setUnderlay(shop, std::nullopt);
  EXPECT_FALSE(gone.after.underlay);
  EXPECT_EQ(gone.name, "Remove the underlay");
  layout::Underlay picture;
  picture.image = "other.png";
  EXPECT_EQ(setUnderlay(gone.after, picture).name, "Add the underlay");
  EXPECT_EQ(setUnderlay(shop, picture).after.underlay, picture);
}

}  // namespace
}  // namespace stopwalk::edits
