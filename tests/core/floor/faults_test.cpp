#include "core/floor/faults.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "tests/support/draw.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random_layout.h"

namespace stopwalk::floor {
namespace {

using namespace draw;
using layout::Layout;
using layout::Locked;
using Ids = std::vector<std::string>;

Layout twoRooms() {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 9000, 7000)), room("metal", box(9200, 0, 15000, 7000))};
  return l;
}

Ids subjects(const Plan& plan) {
  Ids ids;
  for (const Fault& f : plan.faults) ids.push_back(f.subject);
  return ids;
}

// The faults are the same however the plan is turned and moved, and when the things of each list are written
// backwards.
Ids faulty(const Layout& l) {
  const Ids ids = subjects(buildPlan(l, Hours::Open));
  for (double turn : {13.0, 90.0, 200.5})
    EXPECT_EQ(subjects(buildPlan(carried(l, turn, {1e6, -1e6}), Hours::Open)), ids) << turn;
  Layout back = l;
  std::reverse(back.machines.begin(), back.machines.end());
  std::reverse(back.fixtures.begin(), back.fixtures.end());
  std::reverse(back.doors.begin(), back.doors.end());
  Ids reversed = subjects(buildPlan(back, Hours::Open)), sorted = ids;
  std::sort(reversed.begin(), reversed.end());
  std::sort(sorted.begin(), sorted.end());
  EXPECT_EQ(reversed, sorted);
  return ids;
}

std::string onlyText(const Layout& l) {
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(plan.faults.size(), 1u);
  return plan.faults.empty() ? "" : plan.faults[0].text;
}

TEST(Faults, CrossedOutlineIsLeftOut) {
  Layout l = twoRooms();
  l.rooms.push_back(room("knot", {{0, 8000}, {2000, 9000}, {2000, 8000}, {0, 9000}}));
  l.fixtures = {bench("rack", {1000, 1000}, 10, 10)};
  l.fixtures[0].footprint = Polygon{{0, 0}, {500, 500}, {500, 0}, {0, 400}};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(faulty(l), (Ids{"knot", "rack"}));
  EXPECT_TRUE(plan.rooms[2].empty());
  EXPECT_TRUE(plan.solids.empty());
  EXPECT_EQ(plan.walls.size(), 8u);
}

TEST(Faults, OutlineWithoutAreaIsLeftOut) {
  Layout l = twoRooms();
  l.rooms.push_back(room("line", {{0, 8000}, {2000, 8000}, {4000, 8000}}));
  EXPECT_EQ(faulty(l), Ids{"line"});
  EXPECT_NE(onlyText(l).find("has no area"), std::string::npos);
  l.rooms.back().outline = {{0, 8000}, {0, 8000}, {0, 8000}};
  EXPECT_EQ(faulty(l), Ids{"line"});
}

TEST(Faults, RepeatedCornersTinyEdgesAndSpikesAreNone) {
  Layout l;
  l.rooms = {room("a", {{0, 0},
                        {0, 0},
                        {5000, 0},
                        {5000, 0.0001},
                        {5000, 5000},
                        {2500, 5000},
                        {2500, 3000},
                        {2500, 5000},
                        {0, 5000},
                        {0, 0}})};
  EXPECT_EQ(faulty(l), Ids{});
}

TEST(Faults, DoorAwayFromItsWall) {
  Layout l = twoRooms();
  l.doors = {door("d1", "wood", "metal", {9020, 3500}, 900)};
  EXPECT_EQ(faulty(l), Ids{});
  l.doors[0].at = {9020.1, 3500};
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_NE(onlyText(l).find("not on a wall of room wood"), std::string::npos);
  l.doors[0].locked = Locked::Always;
  EXPECT_EQ(faulty(l), Ids{"d1"});
  l.doors[0].second = layout::kOutside;
  EXPECT_EQ(faulty(l), Ids{"d1"});
}

TEST(Faults, DoorPastTheEndOfItsWall) {
  Layout l = twoRooms();
  l.doors = {door("d1", "wood", "metal", {9000, 450}, 900)};
  EXPECT_EQ(faulty(l), Ids{});
  l.doors[0].at.y = 449;
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_NE(onlyText(l).find("runs 0.001 m past the end"), std::string::npos);
  l.doors[0].second = layout::kOutside;
  EXPECT_EQ(faulty(l), Ids{"d1"});
}

TEST(Faults, DoorNearACornerTakesTheWallItFits) {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 9000, 7000)), room("yard", box(0, 7000, 9000, 9000))};
  l.doors = {
      door("d1", "wood", "yard", {8990, 6995}, 10)};  // 5 mm from the top wall, 10 mm from the right one
  EXPECT_EQ(faulty(l), Ids{});
  l.doors = {door("d1", "wood", "outside", {9000, 6985}, 30)};
  EXPECT_EQ(faulty(l), Ids{});
}

TEST(Faults, DoorThatDoesNotMeetTheSecondRoom) {
  Layout l = twoRooms();
  l.rooms[1].outline = box(10000, 0, 15000, 7000);
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900)};
  EXPECT_EQ(faulty(l), Ids{});
  l.rooms[1].outline = box(10001, 0, 15000, 7000);
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_TRUE(buildPlan(l, Hours::Open).passages.empty());
  l.rooms[1].outline = box(9200, 0, 15000, 3900);  // 50 mm of the door's width miss it
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_NE(onlyText(l).find("does not meet room metal"), std::string::npos);
}

TEST(Faults, DoorToOutsideWithARoomBehindIt) {
  Layout l = twoRooms();  // 200 mm apart
  l.doors = {door("d1", "wood", "outside", {9000, 3500}, 900)};
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_EQ(
      onlyText(l),
      "Door d1 at (9.000, 3.500) m leads to `outside`, but room metal lies behind it; it is left shut.");
  EXPECT_TRUE(buildPlan(l, Hours::Open).shut[0]);
  l.doors[0].at = {4000, 0};  // nothing is there
  EXPECT_EQ(faulty(l), Ids{});
  l.doors[0].at = {9000, 3500};
  l.rooms[1].outdoors = true;
  EXPECT_EQ(faulty(l), Ids{});
  l.rooms[1].outdoors = false;
  for (const auto& [gap, bad] : {std::pair{0.0, true}, {530.0, true}, {560.0, false}}) {
    l.rooms[1].outline = box(9000 + gap, 0, 15000, 7000);
    EXPECT_EQ(faulty(l), bad ? Ids{"d1"} : Ids{}) << gap;
  }
  l.rooms[1].outline = box(9200, 3965, 15000, 7000);  // begins beside the door
  EXPECT_EQ(faulty(l), Ids{});
}

TEST(Faults, DoorWithARoomBetween) {
  Layout l = twoRooms();
  l.rooms.push_back(room("duct", box(9050, 3600, 9150, 3700)));
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900)};
  EXPECT_EQ(faulty(l), Ids{"d1"});
  EXPECT_NE(onlyText(l).find("room duct"), std::string::npos);
  l.rooms.back().outline = box(9050, 3950, 9150, 4000);  // along the jamb
  EXPECT_EQ(faulty(l), Ids{});
  l.rooms.back().outline = box(9000, 0, 9200, 7000);  // fills the wall
  EXPECT_EQ(faulty(l), Ids{"d1"});
}

TEST(Faults, DoorWithAnotherWallOfTheSecondRoomBetweenIsMetThere) {
  Layout l = twoRooms();
  // The second room comes round to the wall: it is met at 9100, where its own part is.
  l.rooms[1].outline = {{9100, 3000}, {15000, 3000}, {15000, 7000}, {9300, 7000}, {9300, 4000}, {9100, 4000}};
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900)};
  EXPECT_EQ(faulty(l), Ids{});
  EXPECT_EQ(buildPlan(l, Hours::Open).passages[0].second.a.x, 9100);
}

TEST(Faults, RoomsThatOverlap) {
  Layout l = twoRooms();
  l.rooms.push_back(room("cross", box(4000, -1000, 5000, 8000)));  // no corner of one lies in the other
  EXPECT_EQ(faulty(l), Ids{"cross"});
  l.rooms.back().outline = l.rooms[0].outline;  // equal
  EXPECT_EQ(faulty(l), Ids{"cross"});
  l.rooms.back().outline = box(0, 0, 3000, 7000);  // inside, along its walls
  EXPECT_EQ(faulty(l), Ids{"cross"});
  l.rooms.back().outline = box(-3000, 0, 1, 7000);
  EXPECT_EQ(faulty(l), Ids{});
}

TEST(Faults, MachineInNoRoom) {
  Layout l = twoRooms();
  l.machines = {machine("saw", {9100, 3500}, 500, 500)};
  EXPECT_EQ(faulty(l), Ids{"saw"});
  l.machines[0].at.x = 9000;
  EXPECT_EQ(faulty(l), Ids{});
}

TEST(Faults, WallThingFarFromEveryRoom) {
  Layout l = twoRooms();
  l.devices = {device("stop", "mushroom-button", {-100, 3000}, 0)};
  l.phones = {phone("phone", {15100, 3000}, 180)};
  EXPECT_EQ(faulty(l), Ids{});
  l.devices[0].at.x = -101;
  l.phones[0].at.x = 15101;
  EXPECT_EQ(faulty(l), (Ids{"stop", "phone"}));
}

// A stop that nobody can be at; where the machine itself is in no room, that is said once.
TEST(Faults, DeviceOfAMachineFarFromEveryRoom) {
  Layout l = twoRooms();
  l.machines = {machine("saw", {500, 3000}, 500, 500)};
  l.machines[0].devices = {device("stop", "mushroom-button", {-600, 0}, 180)};
  EXPECT_EQ(faulty(l), Ids{});
  l.machines[0].devices[0].at.x = -601;
  EXPECT_EQ(faulty(l), Ids{"saw/stop"});
  l.machines[0].turn = 180;
  EXPECT_EQ(faulty(l), Ids{});
  l.machines[0].turn = 0;
  l.machines[0].at.x = -500;
  EXPECT_EQ(faulty(l), Ids{"saw"});
}

TEST(Faults, StationOffTheFloor) {
  Layout l = twoRooms();
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900, Locked::AfterHours)};
  l.machines = {machine("saw", {8000, 3500}, 500, 500)};
  l.fixtures = {bench("bench", {7000, 3500}, 600, 600)};
  const std::vector<std::pair<Point, bool>> cases = {
      {{0, -250}, true},   // on its own footprint's outline
      {{0, -249}, false},  // inside it
      {{-1300, 0}, true},  // on the bench's outline
      {{-1200, 0}, false}, {{1100, 0}, true}, {{1100, 451}, false}, {{1000, 451}, true}, {{0, 3501}, false}};
  for (const auto& [at, good] : cases) {
    l.machines[0].stations = {station("operator", at)};
    EXPECT_EQ(faulty(l), good ? Ids{} : Ids{"saw/operator"}) << at.x << " " << at.y;
  }
  l.machines[0].stations = {station("operator", {1100, 0})};  // in the passage, which is shut after hours
  EXPECT_EQ(subjects(buildPlan(l, Hours::After)), Ids{"saw/operator"});
}

// A bench pushed flush against a machine, a machine with its back at the wall: on the line along which they
// touch nobody stands, though it is inside neither.
TEST(Faults, StationWhereTwoThingsTouch) {
  Layout l = twoRooms();
  l.machines = {machine("saw", {4000, 3000}, 1000, 950)};
  l.fixtures = {bench("bench", {4000, 2225}, 2000, 600)};
  const std::vector<std::pair<Point, bool>> cases = {
      {{0, -475}, false},
      {{400, -475}, false},
      {{500, -475}, true},  // a corner of the saw, floor beside it
      {{600, -475}, true},
      {{0, 475}, true}};
  for (const auto& [at, good] : cases) {
    l.machines[0].stations = {station("operator", at)};
    EXPECT_EQ(faulty(l), good ? Ids{} : Ids{"saw/operator"}) << at.x << " " << at.y;
  }
  l.machines[0].stations = {station("operator", {0, -475})};
  EXPECT_EQ(
      onlyText(l),
      "Station saw/operator at (4.000, 2.525) m is where bench and saw touch, with no floor between; its "
      "distances are unmeasured.");
  l.machines[0].at = {4000, 475};
  l.fixtures.clear();
  EXPECT_EQ(
      onlyText(l),
      "Station saw/operator at (4.000, 0.000) m is where saw and a wall touch, with no floor between; its "
      "distances are unmeasured.");
}

// Wherever a station stands on an outline: it is a fault if the walks do not know it, and only then.
TEST(Faults, StationIsOneWhereTheWalksHaveNoFloor) {
  std::size_t on = 0, off = 0;
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    Layout l = seed % 2 ? support::gridLayout(seed) : support::randomLayout(seed);
    for (layout::Machine& m : l.machines) m.stations.clear();
    // Pushed together, as furniture is.
    if (l.machines.size() > 1) {
      layout::Machine &a = l.machines[0], &b = l.machines[1];
      a.footprint = b.footprint = layout::Rectangle{1000, 800};
      b.turn = a.turn;
      b.at = layout::toPlan(a.at, a.turn, {seed % 3 ? 1000.0 : 700.0, seed % 3 ? 0.0 : 800.0});
    }
    for (layout::Machine& m : l.machines) {
      const Polygon outline = layout::outlineInPlan(m.footprint, {0, 0}, 0);
      for (std::size_t i = 0; i < outline.size(); ++i)
        for (int k = 0; k < 5; ++k)
          m.stations.push_back(station("s" + std::to_string(m.stations.size()),
                                       geometry::at(geometry::edgeOf(outline, i), k / 5.0)));
    }
    const Plan plan = buildPlan(l, Hours::Open);
    const Walks walks(plan);
    const Ids faults = subjects(plan);
    for (const layout::Machine& m : l.machines)
      for (const layout::Station& s : m.stations) {
        const bool known = walks.onFloor(layout::toPlan(m.at, m.turn, s.at));
        EXPECT_EQ(std::ranges::count(faults, m.id + "/" + s.id), known ? 0 : 1)
            << "seed " << seed << ": " << m.id << "/" << s.id;
        ++(known ? on : off);
      }
  }
  EXPECT_GT(on, 1000u);
  EXPECT_GT(off, 300u);
}

TEST(Faults, MachineStandingInAnother) {
  Layout l = twoRooms();
  l.machines = {machine("large", {3000, 3000}, 1000, 1000), machine("small", {3700, 3000}, 400, 400)};
  EXPECT_EQ(faulty(l), Ids{});
  l.machines[1].at.x = 3699;
  EXPECT_EQ(faulty(l), Ids{});
  l.machines[1].at.x = 3698.9;
  EXPECT_EQ(faulty(l), Ids{"small"});
  EXPECT_NE(onlyText(l).find("stands in machine large"), std::string::npos);
  l.machines[1] = machine("twin", {3000, 3000}, 1000, 1000);
  EXPECT_EQ(faulty(l), Ids{"large"});  // equal ones: the first id stands in the other
  l.machines[1] = machine("within", {3000, 3000}, 100, 100);
  EXPECT_EQ(faulty(l), Ids{"within"});
}

// Who accepted that a door is a little off its wall did not accept that it leads nowhere.
TEST(Faults, OfADoorEachHasItsWord) {
  const auto which = [](const layout::Door& d, const Layout& rooms) {
    Layout l = rooms;
    l.doors = {d};
    const Plan plan = buildPlan(l, Hours::Open);
    EXPECT_EQ(plan.faults.size(), 1u) << d.id;
    return plan.faults.empty() ? "" : plan.faults[0].which;
  };
  Layout between = twoRooms();
  between.rooms.push_back(room("cupboard", box(9050, 3000, 9150, 4000)));
  EXPECT_EQ(which(door("d1", "wood", "metal", {9020.1, 3500}, 900), twoRooms()), "(off its wall)");
  EXPECT_EQ(which(door("d1", "wood", "metal", {9000, 450}, 901), twoRooms()), "(too wide)");
  EXPECT_EQ(which(door("d1", "wood", "metal", {0, 3500}, 900), twoRooms()), "(does not meet the room)");
  EXPECT_EQ(which(door("d1", "wood", layout::kOutside, {9000, 3500}, 900), twoRooms()), "(room behind)");
  EXPECT_EQ(which(door("d1", "wood", "metal", {9000, 3500}, 900), between), "(room between)");
}

TEST(Faults, EachMachineThatOneStandsInIsNamed) {
  Layout l = twoRooms();
  l.machines = {machine("large", {3000, 3000}, 1000, 1000), machine("broad", {3900, 3000}, 1010, 1000),
                machine("small", {3500, 3000}, 400, 400)};
  using Named = std::vector<std::pair<std::string, std::string>>;
  const auto named = [&] {
    Named found;
    for (const Fault& f : buildPlan(l, Hours::Open).faults) found.emplace_back(f.subject, f.which);
    return found;
  };
  EXPECT_EQ(named(), (Named{{"large", "broad"}, {"small", "large"}, {"small", "broad"}}));
  l.machines[0].at.x = 1500;
  EXPECT_EQ(named(), (Named{{"small", "broad"}})) << "which stays what it is";
}

TEST(Faults, OfAHeapSomeAreNamedAndThatThereAreOthers) {
  Layout l = twoRooms();
  for (int i = 0; i < 40; ++i)
    l.machines.push_back(machine("m" + std::to_string(100 + i), {3000, 3000}, 1000 + i, 1000));
  std::vector<std::string> named;
  for (const Fault& f : buildPlan(l, Hours::Open).faults)
    if (f.subject == "m100") named.push_back(f.which);
  ASSERT_EQ(named.size(), 17u);
  EXPECT_EQ(named.front(), "m101");
  EXPECT_EQ(named.back(), "(others)");
}

TEST(Faults, EachRoomThatOneOverlapsIsNamed) {
  Layout l = twoRooms();
  l.rooms.push_back(room("cross", box(4000, 1000, 12000, 5000)));
  std::vector<std::string> named;
  for (const Fault& f : buildPlan(l, Hours::Open).faults) named.push_back(f.which);
  EXPECT_EQ(named, (std::vector<std::string>{"wood", "metal"}));
}

TEST(Faults, HazardOutlineThatCrossesItself) {
  Layout l = twoRooms();
  l.machines = {machine("saw", {3000, 3000}, 500, 500)};
  l.machines[0].hazard = {{0, 0}, {100, 100}, {100, 0}, {0, 90}};
  EXPECT_EQ(faulty(l), Ids{"saw"});
}

TEST(Faults, SayWhereInMetresOrFeet) {
  Layout l = twoRooms();
  l.machines = {machine("saw", {-1234.5, 20}, 500, 500)};
  EXPECT_EQ(onlyText(l), "Machine saw has its origin at (-1.234, 0.020) m, in no room.");
  l.unit = layout::LengthUnit::Foot;  // derived: 1234.5 mm is 48.60 inches, 20 mm 0.79
  EXPECT_EQ(onlyText(l), "Machine saw has its origin at (-4' 1/2\", 3/4\"), in no room.");
}

}  // namespace
}  // namespace stopwalk::floor
