#include "core/floor/door_overlaps.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/floor/plan.h"
#include "tests/support/draw.h"
#include "tests/support/random.h"

// Doors that lie over one another in one opening: the shut one wins, and the drawing is at fault.
namespace stopwalk::floor {
namespace {

using namespace draw;
using layout::Layout;
using layout::Locked;

Layout rooms(double wall) {
  Layout l;
  l.rooms = {room("wood", box(0, 0, 9000, 7000)), room("metal", box(9000 + wall, 0, 15000, 7000))};
  return l;
}

std::vector<std::string> subjects(const Plan& plan) {
  std::vector<std::string> ids;
  for (const Fault& f : plan.faults) ids.push_back(f.subject);
  return ids;
}
using Ids = std::vector<std::string>;

TEST(DoorOverlaps, ShutWinsOverOpenWhicheverIsFirstAndFromEitherSide) {
  for (const double wall : {0.0, 200.0}) {
    for (const bool swapped : {false, true}) {
      Layout l = rooms(wall);
      l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900),
                 door("d2", "metal", "wood", {9000 + wall, 3500}, 900, Locked::AfterHours)};
      if (swapped) std::swap(l.doors[0].locked, l.doors[1].locked);
      EXPECT_EQ(subjects(buildPlan(l, Hours::Open)), Ids{"d2"});
      EXPECT_EQ(buildPlan(l, Hours::Open).passages.size(), 2u);
      const Plan after = buildPlan(l, Hours::After);
      EXPECT_EQ(subjects(after), Ids{"d2"});
      EXPECT_TRUE(after.passages.empty()) << wall << swapped;
      EXPECT_EQ(after.shut, (std::vector<bool>{true, true}));
    }
  }
}

TEST(DoorOverlaps, AreTold) {
  Layout l = rooms(0);
  l.doors = {door("d1", "wood", "metal", {9000, 3500}, 900),
             door("d2", "wood", "metal", {9000, 4000}, 900, Locked::Always)};
  EXPECT_EQ(buildPlan(l, Hours::Open).faults.at(0).text,
            "Door d2 at (9.000, 4.000) m lies over door d1 at (9.000, 3.500) m in one opening; while one of "
            "them is shut, both "
            "are left shut.");
}

TEST(DoorOverlaps, SideBySideOrWithinAMillimetreIsNoFault) {
  for (const double overlap : {-50.0, 0.0, 0.99}) {
    Layout l = rooms(200);
    l.doors = {door("d1", "wood", "metal", {9000, 3000}, 900),
               door("d2", "wood", "metal", {9000, 3900 - overlap}, 900, Locked::Always)};
    const Plan plan = buildPlan(l, Hours::Open);
    EXPECT_EQ(subjects(plan), Ids{}) << overlap;
    EXPECT_EQ(plan.passages.size(), 1u);
  }
  Layout l = rooms(200);
  l.doors = {door("d1", "wood", "metal", {9000, 3000}, 900),
             door("d2", "wood", "metal", {9000, 3898.9}, 900, Locked::Always)};
  EXPECT_EQ(subjects(buildPlan(l, Hours::Open)), Ids{"d2"});
}

TEST(DoorOverlaps, OnlyTheDoorThatIsOverlappedIsShut) {
  Layout l = rooms(0);
  l.doors = {door("a", "wood", "metal", {9000, 1000}, 900), door("b", "wood", "metal", {9000, 1800}, 900),
             door("c", "wood", "metal", {9000, 2600}, 900, Locked::Always)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(plan.shut, (std::vector<bool>{false, true, true}));
  EXPECT_EQ(subjects(plan), (Ids{"b", "c"}));
}

TEST(DoorOverlaps, DoorToOutsideOrThatCannotBeBuiltWinsOverAPassage) {
  Layout l = rooms(700);  // far enough apart for a way out between them
  l.doors = {door("in", "wood", "metal", {9000, 3500}, 900),
             door("out", "metal", "outside", {9700, 3600}, 900)};
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(subjects(plan), Ids{"out"});
  EXPECT_TRUE(plan.passages.empty());
  EXPECT_EQ(plan.shut, (std::vector<bool>{true, true})) << "which of the two is there, nobody knows: no exit";
  l.doors[1] = door("bad", "wood", "metal", {9000, 6900}, 900);
  l.doors[0].at.y = 6400;
  EXPECT_TRUE(buildPlan(l, Hours::Open).passages.empty());
  EXPECT_EQ(subjects(buildPlan(l, Hours::Open)), (Ids{"bad", "bad"}));
}

// Asked pair by pair.
TEST(DoorOverlaps, AgreeWithEveryPairAsked) {
  for (unsigned seed = 1; seed <= 60; ++seed) {
    support::Random numbers(seed);
    Layout l = rooms(numbers.below(2) ? 0 : 150);
    for (int i = 0; i < 8; ++i) {
      const double width = numbers.between(100, 1500);
      l.doors.push_back(door("d" + std::to_string(i), "wood", "metal", {9000, numbers.between(800, 6200)},
                             width, numbers.below(4) ? Locked::Never : Locked::Always));
    }
    const Plan plan = buildPlan(l, Hours::Open);
    bool any = false;
    for (const layout::Door& d : l.doors) {
      bool shut = false;
      for (const layout::Door& other : l.doors) {
        const bool over = std::abs(d.at.y - other.at.y) < (d.width + other.width) / 2 - 1;
        any = any || (over && other.id != d.id);
        shut = shut || (over && other.locked == Locked::Always);
      }
      EXPECT_EQ(plan.shut[static_cast<std::size_t>(&d - l.doors.data())], shut)
          << "seed " << seed << ", " << d.id;
    }
    EXPECT_EQ(!plan.faults.empty(), any) << "seed " << seed;
  }
}

// A door copied over and over is told of in a time that grows with their number.
TEST(DoorOverlaps, ManyInOneOpening) {
  Layout l = rooms(200);
  for (int i = 0; i < 2000; ++i)
    l.doors.push_back(door("d" + std::to_string(i), "wood", "metal", {9000, 3500}, 900));
  const Plan plan = buildPlan(l, Hours::Open);
  EXPECT_EQ(plan.faults.size(), 1999u);
}

}  // namespace
}  // namespace stopwalk::floor
