// What must hold of any walking distance, on random layouts.
#include <gtest/gtest.h>

#include <algorithm>
#include <limits>
#include <vector>

#include "core/floor/walks.h"
#include "tests/outside/compared.h"
#include "tests/outside/oracle_region.h"
#include "tests/support/plain_plan.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::outside {
namespace {

using floor::Plan;
using floor::Walk;
using floor::Walks;
using floor::WalkStatus;

constexpr double kRounding_mm = 0.002;
// Plan coordinates at a thousand metres are rounded to 1e-10 mm, then to the lattice; a turned plan's once
// more.
constexpr double kMoved_mm = 0.01;

// Random points of the plan's rooms that keep `clearance` from everything.
std::vector<Point> freePlaces(const Plan& plan, double clearance, std::uint64_t seed, std::size_t count) {
  support::Random random(seed);
  std::vector<Point> places;
  for (int tries = 0; tries < 500 && places.size() < count; ++tries) {
    const Polygon& room =
        plan.rooms[static_cast<std::size_t>(random.below(static_cast<int>(plan.rooms.size())))];
    const Point a = room[static_cast<std::size_t>(random.below(static_cast<int>(room.size())))];
    const Point b = room[static_cast<std::size_t>(random.below(static_cast<int>(room.size())))];
    const Point c = room[static_cast<std::size_t>(random.below(static_cast<int>(room.size())))];
    const double s = random.between(0, 1), t = random.between(0, 1);
    const Point p = a + s * (b - a) + (1 - s) * t * (c - a);
    if (onFloor(plan, p) && distanceToAll(plan, p) > clearance + 0.01) places.push_back(p);
  }
  return places;
}

class WalksProperties : public testing::TestWithParam<int> {
 protected:
  std::uint64_t seed() const { return static_cast<std::uint64_t>(6000 + GetParam()); }
  layout::Layout layout() const { return support::randomLayout(seed()); }
};

TEST_P(WalksProperties, SameBothWaysAndNeverUnderTheStraightLine) {
  const Plan plan = floor::buildPlan(layout(), floor::Hours::Open);
  const Walks walks(plan);
  const std::vector<Point> places = stationsOf(layout());
  for (const Point a : places)
    for (const Point b : places) {
      const Walk there = walks.between(a, b), back = walks.between(b, a);
      ASSERT_EQ(there.status, back.status) << "seed " << seed();
      if (!there.found()) continue;
      EXPECT_NEAR(there.length_mm, back.length_mm, kRounding_mm) << "seed " << seed();
      EXPECT_GE(there.length_mm, distance(a, b) - kRounding_mm) << "seed " << seed();
    }
}

TEST_P(WalksProperties, NoWayRoundIsShorter) {
  const Plan plan = floor::buildPlan(layout(), floor::Hours::Open);
  const Walks walks(plan);
  const std::vector<Point> places = freePlaces(plan, 305, seed(), 7);
  for (const Point a : places)
    for (const Point b : places)
      for (const Point c : places) {
        const Walk ab = walks.between(a, b), bc = walks.between(b, c), ac = walks.between(a, c);
        if (ab.status != WalkStatus::Walk || bc.status != WalkStatus::Walk) continue;
        ASSERT_EQ(ac.status, WalkStatus::Walk) << "seed " << seed();
        EXPECT_LE(ac.length_mm, ab.length_mm + bc.length_mm + kRounding_mm) << "seed " << seed();
      }
}

TEST_P(WalksProperties, GrowsWithTheClearance) {
  const Plan plan = floor::buildPlan(layout(), floor::Hours::Open);
  const std::vector<Point> places = freePlaces(plan, 400, seed(), 6);
  std::vector<double> before(places.size() * places.size(), 0);
  for (const double clearance : {1.0, 100.0, 200.0, 279.0}) {
    const Walks walks(plan, clearance);
    for (std::size_t i = 0; i < before.size(); ++i) {
      const double length = walks.between(places[i / places.size()], places[i % places.size()]).length_mm;
      EXPECT_GE(length, before[i] - kRounding_mm) << "seed " << seed() << ", clearance " << clearance;
      before[i] = length;
    }
  }
}

TEST_P(WalksProperties, NewObstacleNeverShortens) {
  layout::Layout with = layout();
  const Plan before = floor::buildPlan(with, floor::Hours::Open);
  support::Random random(seed());
  with.fixtures.push_back(
      {"crate",
       "Crate",
       with.machines[0].at + Point{random.between(-3000, 3000), random.between(-3000, 3000)},
       random.between(0, 360),
       layout::Rectangle{700, 500},
       std::nullopt,
       {}});
  const Plan after = floor::buildPlan(with, floor::Hours::Open);
  const std::vector<Point> places = freePlaces(after, 305, seed(), 6);
  const Walks free(before), obstructed(after);
  for (const Point a : places)
    for (const Point b : places) {
      const Walk was = free.between(a, b), is = obstructed.between(a, b);
      if (is.status != WalkStatus::Walk) continue;
      ASSERT_EQ(was.status, WalkStatus::Walk) << "seed " << seed();
      EXPECT_GE(is.length_mm, was.length_mm - kRounding_mm) << "seed " << seed();
    }
}

TEST_P(WalksProperties, MovingTheWholePlanChangesNothing) {
  const layout::Layout here = support::randomLayout(seed(), {.far_away = false});
  const layout::Layout there = support::moved(here, 37.0 + GetParam(), {1e6, -2e6});
  const Plan plan = floor::buildPlan(here, floor::Hours::Open);
  const std::vector<Point> places = freePlaces(plan, 305, seed(), 6);
  const Walks a(plan), b(floor::buildPlan(there, floor::Hours::Open));
  for (const Point p : places)
    for (const Point q : places) {
      const Walk one = a.between(p, q);
      const auto move = [&](Point x) { return layout::toPlan({1e6, -2e6}, 37.0 + GetParam(), x); };
      const Walk other = b.between(move(p), move(q));
      ASSERT_EQ(one.status, other.status) << "seed " << seed();
      if (!one.found()) continue;
      EXPECT_NEAR(one.length_mm, other.length_mm, kMoved_mm) << "seed " << seed();
    }
}

TEST_P(WalksProperties, OrderOfTheFileChangesNothing) {
  const layout::Layout one = layout();
  layout::Layout other = one;
  std::ranges::reverse(other.machines);
  std::ranges::reverse(other.fixtures);
  std::ranges::reverse(other.doors);
  std::ranges::rotate(other.rooms, other.rooms.begin() + static_cast<std::ptrdiff_t>(other.rooms.size() / 2));
  const std::vector<Point> places = stationsOf(one);
  const Walks a(floor::buildPlan(one, floor::Hours::Open)), b(floor::buildPlan(other, floor::Hours::Open));
  for (const Point p : places) {
    const Walk first = a.between(places[0], p), second = b.between(places[0], p);
    ASSERT_EQ(first.status, second.status) << "seed " << seed();
    if (!first.found()) continue;
    EXPECT_NEAR(first.length_mm, second.length_mm, kRounding_mm) << "seed " << seed();
  }
}

// One pass for all gives what asking one by one gives.
TEST_P(WalksProperties, AllAtOnceIsOneByOne) {
  const layout::Layout drawn = layout();
  const std::vector<Point> places = stationsOf(drawn);
  std::vector<floor::Place> to;
  for (const Point p : freePlaces(support::plainPlan(drawn), 305, seed(), 4)) to.push_back({{p}, {}});
  if (to.empty()) GTEST_SKIP() << "no room for places";
  const Walks walks(floor::buildPlan(drawn, floor::Hours::Open));
  const std::vector<floor::Nearest> all = walks.nearestForAll(places, to);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const floor::Nearest one = walks.nearest(places[i], to);
    double least = std::numeric_limits<double>::infinity();
    for (const floor::Place& place : to)
      least = std::min(least, walks.between({{places[i]}, {}}, place).length_mm);
    EXPECT_EQ(all[i].index, one.index) << "seed " << seed() << ", station " << i;
    ASSERT_EQ(all[i].walk.found(), least < std::numeric_limits<double>::infinity())
        << "seed " << seed() << ", station " << i;
    if (!all[i].walk.found()) continue;
    EXPECT_NEAR(all[i].walk.length_mm, least, kRounding_mm) << "seed " << seed() << ", station " << i;
    EXPECT_NEAR(one.walk.length_mm, least, kRounding_mm) << "seed " << seed() << ", station " << i;
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, WalksProperties, testing::Range(0, 24));

}  // namespace
}  // namespace stopwalk::outside
