#include "core/floor/surroundings.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/floor/walks.h"
#include "core/geometry/segment.h"
#include "tests/support/draw.h"

namespace stopwalk::floor {
namespace {

using namespace draw;
using geometry::Segment;
using layout::Layout;

const layout::DeviceKind kButton = [] {
  layout::DeviceKind k;
  k.actuated_by = layout::ActuatedBy::Hand;
  return k;
}();
const layout::DeviceKind kPedal = [] {
  layout::DeviceKind k;
  k.actuated_by = layout::ActuatedBy::Foot;
  return k;
}();
const layout::DeviceKind kBar = [] {
  layout::DeviceKind k = kPedal;
  k.shape = layout::Shape::Line;
  return k;
}();
const layout::DeviceKind kCord = [] {
  layout::DeviceKind k = kButton;
  k.shape = layout::Shape::Line;
  return k;
}();

// How a plan is drawn: every answer is the same turned and moved.
struct View {
  double turn;
  Point by;
  Point operator()(Point p) const { return geometry::turned(p, turn) + by; }
};
const View kViews[] = {{0, {0, 0}}, {90, {1e6, -1e6}}, {33.3, {0, 0}}, {201.7, {-1e6, 1e6}}};

Surroundings around(const Layout& l, const View& view = kViews[0], Hours hours = Hours::Open) {
  const Layout carried = draw::carried(l, view.turn, view.by);
  return Surroundings(carried, buildPlan(carried, hours));
}

layout::Device carriedDevice(layout::Device d, const View& view, bool on_machine) {
  if (on_machine) return d;
  d.at = view(d.at);
  d.faces += view.turn;
  return d;
}

Standing standingOf(const Layout& l, const layout::Device& d, const layout::DeviceKind& kind, std::optional<std::size_t> machine,
                    const View& view = kViews[0]) {
  const Surroundings s = around(l, view);
  return s.standing(s.placed(carriedDevice(d, view, machine.has_value()), kind, machine));
}

// Where along its facing the standing place is, the same in every view; empty: blocked.
std::optional<double> standsAt(const Layout& l, const layout::Device& d, const layout::DeviceKind& kind,
                               std::optional<std::size_t> machine = {}) {
  std::vector<std::optional<double>> all;
  for (const View& view : kViews) {
    const Layout carried = draw::carried(l, view.turn, view.by);
    const Surroundings s = around(l, view);
    const PlacedDevice p = s.placed(carriedDevice(d, view, machine.has_value()), kind, machine);
    const Standing standing = s.standing(p);
    EXPECT_EQ(standing.place.empty(), !standing.reason.empty());
    if (standing.place.points.empty()) {
      all.emplace_back();
    } else {
      all.emplace_back(geometry::distance(p.at, standing.place.points[0]));
    }
    EXPECT_EQ(all.back().has_value(), all.front().has_value()) << view.turn;
    if (all.back() && all.front()) {
      EXPECT_NEAR(*all.back(), *all.front(), 1e-5) << view.turn;
    }
  }
  return all.front();
}

std::optional<double> atHand(const Layout& l, Point station, const layout::Device& d, const layout::DeviceKind& kind,
                             std::optional<std::size_t> machine = {}) {
  std::vector<std::optional<double>> all;
  for (const View& view : kViews) {
    const Surroundings s = around(l, view);
    all.push_back(s.atHand(view(station), s.placed(carriedDevice(d, view, machine.has_value()), kind, machine)));
    EXPECT_EQ(all.back().has_value(), all.front().has_value()) << view.turn << " " << station.x << " " << station.y;
  }
  return all.front();
}

bool inSight(const Layout& l, Point eye, const layout::Device& d, std::optional<std::size_t> machine = {}) {
  std::vector<bool> all;
  for (const View& view : kViews) {
    const Surroundings s = around(l, view);
    all.push_back(s.inSight(view(eye), s.placed(carriedDevice(d, view, machine.has_value()), kButton, machine)));
    EXPECT_EQ(all.back(), all.front()) << view.turn;
  }
  return all.front();
}

Layout oneRoom() {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 10000, 8000))};
  return l;
}

// Device on the left wall at (0, 4000), facing into the room.
layout::Device onWall(std::optional<double> height = {}) { return device("stop", "mushroom-button", {0, 4000}, 0, height); }

TEST(Standing, HandDeviceOnFreeFloorIsUsedFrom450) {
  EXPECT_NEAR(standsAt(oneRoom(), onWall(), kButton).value(), 450, 1e-6);
}

TEST(Standing, FootDeviceIsUsedFromExactly300) {
  Layout l = oneRoom();
  EXPECT_NEAR(standsAt(l, onWall(), kPedal).value(), 300, 1e-6);
  l.fixtures = {bench("bench", {300, 4000}, 100, 500, 100)};  // no higher place is sought
  EXPECT_FALSE(standsAt(l, onWall(200), kPedal).has_value());
  l.fixtures = {bench("bench", {350, 4000}, 100, 500)};  // its outline is on the floor
  EXPECT_NEAR(standsAt(l, onWall(), kPedal).value(), 300, 1e-6);
}

TEST(Standing, ButtonOverALowBenchIsUsedFromBeforeIt) {
  Layout l = oneRoom();
  l.fixtures = {bench("bench", {300, 4000}, 600, 2000, 900)};
  EXPECT_NEAR(standsAt(l, onWall(1200), kButton).value(), 600, 1e-6);
  l.fixtures[0].footprint = layout::Rectangle{700, 2000};  // front at exactly 650
  EXPECT_NEAR(standsAt(l, onWall(1200), kButton).value(), 650, 1e-6);
  l.fixtures[0].footprint = layout::Rectangle{700.01, 2000};
  EXPECT_FALSE(standsAt(l, onWall(1200), kButton).has_value());
}

TEST(Standing, WhatIsNotKnownToBeLowerStandsBetween) {
  Layout l = oneRoom();
  l.fixtures = {bench("bench", {200, 4000}, 200, 2000, 900)};  // 100 to 300 before the device
  EXPECT_TRUE(standsAt(l, onWall(901), kButton).has_value());
  EXPECT_FALSE(standsAt(l, onWall(900), kButton).has_value());
  EXPECT_FALSE(standsAt(l, onWall(), kButton).has_value());
  EXPECT_EQ(standingOf(l, onWall(), kButton, {}).reason, "bench stands between");
  l.fixtures[0].height.reset();
  EXPECT_FALSE(standsAt(l, onWall(2000), kButton).has_value());
}

TEST(Standing, WhatTheDeviceIsMountedOnDoesNotStandBetween) {
  Layout l = oneRoom();
  const auto on_post = device("stop", "mushroom-button", {3000, 4000}, 0);
  for (const double at : {2900.0, 2901.0, 2960.0, 3000.0}) {  // from its face to its middle
    l.fixtures = {bench("post", {at, 4000}, 200, 200)};
    EXPECT_TRUE(standsAt(l, on_post, kButton).has_value()) << at;
  }
  l.fixtures = {bench("post", {3001, 4000}, 200, 200)};  // more of it before the device than behind
  EXPECT_FALSE(standsAt(l, on_post, kButton).has_value());
  l.fixtures = {bench("cabinet", {3000, 4000}, 202, 800)};  // deeper in it than 100 mm
  EXPECT_FALSE(standsAt(l, on_post, kButton).has_value());
}

// A cabinet put before a stop covers it, whether it touches the wall or not.
TEST(Standing, CabinetThatTouchesTheDeviceStandsBetween) {
  Layout l = oneRoom();
  for (const double gap : {-5.0, 0.0, 0.9, 5.0}) {
    for (const std::optional<double> height : {std::optional<double>(), std::optional(2000.0), std::optional(1100.0)}) {
      l.fixtures = {bench("cabinet", {gap + 150, 4000}, 300, 1000, height)};
      EXPECT_FALSE(standsAt(l, onWall(1100), kButton).has_value()) << gap;
      EXPECT_FALSE(atHand(l, {500, 4000}, onWall(1100), kButton).has_value()) << gap;
      EXPECT_EQ(standingOf(l, onWall(1100), kButton, {}).reason, "cabinet stands between");
    }
    l.fixtures[0].height = 1000;  // lower than the device: used across it
    EXPECT_TRUE(standsAt(l, onWall(1100), kButton).has_value()) << gap;
    EXPECT_TRUE(atHand(l, {500, 4000}, onWall(1100), kButton).has_value());
  }
}

// So does one put before a machine's own stop; the bench that the machine stands on does not, nor a post at its side.
TEST(Standing, CabinetBeforeAMachinesStopStandsBetween) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {5000, 4000}, 600, 600, 900)};
  const auto on_saw = device("stop", "mushroom-button", {0, -300}, 270, 1000);
  for (const double gap : {-5.0, 0.0, 0.9, 5.0}) {
    for (const std::optional<double> height : {std::optional<double>(), std::optional(2000.0)}) {
      l.fixtures = {bench("cabinet", {5000, 3700 - gap - 200}, 600, 400, height)};
      EXPECT_FALSE(standsAt(l, on_saw, kButton, 0).has_value()) << gap;
      EXPECT_FALSE(atHand(l, {5000, 3060}, on_saw, kButton, 0).has_value()) << gap;
      EXPECT_EQ(standingOf(l, on_saw, kButton, 0).reason, "cabinet stands between");
    }
  }
  l.fixtures = {bench("under-it", {5000, 3800}, 1000, 1100)};  // a long way before the stop, and the saw stands on it
  EXPECT_TRUE(atHand(l, {5000, 3200}, on_saw, kButton, 0).has_value());
  l.fixtures = {bench("post", {5000, 3680}, 60, 60)};  // carries the stop in its middle
  EXPECT_TRUE(atHand(l, {5000, 3200}, device("stop", "mushroom-button", {0, -320}, 270, 1000), kButton, 0).has_value());
}

// Two rooms that share a wall of no thickness at x = 5000.
Layout thinWall() {
  Layout l;
  l.rooms = {room("west", box(0, 0, 5000, 8000)), room("east", box(5000, 0, 10000, 8000))};
  return l;
}

TEST(Standing, DeviceBeyondAThinWallDoesNotWorkThroughIt) {
  const Layout l = thinWall();
  for (const double in : {1.1, 50.0, 100.0}) {
    const auto wrong = device("stop", "mushroom-button", {5000 + in, 4000}, 180);  // in the east room, faces west
    EXPECT_FALSE(standsAt(l, wrong, kButton).has_value()) << in;
    EXPECT_EQ(standingOf(l, wrong, kButton, {}).reason, "a wall stands between");
    EXPECT_FALSE(atHand(l, {4700, 4000}, wrong, kButton).has_value()) << in;
    EXPECT_FALSE(atHand(l, {5400, 4000}, wrong, kButton).has_value()) << in;
    const auto right = device("stop", "mushroom-button", {5000 + in, 4000}, 0);
    EXPECT_TRUE(atHand(l, {5400, 4000}, right, kButton).has_value());
    EXPECT_FALSE(atHand(l, {4700, 4000}, right, kButton).has_value());
  }
  for (const double off : {-1.0, 0.0, 1.0})  // on the wall: on the side it faces
    EXPECT_TRUE(atHand(l, {4700, 4000}, device("stop", "mushroom-button", {5000 + off, 4000}, 180), kButton).has_value()) << off;
}

TEST(Standing, DeviceDrawnInAThickWallWorks) {
  Layout l = thinWall();
  l.rooms[1].outline = box(5200, 0, 10000, 8000);
  for (const double in : {1.0, 50.0, 100.0})
    EXPECT_TRUE(atHand(l, {4700, 4000}, device("stop", "mushroom-button", {5000 + in, 4000}, 180), kButton).has_value()) << in;
}

TEST(Standing, OwnMachineDoesNotStandBetween) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {3000, 4000}, 400, 400)};
  const auto behind = [](double y) { return device("stop", "mushroom-button", {0, y}); };  // used across the saw
  EXPECT_NEAR(standsAt(l, behind(240), kButton, 0).value(), 450, 1e-6);
  EXPECT_NEAR(standsAt(l, behind(300), kButton, 0).value(), 500, 1e-6);  // its front
  EXPECT_FALSE(standsAt(l, behind(451), kButton, 0).has_value());
  l.fixtures = {bench("bench", {3000, 4000}, 50, 50)};  // stands in the saw, and is not the saw
  EXPECT_FALSE(standsAt(l, behind(240), kButton, 0).has_value());
}

TEST(Standing, NoFloorBeforeTheDevice) {
  Layout l = oneRoom();
  const auto outward = device("stop", "mushroom-button", {0, 4000}, 180);
  EXPECT_FALSE(standsAt(l, outward, kButton).has_value());
  const Standing s = standingOf(l, outward, kButton, {});
  EXPECT_EQ(s.reason, "no free floor to stand on from 0.450 m to 0.650 m before it");
  EXPECT_EQ(s.room, 0u);  // of its nearest wall
  l.unit = layout::LengthUnit::Foot;  // derived: 450 mm is 17.717 inches, 650 mm 25.591
  EXPECT_EQ(standingOf(l, outward, kButton, {}).reason,
            "no free floor to stand on from 1' 5 3/4\" to 2' 1 1/2\" before it");
}

TEST(Standing, NobodyStandsInACrackBetweenTwoBenches) {
  Layout l = oneRoom();
  l.fixtures = {bench("a", {500, 3500}, 1000, 1000, 100), bench("b", {500, 4500}, 1000, 1000, 100)};
  EXPECT_FALSE(standsAt(l, onWall(1200), kButton).has_value());
  l.fixtures = {bench("a", {300, 4000}, 350, 1000, 100), bench("b", {625, 4000}, 300, 1000, 100)};  // they meet at 475
  EXPECT_FALSE(standsAt(l, onWall(1200), kButton).has_value());
  l.fixtures[1].at.x = 626;
  EXPECT_NEAR(standsAt(l, onWall(1200), kButton).value(), 475, 1e-6);
}

TEST(Standing, WallIsFreeOnlyInTheLastHundredMillimetres) {
  Layout l = oneRoom();
  for (const auto& [depth, free] : {std::pair{100.0, true}, {100.1, false}, {0.0, true}}) {
    EXPECT_EQ(standsAt(l, device("stop", "b", {-depth, 4000}, 0), kButton).has_value(), free) << depth;
  }
  l.machines = {machine("saw", {1000, 4000}, 400, 400)};
  const auto in_wall = device("stop", "b", {-1050, 0}, 0);  // on a machine: no wall is free
  EXPECT_FALSE(standsAt(l, in_wall, kButton, 0).has_value());
}

TEST(Standing, WallOfNoThicknessBlocks) {
  Layout l = oneRoom();
  l.rooms.push_back(room("metal", box(10000, 0, 12000, 8000)));
  const auto d = device("stop", "b", {9800, 4000}, 0);  // 200 before the wall, used from 250 behind it
  EXPECT_FALSE(standsAt(l, d, kButton).has_value());
  EXPECT_EQ(standingOf(l, d, kButton, {}).reason, "a wall stands between");
  EXPECT_EQ(standingOf(l, d, kButton, {}).room, 1u);
  l.doors = {door("d1", "wood", "metal", {10000, 4000}, 900)};
  EXPECT_TRUE(standsAt(l, d, kButton).has_value());
}

// A closet just as deep as one stands before a device: its wall to the shop is beside the standing place, not
// under it, and nobody gets there from the shop.
TEST(Standing, InAShallowClosetIsNotInTheShop) {
  Layout l;
  l.rooms = {room("closet", box(0, 0, 450, 3000)), room("shop", box(450, 0, 8000, 6000))};
  const auto button = device("stop", "b", {0, 1500}, 0, 1200);
  const auto cord = [] {
    layout::Device d = device("cord", "c", {0, 1500}, 0, 1200);
    d.length = 800;
    return d;
  }();
  for (const View& view : kViews) {
    const Walks walks(buildPlan(draw::carried(l, view.turn, view.by), Hours::Open));
    for (const auto& [d, kind] : {std::pair{button, kButton}, {cord, kCord}}) {
      const Standing standing = standingOf(l, d, kind, {}, view);
      EXPECT_EQ(standing.room, 0u);
      EXPECT_FALSE(standing.place.empty());
      EXPECT_EQ(walks.between({{view({4000, 1500})}, {}}, standing.place).status, WalkStatus::Unreachable) << view.turn;
    }
  }
  l.rooms[0].outline = box(0, 0, 500, 3000);
  l.rooms[1].outline = box(500, 0, 8000, 6000);
  l.fixtures = {bench("shelf", {250, 1500}, 500, 3000, 900)};  // fills it: one would stand beyond the wall
  EXPECT_FALSE(standsAt(l, button, kButton).has_value());
  l.rooms = {room("shop", box(0, 0, 8000, 6000))};
  EXPECT_NEAR(standsAt(l, button, kButton).value(), 500, 1e-6);
}

TEST(Standing, RoomOfADeviceInAThickWallIsTheOneItFaces) {
  Layout l = oneRoom();
  l.rooms.push_back(room("metal", box(10200, 0, 12000, 8000)));
  EXPECT_EQ(standingOf(l, device("stop", "b", {10100, 4000}, 0), kButton, {}).room, 1u);
  EXPECT_EQ(standingOf(l, device("stop", "b", {10100, 4000}, 180), kButton, {}).room, 0u);
}

// The stretches of a bar's line from which it is used, in mm from its middle, along the line.
std::vector<geometry::Stretch> barFrom(const Layout& l, const layout::Device& d, const layout::DeviceKind& kind,
                                       std::optional<std::size_t> machine, const View& view) {
  const Surroundings s = around(l, view);
  const PlacedDevice p = s.placed(carriedDevice(d, view, machine.has_value()), kind, machine);
  const Point out = geometry::direction(p.faces), along{out.y, -out.x};
  std::vector<geometry::Stretch> found;
  for (const Segment& line : s.standing(p).place.lines) {
    EXPECT_NEAR(dot(out, line.a - p.at), p.foot ? 300 : 450, 1e-6);
    found.push_back({dot(along, line.a - p.at), dot(along, line.b - p.at)});
  }
  return found;
}

layout::Device bar(Point at, double length, double faces = 270) {
  layout::Device d = device("bar", "foot-bar", at, faces, 150);
  d.length = length;
  return d;
}

TEST(StandingOfBars, IsTheLineBeforeIt) {
  Layout l = oneRoom();
  l.machines = {machine("lathe", {4000, 4000}, 2000, 900)};
  const auto found = barFrom(l, bar({0, -450}, 1800), kBar, 0, kViews[0]);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].from, -900, 1e-9);
  EXPECT_NEAR(found[0].to, 900, 1e-9);
}

TEST(StandingOfBars, IsCutWhereSolidsStandOrStandBetween) {
  Layout l = oneRoom();
  l.machines = {machine("lathe", {4000, 4000}, 2000, 900)};
  // A column between bar and place, and a bench over the place; bar at y = 3550, places at y = 3250.
  l.fixtures = {bench("column", {3600, 3400}, 200, 100), bench("bench", {4700, 3200}, 300, 200)};
  for (const View& view : kViews) {
    const auto found = barFrom(l, bar({0, -450}, 1800), kBar, 0, view);
    ASSERT_EQ(found.size(), 3u) << view.turn;
    const double expected[] = {-900, -850, -550, 300, 500, 900};
    for (int i = 0; i < 3; ++i) {
      EXPECT_NEAR(found[i].from, expected[2 * i], 1e-5);
      EXPECT_NEAR(found[i].to, expected[2 * i + 1], 1e-5);
    }
  }
}

TEST(StandingOfBars, IsBlockedWhenNoPointIsLeft) {
  Layout l = oneRoom();
  l.machines = {machine("lathe", {4000, 1000}, 2000, 900)};
  l.fixtures = {bench("bench", {4000, 300}, 3000, 200)};
  const Standing s = standingOf(l, bar({0, -450}, 1800), kBar, 0);
  EXPECT_TRUE(s.place.empty());
  EXPECT_EQ(s.reason, "no free floor to stand on 0.300 m before it");
  EXPECT_EQ(s.room, 0u);
}

TEST(StandingOfBars, WhatAnyPointOfItIsMountedOnIsSpared) {
  Layout l = oneRoom();
  l.machines = {machine("lathe", {4000, 4000}, 2000, 900)};
  l.fixtures = {bench("post", {4899, 3550}, 100, 100)};  // the bar's end, 849..900 of it, lies in the post
  const auto found = barFrom(l, bar({0, -450}, 1800), kBar, 0, kViews[0]);
  ASSERT_EQ(found.size(), 1u);
  EXPECT_NEAR(found[0].from, -900, 1e-9);
  for (const double y : {3500.0, 3498.0}) {  // stands before it, touching or 2 mm off
    l.fixtures[0].at.y = y;
    EXPECT_NEAR(barFrom(l, bar({0, -450}, 1800), kBar, 0, kViews[0])[0].from, -849, 1e-9) << y;
  }
}

TEST(AtHand, ReachIsInclusive) {
  const Layout l = oneRoom();
  EXPECT_NEAR(atHand(l, {650, 4000}, onWall(), kButton).value(), 650, 1e-6);
  EXPECT_FALSE(atHand(l, {650.01, 4000}, onWall(), kButton).has_value());
  EXPECT_NEAR(atHand(l, {500, 4000}, onWall(), kPedal).value(), 500, 1e-6);
  EXPECT_FALSE(atHand(l, {500.01, 4000}, onWall(), kPedal).has_value());
}

TEST(AtHand, WallDeviceOnlyFromTheSideItFaces) {
  Layout l = oneRoom();
  const auto d = device("stop", "b", {5000, 4000}, 0);
  EXPECT_TRUE(atHand(l, {5001, 4300}, d, kButton).has_value());
  EXPECT_FALSE(atHand(l, {5000, 4300}, d, kButton).has_value());
  EXPECT_FALSE(atHand(l, {4700, 4000}, d, kButton).has_value());
  l.machines = {machine("saw", {5000, 4000}, 200, 200)};
  const auto on_saw = device("stop", "b", {0, 0}, 0, 900);
  EXPECT_FALSE(atHand(l, {4700, 4000}, on_saw, kButton, 0).has_value());
  l.machines[0].height = 800;  // on a machine that is known to be lower: any side
  EXPECT_TRUE(atHand(l, {4700, 4000}, on_saw, kButton, 0).has_value());
}

// Nobody reaches through a machine to the button on its far side; round a corner of it, and over one that is known
// to be lower, one does. So with a shelf that carries the machine.
TEST(AtHand, NotThroughTheMachineFromBehind) {
  const Point behind{5000, 4300}, before{5000, 3500};
  for (const bool in_shelf : {false, true}) {
    for (const auto height : {std::optional<double>(), std::optional<double>(2600.0), std::optional<double>(1000.0)}) {
      Layout l = oneRoom();
      l.machines = {machine("saw", {5000, 4000}, in_shelf ? 300 : 2400, 500, in_shelf ? 800 : height)};
      if (in_shelf) l.fixtures = {bench("shelf", {5000, 4000}, 3000, 500, height)};
      const auto on_front = device("stop", "mushroom-button", {0, -250}, 270, 1100);
      const bool is_lower = height == 1000.0;
      EXPECT_EQ(atHand(l, behind, on_front, kButton, 0).has_value(), is_lower) << in_shelf;
      EXPECT_TRUE(atHand(l, before, on_front, kButton, 0).has_value()) << in_shelf;
      const auto deep_in = device("stop", "mushroom-button", {0, 200}, 270, 1100);  // and faces who comes from the front
      EXPECT_TRUE(atHand(l, {5000, 3700}, deep_in, kButton, 0).has_value()) << in_shelf;
    }
  }
  Layout l = oneRoom();
  l.machines = {machine("saw", {5000, 4000}, 1200, 500)};
  const auto on_side = device("stop", "mushroom-button", {-600, -200}, 180, 1100);
  EXPECT_TRUE(atHand(l, {4800, 3400}, on_side, kButton, 0).has_value());   // round the corner: 71 mm of the machine
  EXPECT_FALSE(atHand(l, {4850, 4300}, on_side, kButton, 0).has_value());  // through it
}

// However thin it is: a corner must be near.
TEST(AtHand, NotThroughAThinMachineFromBehind) {
  for (const double deep : {10.0, 60.0, 90.0}) {
    Layout l = oneRoom();
    l.machines = {machine("panel", {5000, 4000}, 1500, deep, 2000)};
    const auto stop = [&](double x) { return device("stop", "mushroom-button", {x, -deep / 2}, 270, 1000); };
    const double back = 4000 + deep / 2;
    EXPECT_FALSE(atHand(l, {5000, back + 300}, stop(0), kButton, 0).has_value()) << deep;
    EXPECT_FALSE(atHand(l, {5000, back + 10}, stop(0), kButton, 0).has_value()) << deep;
    EXPECT_TRUE(atHand(l, {5000, 3600}, stop(0), kButton, 0).has_value()) << deep;
    EXPECT_FALSE(atHand(l, {5600, back + 300}, stop(710), kButton, 0).has_value()) << deep;  // the corner hides it
    EXPECT_TRUE(atHand(l, {6000, back + 50}, stop(710), kButton, 0).has_value()) << deep;    // round the corner
  }
}

// Neither where a fence begins at the corner, or something covers the device, or in a hazard, or further than one
// reaches.
TEST(AtHand, RoundACornerOnlyWhereNothingIsInTheWay) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {5000, 4000}, 1200, 500)};
  const auto on_side = device("stop", "mushroom-button", {-600, -200}, 180, 1100);
  const Point before{4800, 3400};
  EXPECT_TRUE(atHand(l, before, on_side, kButton, 0).has_value());
  l.fixtures = {bench("fence", {4400, 3250}, 40, 1000)};  // up to the corner
  EXPECT_FALSE(atHand(l, before, on_side, kButton, 0).has_value());
  l.fixtures = {bench("cover", {4390, 3800}, 20, 60)};
  EXPECT_FALSE(atHand(l, before, on_side, kButton, 0).has_value());
  l.fixtures = {};
  l.machines[0].hazard = box(-700, -240, -590, -150);
  EXPECT_FALSE(atHand(l, before, on_side, kButton, 0).has_value());
  l.machines[0].hazard = {};
  EXPECT_FALSE(atHand(l, {4900, 3395}, on_side, kButton, 0).has_value());  // 642 mm away, 669 round the corner
}

// A partition or a shut door meets the device's wall right beside the device: whoever stands on the other side
// is in reach, and reaches nothing.
TEST(AtHand, NotThroughAPartitionOrShutDoorBesideTheDevice) {
  for (const double thick : {0.0, 50.0})
    for (const double deep : {0.0, 30.0, 80.0})  // in the wall
      for (const bool shut_door : {false, true}) {
        Layout l;
        l.rooms = {room("a", box(0, 0, 5000, 4000)), room("b", box(0, -4000, 5000, -thick))};
        if (shut_door) l.doors = {door("d", "a", "b", {451, 0}, 900, layout::Locked::Always)};
        const auto d = device("stop", "b", {-deep, 40}, 0);
        EXPECT_TRUE(atHand(l, {300, 240}, d, kButton).has_value());
        EXPECT_FALSE(atHand(l, {300, -220 - thick}, d, kButton).has_value()) << thick << " " << deep;
        EXPECT_FALSE(atHand(l, {60, -330 - thick}, d, kButton).has_value()) << thick << " " << deep;
        EXPECT_FALSE(inSight(l, {300, -220 - thick}, d)) << thick << " " << deep;
      }
}

// Round the end of a partition, through the corner where it meets the wall, though all is one room.
TEST(AtHand, NotThroughTheCornerOfOneRoom) {
  Layout l;
  l.rooms = {room("a", {{0, 0}, {2000, 0}, {2000, -50}, {0, -50}, {0, -4000}, {5000, -4000}, {5000, 4000}, {0, 4000}})};
  const auto d = device("stop", "b", {-20, 40}, 0);  // 92 mm of wall between it and the other side
  EXPECT_FALSE(atHand(l, {80, -410}, d, kButton).has_value());
  EXPECT_TRUE(atHand(l, {80, 490}, d, kButton).has_value());
}

// Drawn in a wall that bends or bulges: still its own.
TEST(AtHand, InTheThicknessOfAWallThatBends) {
  Layout l;
  Polygon round = {{0, 0}, {5000, 0}, {5000, 8000}, {0, 8000}};
  for (int degrees = 80; degrees >= -80; degrees -= 20) round.push_back(Point{-100, 4000} + 300 * geometry::direction(degrees));
  l.rooms = {room("wood", round)};
  const auto d = device("stop", "b", {150, 4000}, 0);  // 50 deep in a column
  for (const double degrees : {-40, -20, 0, 20, 40})
    EXPECT_TRUE(atHand(l, Point{150, 4000} + 500 * geometry::direction(degrees), d, kButton).has_value()) << degrees;
}

TEST(AtHand, OnlyTheNearestPointOfABarCounts) {
  Layout l = oneRoom();
  l.machines = {machine("lathe", {4000, 4000}, 2000, 900)};
  EXPECT_NEAR(atHand(l, {4300, 3150}, bar({0, -450}, 1800), kBar, 0).value(), 400, 1e-6);
  EXPECT_NEAR(atHand(l, {5200, 3150}, bar({0, -450}, 1800), kBar, 0).value(), 500, 1e-6);
  // A column before the nearest point: the rest of the bar is free, and does not count.
  l.fixtures = {bench("column", {4300, 3400}, 20, 100)};
  EXPECT_FALSE(atHand(l, {4300, 3150}, bar({0, -450}, 1800), kBar, 0).has_value());
}

TEST(AtHand, HazardOutlinesOfAllMachinesStopHandsNotFeet) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {4000, 4000}, 800, 800), machine("other", {8000, 4000}, 100, 100)};
  l.machines[1].hazard = box(-4100, -600, -3900, -500);  // in the plan 3900..4100, 3400..3500
  const auto d = device("stop", "b", {0, -400});
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kPedal, 0).has_value());
  l.machines[1].hazard = box(-4100, -600, -4000, -500);  // the line runs along its outline
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.machines[1].hazard = box(-4100, -500, -3900, -300);  // the actuator lies in it
  EXPECT_FALSE(atHand(l, {4000, 3600}, d, kButton, 0).has_value());
  EXPECT_FALSE(atHand(l, {4000, 3600}, d, kButton, 0).has_value());
  l.machines[1].hazard = box(-4100, -900, -3900, -750);  // the station stands in it
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  EXPECT_FALSE(atHand(l, {4000, 3200}, device("stop", "b", {0, -800}), kButton, 0).has_value());  // both, at one point
}

TEST(AtHand, GrazingIsNotCrossing) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {4000, 4000}, 800, 800)};
  const auto d = device("stop", "b", {0, -400});
  l.fixtures = {bench("bench", {4100, 3400}, 200, 200)};  // its left side along the line
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures[0].at.x = 4099.9;
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures[0].at.x = 4100 + 100 * (std::sqrt(2) - 1);  // a corner on the line
  l.fixtures[0].turn = 45;
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures[0].at.x -= 0.1;
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
}

TEST(AtHand, NoHandPassesBetweenThingsThatTouch) {
  Layout l = oneRoom();
  l.machines = {machine("saw", {4000, 4000}, 800, 800)};
  const auto d = device("stop", "b", {0, -400});
  l.fixtures = {bench("left", {3900, 3400}, 200, 200), bench("right", {4100, 3400}, 200, 200)};
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures[1].at.x = 4101;  // a gap of 1 mm, and the line along the left one
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures = {bench("left", {3900, 3500}, 200, 100), bench("right", {4100, 3400}, 200, 100)};  // corner to corner
  EXPECT_FALSE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
  l.fixtures[1].at.y = 3390;  // one after the other
  EXPECT_TRUE(atHand(l, {4000, 3200}, d, kButton, 0).has_value());
}

TEST(AtHand, WallsMeetingAtTheLineAreCrossedAndAWallsEndIsNot) {
  Layout l;
  // The wall between the rooms has a corner where the line passes.
  l.rooms = {room("a", {{0, 0}, {5000, 0}, {5000, 4000}, {5000, 8000}, {0, 8000}}), room("b", box(5000, 0, 9000, 8000))};
  l.machines = {machine("saw", {4900, 4000}, 100, 100)};
  const auto d = device("stop", "b", {0, 0}, 0);
  EXPECT_FALSE(atHand(l, {5300, 4000}, d, kButton, 0).has_value());
  EXPECT_FALSE(atHand(l, {5300, 4200}, d, kButton, 0).has_value());
  EXPECT_TRUE(atHand(l, {5000, 4200}, d, kButton, 0).has_value());  // stands on the line of the wall
  l.doors = {door("d1", "a", "b", {5000, 4450}, 900)};              // a jamb exactly on the line
  EXPECT_TRUE(atHand(l, {5300, 4000}, d, kButton, 0).has_value());
  l.doors[0].at.y = 4451;
  EXPECT_FALSE(atHand(l, {5300, 4000}, d, kButton, 0).has_value());
}

TEST(InSight, OnlyWhatIsHigherThanTheEyeHides) {
  Layout l = oneRoom();
  l.fixtures = {bench("rack", {3000, 4000}, 500, 500, 1500)};
  EXPECT_TRUE(inSight(l, {6000, 4000}, onWall(800)));
  l.fixtures[0].height = 1501;
  EXPECT_FALSE(inSight(l, {6000, 4000}, onWall(2000)));
  l.fixtures[0].height.reset();
  EXPECT_FALSE(inSight(l, {6000, 4000}, onWall()));
  EXPECT_TRUE(inSight(l, {6000, 6000}, onWall()));
}

TEST(InSight, WallsHideAndTheOwnMachineDoesNot) {
  Layout l = oneRoom();
  l.rooms.push_back(room("metal", box(10000, 0, 12000, 8000)));
  EXPECT_FALSE(inSight(l, {11000, 4000}, onWall()));
  l.doors = {door("d1", "wood", "metal", {10000, 4000}, 900)};
  EXPECT_TRUE(inSight(l, {11000, 4000}, onWall()));
  l.machines = {machine("press", {5000, 4000}, 900, 900, 3000)};
  EXPECT_FALSE(inSight(l, {11000, 4000}, onWall()));
  EXPECT_TRUE(inSight(l, {11000, 4000}, device("stop", "b", {-500, 0}, 180), 0));
}

TEST(Surroundings, RoomsAndPassagesIncludeTheirOutlines) {
  Layout l = oneRoom();
  l.rooms.push_back(room("metal", box(10200, 0, 12000, 8000)));
  l.doors = {door("other", "wood", "outside", {0, 4000}, 900), door("d1", "wood", "metal", {10000, 4000}, 900, layout::Locked::AfterHours)};
  for (const View& view : kViews) {
    const Surroundings s = around(l, view), after = around(l, view, Hours::After);
    EXPECT_EQ(s.roomAt(view({10000, 4000})), 0u);
    EXPECT_EQ(s.roomAt(view({10200, 4000})), 1u);
    EXPECT_EQ(s.roomAt(view({10100, 4000})), std::nullopt);
    EXPECT_EQ(s.passageAt(view({10100, 4450})), 1u);
    EXPECT_EQ(s.passageAt(view({10100, 4450.1})), std::nullopt);
    EXPECT_EQ(after.passageAt(view({10100, 4000})), std::nullopt);
    EXPECT_EQ(s.passageAt(view({100, 4000})), std::nullopt);
  }
}

TEST(Surroundings, PassageOfNoThicknessIsItsLine) {
  Layout l = oneRoom();
  l.rooms.push_back(room("metal", box(10000, 0, 12000, 8000)));
  l.doors = {door("d1", "wood", "metal", {10000, 4000}, 900)};
  const Surroundings s = around(l);
  EXPECT_EQ(s.passageAt({10000, 4000}), 0u);
  EXPECT_EQ(s.passageAt({10001, 4000}), std::nullopt);
}

}  // namespace
}  // namespace stopwalk::floor
