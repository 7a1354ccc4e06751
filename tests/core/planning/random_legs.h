#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/planning/tour.h"
#include "tests/support/random.h"

namespace stopwalk::planning {

inline Legs randomInPlane(std::size_t places, std::uint64_t seed) {
  support::Random random(seed);
  std::vector<std::pair<double, double>> at(places);
  for (auto& [x, y] : at) x = random.between(0, 60000), y = random.between(0, 40000);
  Legs legs(places);
  for (std::size_t a = 0; a < places; ++a)
    for (std::size_t b = 0; b < a; ++b)
      legs.set(a, b, std::hypot(at[a].first - at[b].first, at[a].second - at[b].second));
  return legs;
}

// Walks round walls need not look like straight lines at all.
inline Legs randomLengths(std::size_t places, std::uint64_t seed) {
  support::Random random(seed);
  Legs legs(places);
  for (std::size_t a = 0; a < places; ++a)
    for (std::size_t b = 0; b < a; ++b) legs.set(a, b, random.between(0, 1000));
  return legs;
}

}  // namespace stopwalk::planning
