// What bounds and pieces of a floor say is held against walks over the whole of it.
#include "core/floor/floor_pieces.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/floor/door_bounds.h"
#include "core/floor/walk_change.h"
#include "tests/core/floor/same_walk.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::floor {
namespace {

using support::Random;

constexpr int kSeeds = 60, kPoints = 8;

Plan planOf(int seed) {
  return buildPlan(support::randomLayout(static_cast<std::uint64_t>(seed), {.far_away = seed % 3 == 0}),
                   Hours::Open);
}

std::vector<Point> someOnFloor(const Plan& plan, const Walks& walks, Random& random) {
  geometry::Box box;
  for (const Polygon& room : plan.rooms) box.add(geometry::boxOf(room));
  std::vector<Point> points;
  for (int tries = 0; tries < 200 && points.size() < kPoints; ++tries) {
    const Point p{random.between(box.low.x, box.high.x), random.between(box.low.y, box.high.y)};
    if (walks.onFloor(p)) points.push_back(p);
  }
  return points;
}

struct Shop {
  explicit Shop(int seed)
      : random(static_cast<std::uint64_t>(seed) + 77),
        plan(planOf(seed)),
        walks(plan),
        points(someOnFloor(plan, walks, random)),
        doors(plan),
        pieces(plan, kMeasuringClearance_mm, Paths::Drawn, doors,
               EndsAfter{&no_ends, nullptr, originOf(plan)}) {}
  Random random;
  Plan plan;
  Walks walks;
  std::vector<Point> points;
  DoorBounds doors;
  KnownEnds no_ends;
  FloorPieces pieces;
};

TEST(DoorBounds, AreLongerThanNoWalk) {
  int rooms_passed = 0, told = 0;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    const Shop shop(seed);
    for (const Point a : shop.points)
      for (const Point b : shop.points) {
        const Walk walk = shop.walks.between(a, b);
        if (!walk.found()) continue;
        const DoorBounds::End from = shop.doors.end(a), to = shop.doors.end(b);
        const double bound = shop.doors.between(from, to);
        EXPECT_LE(bound, walk.length_mm + 1e-4);  // corners are rounded to the lattice
        told += bound > distance(a, b) + 1;
        for (const Point p : walk.path)
          for (std::size_t r = 0; r < shop.plan.rooms.size(); ++r) {
            if (shop.plan.rooms[r].empty() || !geometry::IndexedPolygon(shop.plan.rooms[r]).holds(p))
              continue;
            EXPECT_TRUE(shop.doors.mayPass(r, from, to, walk.length_mm + 1e-4));
            ++rooms_passed;
          }
      }
  }
  EXPECT_GT(rooms_passed, 1000);
  EXPECT_GT(told, 100);  // that they say more than the straight line
}

TEST(FloorPieces, TellTheNearestOrNothing) {
  int told = 0;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Shop shop(seed);
    for (const Point from : shop.points) {
      std::vector<Place> places;
      for (const Point p : shop.points)
        if (p != from) places.push_back({{p}, {}});
      if (places.empty()) continue;
      const Nearest whole = shop.walks.nearest(from, places);
      // However wrong the guess is.
      const double likely = shop.random.between(0.1, 2) * (whole.index ? whole.walk.length_mm : 4000);
      const auto piece = shop.pieces.nearest(from, places, std::numeric_limits<double>::infinity(), likely);
      if (!piece || whole.walk.tied) continue;
      expectSame(*piece, whole);
      ++told;
    }
  }
  EXPECT_GT(told, 50);
}

TEST(FloorPieces, SayWhatIsOnTheFloorAndKeepsAClearance) {
  int told = 0;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Shop shop(seed);
    for (const Point p : shop.points)
      for (const double clearance : {280.0, 305.0, 355.5, 600.0}) {
        const auto kept = shop.pieces.keeps(p, clearance);
        if (!kept) continue;
        EXPECT_EQ(*kept, shop.walks.keeps(p, clearance));
        ++told;
      }
  }
  EXPECT_GT(told, 100);
}

TEST(FloorPieces, CallNothingJoinedThatIsParted) {
  int joined = 0;
  for (int seed = 0; seed < kSeeds; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    Shop shop(seed);
    for (const double clearance : {305.0, 355.5, 450.0}) {
      for (std::size_t a = 0; a < shop.points.size(); ++a) {
        const Point pair[] = {shop.points[a], shop.points[a] + Point{shop.random.between(-1500, 1500), 400}};
        const auto parts = shop.pieces.joined(pair, clearance);
        if (!parts[0] || !parts[1] || *parts[0] != *parts[1]) continue;
        EXPECT_TRUE(shop.walks.joined(pair[0], pair[1], clearance));
        ++joined;
      }
    }
  }
  EXPECT_GT(joined, 50);
}

}  // namespace
}  // namespace stopwalk::floor
