#include "core/planning/tour.h"

#include <algorithm>

#include "core/planning/tour_ring.h"

namespace stopwalk::planning {
namespace {

double longestLeg(const Legs& legs) {
  double longest = 0;
  for (std::size_t a = 0; a < legs.places(); ++a)
    for (std::size_t b = 0; b < a; ++b) longest = std::max(longest, legs(a, b));
  return longest;
}

// What makes the leg to nowhere worth more than any detour.
double drawOf(const Legs& legs) {
  return static_cast<double>(legs.places()) * longestLeg(legs);
}

// An open tour is a ring through one more place, the last, which is as near to all; a start is drawn to it.
Legs withNowhere(const Legs& legs, std::optional<std::size_t> start) {
  const std::size_t nowhere = legs.places();
  Legs more(nowhere + 1);
  for (std::size_t a = 0; a < nowhere; ++a)
    for (std::size_t b = 0; b < a; ++b) more.set(a, b, legs(a, b));
  if (start) more.set(*start, nowhere, -drawOf(legs));
  return more;
}

void beginAt(Ring& ring, std::size_t place) {
  std::ranges::rotate(ring, std::ranges::find(ring, place));
}

// Of the two ways round, the one that comes to the lower place first.
void turnToLower(Ring& ring) {
  if (ring.size() > 2 && ring.back() < ring[1]) std::reverse(ring.begin() + 1, ring.end());
}

// The ring without nowhere, from one end to the other.
Ring opened(Ring ring, std::size_t nowhere, std::optional<std::size_t> start) {
  beginAt(ring, nowhere);
  ring.erase(ring.begin());
  if (start ? ring.front() != *start : ring.back() < ring.front()) std::ranges::reverse(ring);
  return ring;
}

double walkedLength(const Legs& legs, const Ring& order, bool closed) {
  double length = 0;
  for (std::size_t i = 1; i < order.size(); ++i) length += legs(order[i - 1], order[i]);
  return closed ? length + legs(order.back(), order.front()) : length;
}

}  // namespace

double lengthOf(const Legs& legs, const Ring& ring) {
  return walkedLength(legs, ring, true);
}

Tour shortestTour(const Legs& legs, std::optional<std::size_t> start, bool closed) {
  const std::size_t n = legs.places();
  if (n == 0) return {{}, 0, 0, true};
  const Legs ringed = closed ? legs : withNowhere(legs, start);
  const bool exact = n <= kExactPlaces;
  Ring ring = exact ? exactRing(ringed) : searchedRing(ringed);
  const double ring_length = lengthOf(ringed, ring);

  Tour tour;
  tour.shortest = exact;
  if (closed) {
    beginAt(ring, start.value_or(0));
    turnToLower(ring);
    tour.order = std::move(ring);
  } else {
    tour.order = opened(std::move(ring), n, start);
  }
  tour.length_mm = walkedLength(legs, tour.order, closed);
  if (exact) return tour.bound_mm = tour.length_mm, tour;
  const double drawn = !closed && start ? drawOf(legs) : 0;
  tour.bound_mm = std::clamp(ringBound(ringed, ring_length) + drawn, 0.0, tour.length_mm);
  return tour;
}

}  // namespace stopwalk::planning
