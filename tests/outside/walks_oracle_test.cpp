// The walks of hundreds of random layouts against CGAL's exact geodesics on regions made by GEOS.
#include <gtest/gtest.h>

#include <vector>

#include "core/floor/walks.h"
#include "tests/outside/compared.h"
#include "tests/outside/oracle_walks.h"
#include "tests/support/plain_plan.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::outside {
namespace {

constexpr int kSeedsABlock = 12;

class WalksOracle : public testing::TestWithParam<int> {
 protected:
  std::uint64_t firstSeed() const { return static_cast<std::uint64_t>(GetParam()) * kSeedsABlock; }
  std::uint64_t endSeed() const { return firstSeed() + kSeedsABlock; }
};

// Random points at least the clearance from everything: no steps, the geodesic alone.
std::vector<Point> placesInside(const OracleRegion& region, double clearance, const floor::Plan& plan,
                                support::Random& random, std::size_t count) {
  std::vector<Point> places;
  const auto [low, high] = bounds(region.whole());
  for (int tries = 0; tries < 400 && places.size() < count; ++tries) {
    const Point p{random.between(low.x, high.x), random.between(low.y, high.y)};
    if (region.partAt(p) && distanceToAll(plan, p) > clearance + 0.01) places.push_back(p);
  }
  return places;
}

TEST_P(WalksOracle, StationsWithTheirSteps) {
  Tally tally;
  for (std::uint64_t seed = firstSeed(); seed < endSeed(); ++seed) {
    const layout::Layout layout = support::randomLayout(seed, {.most_machines = 8});
    const floor::Plan plan = support::plainPlan(layout);
    const std::vector<Point> places = stationsOf(layout);
    OracleWalks oracle(plan, floor::kMeasuringClearance_mm);
    ASSERT_FALSE(oracle.region().leaks()) << "seed " << seed;
    const floor::Walks walks(plan);
    compareFrom(walks, oracle, places[seed % places.size()], places, seed, tally);
  }
  EXPECT_GT(tally.walked, kSeedsABlock);
  EXPECT_LE(tally.doubtful, tally.compared / 10 + 1);
}

TEST_P(WalksOracle, PlacesThatNeedNoStepAtAnyClearance) {
  static constexpr double kClearances[] = {120, 250, 305, 420};
  Tally tally;
  for (std::uint64_t seed = firstSeed(); seed < endSeed(); ++seed) {
    const double clearance = kClearances[seed % 4];
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed + 1000, {.most_machines = 8}));
    OracleWalks oracle(plan, clearance);
    support::Random random(seed);
    const std::vector<Point> places = placesInside(oracle.region(), clearance, plan, random, 8);
    if (places.empty()) continue;
    compareFrom(floor::Walks(plan, clearance), oracle, places[0], places, seed + 1000, tally);
  }
  EXPECT_GT(tally.walked, 3 * kSeedsABlock);
}

TEST_P(WalksOracle, NarrowDoors) {
  Tally tally;
  for (std::uint64_t seed = firstSeed(); seed < firstSeed() + kSeedsABlock / 2; ++seed) {
    const support::RandomLayoutOptions options{.most_rooms = 3, .most_machines = 5, .narrow = true};
    const layout::Layout layout = support::randomLayout(seed + 2000, options);
    const floor::Plan plan = support::plainPlan(layout);
    const std::vector<Point> places = stationsOf(layout);
    OracleWalks oracle(plan, floor::kMeasuringClearance_mm);
    const floor::Walks walks(plan);
    compareFrom(walks, oracle, places[0], places, seed + 2000, tally);
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, WalksOracle, testing::Range(0, 10));

// Layouts on which the walks were once wrong: two doors in one wall of no thickness (14 mm too long); a step that passed by
// a notch, nearer by 0.0008 mm than the arc straight ahead (0.7 mm too short).
TEST(WalksOracleAgain, LayoutsThatOnceDiffered) {
  Tally tally;
  for (const std::uint64_t seed : {198, 30003}) {
    const layout::Layout layout = support::randomLayout(seed, {.most_machines = 9});
    const floor::Plan plan = floor::buildPlan(layout, floor::Hours::Open);
    OracleWalks oracle(plan, floor::kMeasuringClearance_mm);
    const std::vector<Point> places = stationsOf(layout);
    for (const Point from : places) compareFrom(floor::Walks(plan), oracle, from, places, seed, tally);
  }
  EXPECT_GT(tally.walked, 10);
}

// The true length lies between those on chords outside and inside the arcs, whatever the bound on the two.
TEST(WalksBetweenChords, InsideAndOutsideTheArcs) {
  for (std::uint64_t seed = 3000; seed < 3010; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed, {.most_machines = 6}));
    OracleWalks shorter(plan, 305, Chords::InsideArc), longer(plan, 305, Chords::OutsideArc);
    support::Random random(seed);
    const std::vector<Point> places = placesInside(longer.region(), 305.1, plan, random, 6);
    if (places.empty()) continue;
    const auto least = shorter.fromOne(places[0], places), most = longer.fromOne(places[0], places);
    const floor::Walks walks(plan);
    for (std::size_t i = 0; i < places.size(); ++i) {
      if (most[i].status != floor::WalkStatus::Walk) continue;
      const double got = walks.between(places[0], places[i]).length_mm;
      EXPECT_GE(got, least[i].length_mm - 0.01) << "seed " << seed << ", place " << i;
      EXPECT_LE(got, most[i].length_mm + 0.01) << "seed " << seed << ", place " << i;
    }
  }
}

// That the comparison can fail: an oracle that keeps one millimetre more, or measures one more, is
// contradicted.
TEST(OracleNoticesOneMillimetre, InTheClearanceAndInTheLength) {
  Tally clearance, length;
  int turned = 0;
  for (std::uint64_t seed = 4000; seed < 4010; ++seed) {
    const floor::Plan plan = support::plainPlan(support::randomLayout(seed));
    OracleWalks oracle(plan, 306), true_oracle(plan, 305);
    support::Random random(seed);
    const std::vector<Point> places = placesInside(oracle.region(), 306, plan, random, 8);
    if (places.empty()) continue;
    const floor::Walks walks(plan);
    const auto wider = oracle.fromOne(places[0], places), right = true_oracle.fromOne(places[0], places);
    for (std::size_t i = 1; i < places.size(); ++i) {
      floor::Walk got = walks.between(places[0], places[i]);
      turned += got.length_mm > geometry::distance(places[0], places[i]) + 50 ? 1 : 0;
      count(got, {wider[i].status, wider[i].length_mm, got.clearance_mm, false}, clearance);
      got.length_mm += 1;
      count(got, right[i], length);
    }
  }
  EXPECT_GT(turned, 10);
  EXPECT_GE(clearance.differ,
            turned / 2);  // what turns little, or one way and back, gains less than the slack
  EXPECT_EQ(length.differ, length.walked);
}

}  // namespace
}  // namespace stopwalk::outside
