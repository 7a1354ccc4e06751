#include <algorithm>
#include <cstdint>
#include <limits>

#include "core/planning/tour_ring.h"

namespace stopwalk::planning {
namespace {

// The shortest ways from place 0 through each set of the others to each last place of it.
struct Ways {
  explicit Ways(std::size_t n)
      : others(n), length(n << n, std::numeric_limits<double>::infinity()), before(n << n) {}
  std::size_t at(std::uint32_t set, std::size_t last) const { return set * others + last; }

  std::size_t others;
  std::vector<double> length;
  std::vector<std::uint8_t> before;
};

void extend(Ways& ways, const Legs& legs, std::uint32_t set, std::size_t last) {
  const double so_far = ways.length[ways.at(set, last)];
  for (std::size_t next = 0; next < ways.others; ++next) {
    if (set >> next & 1U) continue;
    const std::size_t there = ways.at(set | 1U << next, next);
    const double length = so_far + legs(last + 1, next + 1);
    if (length >= ways.length[there]) continue;
    ways.length[there] = length;
    ways.before[there] = static_cast<std::uint8_t>(last);
  }
}

}  // namespace

Ring exactRing(const Legs& legs) {
  const std::size_t others = legs.places() - 1;
  if (others == 0) return {0};
  Ways ways(others);
  for (std::size_t i = 0; i < others; ++i) ways.length[ways.at(1U << i, i)] = legs(0, i + 1);
  const std::uint32_t all = (1U << others) - 1;
  for (std::uint32_t set = 1; set < all; ++set)
    for (std::size_t last = 0; last < others; ++last)
      if (set >> last & 1U) extend(ways, legs, set, last);

  std::size_t last = 0;
  for (std::size_t i = 1; i < others; ++i)
    if (ways.length[ways.at(all, i)] + legs(i + 1, 0) < ways.length[ways.at(all, last)] + legs(last + 1, 0))
      last = i;
  Ring ring;
  for (std::uint32_t set = all; set != 0;) {
    ring.push_back(last + 1);
    const std::size_t before = ways.before[ways.at(set, last)];
    set &= ~(1U << last);
    last = before;
  }
  ring.push_back(0);
  std::ranges::reverse(ring);
  return ring;
}

}  // namespace stopwalk::planning
