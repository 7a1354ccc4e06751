#include <algorithm>
#include <array>
#include <limits>
#include <random>

#include "core/planning/tour_ring.h"

namespace stopwalk::planning {
namespace {

// Less is rounding, and might go round for ever.
constexpr double kGain_mm = 1e-6;
constexpr std::size_t kLongestMoved = 3;
constexpr int kKicks = 60;

Ring nearestNext(const Legs& legs, std::size_t first) {
  Ring ring = {first};
  std::vector<bool> is_in(legs.places());
  is_in[first] = true;
  while (ring.size() < legs.places()) {
    std::size_t next = legs.places();
    for (std::size_t p = 0; p < legs.places(); ++p)
      if (!is_in[p] && (next == legs.places() || legs(ring.back(), p) < legs(ring.back(), next))) next = p;
    is_in[next] = true;
    ring.push_back(next);
  }
  return ring;
}

// Two legs are put in the place of two others, and what lies between is walked the other way.
bool turnStretches(const Legs& legs, Ring& ring) {
  const std::size_t n = ring.size();
  bool shorter = false;
  for (std::size_t i = 0; i + 2 < n; ++i)
    for (std::size_t j = i + 2; j < n; ++j) {
      const std::size_t a = ring[i], b = ring[i + 1], c = ring[j], d = ring[(j + 1) % n];
      if (a == d || legs(a, c) + legs(b, d) > legs(a, b) + legs(c, d) - kGain_mm) continue;
      std::reverse(ring.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                   ring.begin() + static_cast<std::ptrdiff_t>(j) + 1);
      shorter = true;
    }
  return shorter;
}

// Puts the first `count` places of the ring between two others, if that shortens it.
bool moveFirst(const Legs& legs, Ring& ring, std::size_t count) {
  const std::size_t n = ring.size();
  const std::size_t first = ring[0], last = ring[count - 1], before = ring[n - 1], after = ring[count];
  const double saved = legs(before, first) + legs(last, after) - legs(before, after);
  double best = kGain_mm;
  std::size_t place = 0;
  bool turned = false;
  for (std::size_t i = count; i + 1 < n; ++i) {
    const double open = saved + legs(ring[i], ring[i + 1]);
    const double as_is = open - legs(ring[i], first) - legs(last, ring[i + 1]);
    const double other = open - legs(ring[i], last) - legs(first, ring[i + 1]);
    if (std::max(as_is, other) <= best) continue;
    best = std::max(as_is, other);
    place = i;
    turned = other > as_is;
  }
  if (place == 0) return false;
  const auto begin = ring.begin(), cut = begin + static_cast<std::ptrdiff_t>(count);
  if (turned) std::reverse(begin, cut);
  std::rotate(begin, cut, begin + static_cast<std::ptrdiff_t>(place) + 1);
  return true;
}

bool moveStretches(const Legs& legs, Ring& ring) {
  bool shorter = false;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    std::rotate(ring.begin(), ring.begin() + 1, ring.end());
    for (std::size_t count = 1; count <= kLongestMoved && count + 2 < ring.size(); ++count)
      shorter = moveFirst(legs, ring, count) || shorter;
  }
  return shorter;
}

void settle(const Legs& legs, Ring& ring) {
  while (turnStretches(legs, ring) || moveStretches(legs, ring)) {
  }
}

// Three cuts, and the two stretches between them change places: what no turning undoes.
Ring kicked(const Ring& ring, std::mt19937& random) {
  std::array<std::size_t, 3> cuts{};
  for (std::size_t& cut : cuts) cut = 1 + random() % (ring.size() - 1);
  std::ranges::sort(cuts);
  Ring other = ring;
  const auto at = [&](std::size_t cut) { return other.begin() + static_cast<std::ptrdiff_t>(cut); };
  std::rotate(at(cuts[0]), at(cuts[1]), at(cuts[2]));
  return other;
}

}  // namespace

Ring searchedRing(const Legs& legs) {
  Ring best;
  double best_length = std::numeric_limits<double>::infinity();
  const auto keepIfShorter = [&](Ring ring) {
    settle(legs, ring);
    const double length = lengthOf(legs, ring);
    if (length > best_length - kGain_mm) return;
    best_length = length;
    best = std::move(ring);
  };
  const std::size_t starts = 4;
  for (std::size_t i = 0; i < starts; ++i) keepIfShorter(nearestNext(legs, i * legs.places() / starts));
  std::mt19937 random(1);  // the same numbers on any machine
  for (int i = 0; i < kKicks; ++i) keepIfShorter(kicked(best, random));
  return best;
}

}  // namespace stopwalk::planning
