#include "app/edits/things.h"

#include <gtest/gtest.h>

#include "tests/support/random_layout.h"

namespace stopwalk::edits {
namespace {

TEST(Things, AreFoundByTheIdThatTheyHave) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    layout::Layout layout = support::randomLayout(seed);
    layout.underlay = layout::Underlay{};
    const auto things = allThings(layout);
    EXPECT_GT(things.size(), layout.machines.size());
    for (const Thing& thing : things) EXPECT_EQ(findThing(layout, idOf(layout, thing)), thing);
  }
}

TEST(Things, ThatAreNotThereAreNotFound) {
  layout::Layout layout = support::randomLayout(1);
  for (const char* id : {"", "/", "nothing", "nothing/at-all", "(underlay)"})
    EXPECT_EQ(findThing(layout, id), std::nullopt) << id;
}

TEST(Things, OnAMachineTurnWithIt) {
  layout::Layout layout;
  layout::Machine m;
  m.id = "saw";
  m.at = {1000, 2000};
  m.turn = 90;
  layout::Station station;
  station.id = "operator";
  station.at = {0, -500};
  m.stations.push_back(station);
  layout.machines.push_back(m);
  const auto found = findThing(layout, "saw/operator");
  ASSERT_TRUE(found);
  EXPECT_EQ(placeOf(layout, *found), (geometry::Point{1500, 2000}));
  EXPECT_EQ(nameOf(layout, *found), "saw/operator");
}

}  // namespace
}  // namespace stopwalk::edits
