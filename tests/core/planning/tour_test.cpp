#include "core/planning/tour.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "core/planning/tour_ring.h"
#include "tests/core/planning/random_legs.h"
#include "tests/support/random.h"

namespace stopwalk::planning {
namespace {

double lengthAlong(const Legs& legs, const std::vector<std::size_t>& order, bool closed) {
  double length = 0;
  for (std::size_t i = 1; i < order.size(); ++i) length += legs(order[i - 1], order[i]);
  return closed ? length + legs(order.back(), order.front()) : length;
}

double byTryingAll(const Legs& legs, std::optional<std::size_t> start, bool closed) {
  std::vector<std::size_t> order(legs.places());
  std::iota(order.begin(), order.end(), 0);
  double best = std::numeric_limits<double>::infinity();
  do
    if (!start || order.front() == *start) best = std::min(best, lengthAlong(legs, order, closed));
  while (std::ranges::next_permutation(order).found);
  return best;
}

void expectSound(const Tour& tour, const Legs& legs, std::optional<std::size_t> start, bool closed) {
  std::vector<std::size_t> each = tour.order;
  std::ranges::sort(each);
  for (std::size_t i = 0; i < each.size(); ++i) EXPECT_EQ(each[i], i);
  EXPECT_EQ(each.size(), legs.places());
  EXPECT_EQ(tour.order.front(), start.value_or(tour.order.front()));
  EXPECT_DOUBLE_EQ(tour.length_mm, lengthAlong(legs, tour.order, closed));
  EXPECT_LE(tour.bound_mm, tour.length_mm);
  EXPECT_GE(tour.bound_mm, 0);
}

std::vector<std::optional<std::size_t>> startsFor(std::size_t places) {
  return {std::nullopt, 0, places / 2, places - 1};
}

TEST(Tour, IsTheShortestOfAllWhereAllCanBeTried) {
  for (std::uint64_t seed = 1; seed <= 12; ++seed)
    for (std::size_t places = 1; places <= 7; ++places)
      for (const Legs& legs : {randomInPlane(places, seed), randomLengths(places, seed)})
        for (const auto start : startsFor(places))
          for (const bool closed : {false, true}) {
            const Tour tour = shortestTour(legs, start, closed);
            expectSound(tour, legs, start, closed);
            EXPECT_TRUE(tour.shortest);
            EXPECT_NEAR(tour.length_mm, byTryingAll(legs, start, closed), 1e-6)
                << seed << ": " << places << " places, closed " << closed;
          }
}

TEST(Tour, OfNoPlacesOrOneHasNoLength) {
  EXPECT_TRUE(shortestTour(Legs(0), std::nullopt, true).order.empty());
  EXPECT_EQ(shortestTour(Legs(1), 0, false).length_mm, 0);
}

TEST(Tour, OfManyIsWithinAFewPercentOfItsBoundAndNeverBelow) {
  double worst = 0;
  for (const std::size_t places : {14UL, 30UL, 100UL})
    for (std::uint64_t seed = 1; seed <= 2; ++seed)
      for (const auto start : {std::optional<std::size_t>(), std::optional<std::size_t>(places / 3)})
        for (const bool closed : {false, true}) {
          const Legs legs = randomInPlane(places, seed);
          const Tour tour = shortestTour(legs, start, closed);
          expectSound(tour, legs, start, closed);
          EXPECT_FALSE(tour.shortest);
          worst = std::max(worst, tour.length_mm / tour.bound_mm - 1);
        }
  RecordProperty("worst_gap_percent", std::to_string(100 * worst));
  EXPECT_LT(worst, 0.06);
}

// Known without any search: round a circle, and along a line.
TEST(Tour, OfPlacesRoundACircleGoesRoundIt) {
  const std::size_t places = 40;
  Legs legs(places);
  for (std::size_t a = 0; a < places; ++a)
    for (std::size_t b = 0; b < a; ++b)
      legs.set(a, b, 2000 * std::abs(std::sin(M_PI * static_cast<double>(a - b) / places)));
  const Tour tour = shortestTour(legs, 0, true);
  EXPECT_NEAR(tour.length_mm, places * 2000 * std::sin(M_PI / places), 1e-6);
  EXPECT_NEAR(tour.bound_mm, tour.length_mm, 0.01);
}

TEST(Tour, AlongALineGoesToOneEndFirst) {
  const std::size_t places = 20, start = 5;
  Legs legs(places);
  for (std::size_t a = 0; a < places; ++a)
    for (std::size_t b = 0; b < a; ++b) legs.set(a, b, 1000.0 * static_cast<double>(a - b));
  EXPECT_NEAR(shortestTour(legs, std::nullopt, false).length_mm, 19000, 1e-6);
  EXPECT_NEAR(shortestTour(legs, start, false).length_mm, 5000 + 19000, 1e-6);
  EXPECT_NEAR(shortestTour(legs, start, true).length_mm, 2 * 19000, 1e-6);
}

// Where the shortest is known, the bound must not be above it, and the search not below.
TEST(Tour, BoundAndSearchHoldTheShortestBetweenThem) {
  int found = 0, asked = 0;
  for (std::uint64_t seed = 1; seed <= 40; ++seed)
    for (const std::size_t places : {8UL, 11UL})
      for (const Legs& legs : {randomInPlane(places, seed), randomLengths(places, seed)}) {
        const double shortest = lengthOf(legs, exactRing(legs)),
                     searched = lengthOf(legs, searchedRing(legs));
        EXPECT_LE(ringBound(legs, searched), shortest + 1e-6) << seed;
        EXPECT_GE(searched, shortest - 1e-6) << seed;
        found += searched < shortest + 1e-6;
        ++asked;
      }
  EXPECT_GE(found, asked * 95 / 100);
}

TEST(Tour, FromAnywhereIsNeverLongerThanFromAStartAndOpenNeverLongerThanClosed) {
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    const Legs legs = randomInPlane(9, seed);
    const double open = shortestTour(legs, std::nullopt, false).length_mm;
    for (std::size_t start = 0; start < 9; ++start) {
      const double from = shortestTour(legs, start, false).length_mm;
      EXPECT_LE(open, from + 1e-6);
      EXPECT_LE(from, shortestTour(legs, start, true).length_mm + 1e-6);
      EXPECT_NEAR(shortestTour(legs, start, true).length_mm, shortestTour(legs, std::nullopt, true).length_mm,
                  1e-6);
    }
  }
}

TEST(Tour, IsTheSameWhateverIsAskedBefore) {
  const Legs legs = randomInPlane(60, 7);
  const Tour once = shortestTour(legs, 3, false);
  shortestTour(randomInPlane(30, 8), std::nullopt, true);
  EXPECT_EQ(shortestTour(legs, 3, false).order, once.order);
}

}  // namespace
}  // namespace stopwalk::planning
