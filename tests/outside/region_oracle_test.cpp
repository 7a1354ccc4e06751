// The walkable region against GEOS buffers: what may be stood on, and what hangs together.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/floor/mesh.h"
#include "core/floor/region.h"
#include "core/floor/walks.h"
#include "core/floor/wall_grid.h"
#include "tests/outside/compared.h"
#include "tests/outside/oracle_region.h"
#include "tests/support/plain_plan.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::outside {
namespace {

constexpr double kClearances[] = {60, 280, 305, 500};

Point somewhereIn(const floor::Plan& plan, support::Random& random) {
  Point low{1e300, 1e300}, high{-1e300, -1e300};
  for (const Polygon& room : plan.rooms)
    for (const Point p : room) {
      low = {std::min(low.x, p.x), std::min(low.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
  return {random.between(low.x - 300, high.x + 300), random.between(low.y - 300, high.y + 300)};
}

struct Held {
  int in = 0, out = 0, differ = 0;
};

// Random points, half of them pulled to within a millimetre of the border, told in or out by both. Nobody is asked within
// what 64 chords a quarter circle leave out of an arc (derived: c (1 - cos(90/128 deg)) = 7.5e-5 c) and 0.01 mm.
Held compare(const floor::Plan& plan, double clearance, double oracle_clearance, std::uint64_t seed) {
  const floor::Mesh mesh(plan);
  const floor::WallGrid grid(mesh);
  const floor::Region region(mesh, grid, clearance);
  const OracleRegion oracle(plan, oracle_clearance);
  support::Random random(seed);
  Held held;
  for (int i = 0; i < 150; ++i) {
    Point p = somewhereIn(plan, random);
    if (i % 2 == 0 && !oracle.shapes().empty()) {
      const Point edge = nearestPointOf(oracle.whole(), p);
      if (distance(edge, p) > 0) p = edge + random.between(-1, 1) * geometry::unit(p - edge);
    }
    if (std::abs(distanceToAll(plan, p) - clearance) < 0.01 + 7.6e-5 * clearance) continue;
    const bool expected = oracle.partAt(p).has_value();
    const bool got = region.holds(mesh.local(p));
    ++(expected ? held.in : held.out);
    held.differ += got != expected ? 1 : 0;
  }
  return held;
}

TEST(RegionOracle, HoldsTheSamePoints) {
  int in = 0, out = 0;
  for (std::uint64_t seed = 5000; seed < 5030; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed, {.most_machines = 8}));
    const double clearance = kClearances[seed % 4];
    const Held held = compare(plan, clearance, clearance, seed);
    EXPECT_EQ(held.differ, 0) << "seed " << seed << ", clearance " << clearance;
    in += held.in, out += held.out;
  }
  EXPECT_GT(in, 500);
  EXPECT_GT(out, 500);
}

TEST(RegionOracle, NoticesOneMillimetre) {
  int differ = 0;
  for (std::uint64_t seed = 5000; seed < 5010; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed, {.most_machines = 8}));
    differ += compare(plan, 305, 306, seed).differ;
  }
  EXPECT_GT(differ, 20);
}

// What hangs together in GEOS's region is joined by a walk, and nothing else.
TEST(RegionOracle, JoinsTheSameParts) {
  int joined = 0, apart = 0;
  for (std::uint64_t seed = 5100; seed < 5130; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed));
    const OracleRegion oracle(plan, 305);
    const floor::Walks walks(plan, 305);
    support::Random random(seed);
    for (int i = 0; i < 40; ++i) {
      const Point a = somewhereIn(plan, random), b = somewhereIn(plan, random);
      const auto from = oracle.partAt(a), to = oracle.partAt(b);
      if (!from || !to || distanceToAll(plan, a) < 305.03 || distanceToAll(plan, b) < 305.03) continue;
      ++(from == to ? joined : apart);
      EXPECT_EQ(walks.joined(a, b, 305), from == to)
          << "seed " << seed << ": (" << a.x << ", " << a.y << ") to (" << b.x << ", " << b.y << ")";
    }
  }
  EXPECT_GT(joined, 50);
  EXPECT_GT(apart, 10);
}

// The area from the region's own straight pieces and true arcs lies between GEOS's on chords outside and
// inside the arcs.
TEST(RegionOracle, AreaLiesBetweenThoseOfChordsOutsideAndInsideTheArcs) {
  for (std::uint64_t seed = 5200; seed < 5220; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed, {.most_machines = 8}));
    const double clearance = kClearances[seed % 4];
    const floor::Mesh mesh(plan);
    const floor::WallGrid grid(mesh);
    const floor::Region region(mesh, grid, clearance);
    double whole = 0;
    for (const floor::Region::Piece& piece : region.pieces()) {
      whole += cross(region.beginOf(piece), region.endOf(piece)) / 2;
      // Travelled clockwise round its centre, an arc cuts its segment of the circle out of the chord's area.
      if (piece.arc) whole -= region.radius() * region.radius() * (piece.angle - std::sin(piece.angle)) / 2;
    }
    const double most = area(OracleRegion(plan, clearance, Chords::InsideArc).whole());
    const double least = area(OracleRegion(plan, clearance, Chords::OutsideArc).whole());
    EXPECT_GT(whole, least - 50) << "seed " << seed << ", clearance " << clearance;
    EXPECT_LT(whole, most + 50) << "seed " << seed << ", clearance " << clearance;
    EXPECT_LT(most - least, 3e4) << "square millimetres, seed " << seed;
  }
}

// The floor as built from a layout against the slow and obvious twin, and both against the definition.
TEST(PlanOracle, FloorIsTheSameAsThePlainOne) {
  for (std::uint64_t seed = 5300; seed < 5340; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After}) {
      const OracleRegion plain(support::plainPlan(layout, hours), 100),
          built(floor::buildPlan(layout, hours), 100);
      EXPECT_FALSE(built.leaks()) << "seed " << seed;
      ASSERT_EQ(plain.parts().size(), built.parts().size()) << "seed " << seed;
      if (plain.parts().empty()) continue;
      EXPECT_LT(
          area(difference(plain.whole(), built.whole())) + area(difference(built.whole(), plain.whole())),
          1.0)
          << "square millimetres, seed " << seed;
    }
  }
}

}  // namespace
}  // namespace stopwalk::outside
