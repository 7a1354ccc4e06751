// The exact search at its largest, beside another exact method that shares nothing with it: branch and bound.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include "core/planning/tour.h"
#include "tests/core/planning/random_legs.h"

namespace stopwalk::planning {
namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

// Goes on from the places so far by each that is left, the nearest first, unless even the least that joins
// what is left (a spanning tree, and a way back) is too long.
class BranchAndBound {
 public:
  BranchAndBound(const Legs& legs, bool closed) : legs_(legs), closed_(closed), left_(legs.places(), true) {}

  double shortest(std::optional<std::size_t> start) {
    for (std::size_t first = 0; first < legs_.places(); ++first)
      if (!start || *start == first) {
        first_ = first;
        left_[first] = false;
        goOn(first, 0, legs_.places() - 1);
        left_[first] = true;
        if (closed_) break;  // a ring is as long wherever it begins
      }
    return best_;
  }

 private:
  void goOn(std::size_t at, double so_far, std::size_t left) {
    if (left == 0) {
      best_ = std::min(best_, so_far + (closed_ ? legs_(at, first_) : 0));
      return;
    }
    if (so_far + leastToCome(at) >= best_) return;
    std::vector<std::size_t> next;
    for (std::size_t p = 0; p < left_.size(); ++p)
      if (left_[p]) next.push_back(p);
    std::ranges::sort(next, {}, [&](std::size_t p) { return legs_(at, p); });
    for (const std::size_t p : next) {
      left_[p] = false;
      goOn(p, so_far + legs_(at, p), left - 1);
      left_[p] = true;
    }
  }

  // A spanning tree of where one is and what is left, and the shortest way from there to the first.
  double leastToCome(std::size_t at) const {
    std::vector<double> to_tree(left_.size(), kNone);
    std::vector<bool> out = left_;
    double length = 0, back = kNone;
    std::size_t newest = at;
    for (;;) {
      std::size_t nearest = left_.size();
      for (std::size_t p = 0; p < left_.size(); ++p) {
        if (!out[p]) continue;
        to_tree[p] = std::min(to_tree[p], legs_(newest, p));
        if (nearest == left_.size() || to_tree[p] < to_tree[nearest]) nearest = p;
      }
      if (nearest == left_.size()) break;
      length += to_tree[nearest];
      back = std::min(back, legs_(nearest, first_));
      out[nearest] = false;
      newest = nearest;
    }
    return closed_ ? length + back : length;
  }

  const Legs& legs_;
  bool closed_;
  std::vector<bool> left_;
  std::size_t first_ = 0;
  double best_ = kNone;
};

TEST(ExactTour, OfTwelveAndThirteenPlacesIsWhatBranchAndBoundFinds) {
  int compared = 0;
  for (const std::size_t places : {kExactPlaces - 1, kExactPlaces})
    for (std::uint64_t seed = 1; seed <= 3; ++seed)
      for (const bool plane : {true, false})
        for (const bool closed : {true, false})
          for (const auto start : {std::optional<std::size_t>(), std::optional<std::size_t>(places / 2)}) {
            const std::uint64_t drawn = 100 * places + seed;
            const Legs legs = plane ? randomInPlane(places, drawn) : randomLengths(places, drawn);
            const Tour tour = shortestTour(legs, start, closed);
            EXPECT_TRUE(tour.shortest);
            EXPECT_EQ(tour.bound_mm, tour.length_mm);
            EXPECT_NEAR(tour.length_mm, BranchAndBound(legs, closed).shortest(start), 1e-6)
                << places << " places, seed " << seed << ", closed " << closed << ", start " << !!start;
            ++compared;
          }
  EXPECT_EQ(compared, 48);
}

TEST(ExactTour, OfOnePlaceMoreIsNoLongerCalledTheShortest) {
  EXPECT_FALSE(shortestTour(randomInPlane(kExactPlaces + 1, 1), std::nullopt, true).shortest);
}

}  // namespace
}  // namespace stopwalk::planning
