#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <vector>

#include "core/floor/walks.h"
#include "core/layout/layout.h"
#include "tests/outside/oracle_walks.h"

namespace stopwalk::outside {

// With 64 chords a quarter circle a chord leaves its arc by 305 mm * (1 - cos(pi / 256)) = 0.023 mm, so that
// a walk grows or shrinks by that much for each radian that it turns. Docs ask for 0.5 mm; what turns under 6
// radians keeps to this.
inline constexpr double kChordSlack_mm = 0.15;

struct Tally {
  int compared = 0;
  int walked = 0;  // of them, found by both
  int differ = 0;
  int doubtful = 0;
};

inline bool agree(const floor::Walk& got, const OracleWalk& expected, double slack = kChordSlack_mm) {
  if (got.status != expected.status) return false;
  if (!got.found()) return true;
  return got.clearance_mm == expected.clearance_mm && std::abs(got.length_mm - expected.length_mm) <= slack;
}

inline void count(const floor::Walk& got, const OracleWalk& expected, Tally& tally) {
  if (expected.doubtful) {
    ++tally.doubtful;
    return;
  }
  ++tally.compared;
  tally.walked += got.found() ? 1 : 0;
  tally.differ += agree(got, expected) ? 0 : 1;
}

inline std::vector<Point> stationsOf(const layout::Layout& layout) {
  std::vector<Point> places;
  for (const layout::Machine& machine : layout.machines)
    for (const layout::Station& station : machine.stations)
      places.push_back(layout::toPlan(machine.at, machine.turn, station.at));
  return places;
}

// Walks from one place to the others, held against the oracle; each difference fails with the seed.
inline void compareFrom(const floor::Walks& walks, OracleWalks& oracle, Point from,
                        const std::vector<Point>& to, std::uint64_t seed, Tally& tally) {
  const std::vector<OracleWalk> expected = oracle.fromOne(from, to);
  for (std::size_t i = 0; i < to.size(); ++i) {
    if (to[i] == from) continue;
    const floor::Walk got = walks.between(from, to[i]);
    count(got, expected[i], tally);
    EXPECT_TRUE(expected[i].doubtful || agree(got, expected[i]))
        << "seed " << seed << ", from (" << from.x << ", " << from.y << ") to place " << i << " (" << to[i].x
        << ", " << to[i].y << "): got " << got.length_mm << " mm at " << got.clearance_mm << ", status "
        << static_cast<int>(got.status) << "; expected " << expected[i].length_mm << " mm at "
        << expected[i].clearance_mm << ", status " << static_cast<int>(expected[i].status);
  }
}

}  // namespace stopwalk::outside
