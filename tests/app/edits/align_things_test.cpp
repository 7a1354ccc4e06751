#include "app/edits/align_things.h"

#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

geometry::Box bounds(const Layout& layout, const char* id) {
  return boundsOf(layout, *findThing(layout, id));
}

TEST(AlignThings, BringsOutlinesInLineWithTheLastOnes) {
  const Layout shop = benchShop();  // the saw is turned: 800 wide, 1000 deep
  const auto aligned = [&](Align how) { return alignThings(shop, {"saw", "n1", "lathe"}, how).after; };
  const auto saw = [&](Align how) { return aligned(how).machines[0].at; };
  EXPECT_EQ(saw(Align::Left), (Point{11400, 3000}));
  EXPECT_EQ(saw(Align::Right), (Point{12600, 3000}));
  EXPECT_EQ(saw(Align::Top), (Point{3000, 2900}));
  EXPECT_EQ(saw(Align::Bottom), (Point{3000, 3100}));
  EXPECT_EQ(saw(Align::MiddleAcross), (Point{12000, 3000}));
  EXPECT_EQ(saw(Align::MiddleUp), (Point{3000, 3000}));
  EXPECT_EQ(aligned(Align::Left).notes[0].at, (Point{11000, 5000}));
  EXPECT_EQ(aligned(Align::Left).machines[1], shop.machines[1]);
  EXPECT_EQ(alignThings(shop, {"saw", "lathe"}, Align::Top).name, "Align 2 things");
}

TEST(AlignThings, LeavesOneAloneAndTapeChecksOut) {
  const Layout shop = benchShop();
  EXPECT_EQ(alignThings(shop, {"saw"}, Align::Left).after, shop);
  EXPECT_EQ(alignThings(shop, {"saw", "t1", "nothing"}, Align::Left).after, shop);
}

TEST(DistributeThings, MakesTheGapsEqual) {
  const Layout shop = benchShop();
  const Layout after = distributeThings(shop, {"lathe", "bench-1", "saw", "n1"}, Along::Across).after;
  // From the left: saw 2600 to 3400, bench and note between, lathe from 11000; the bench is 2400 wide.
  const double gap = (11000.0 - 3400 - 2400) / 3;
  EXPECT_NEAR(bounds(after, "bench-1").low.x, 3400 + gap, 1e-6);
  EXPECT_NEAR(bounds(after, "n1").low.x, 3400 + 2 * gap + 2400, 1e-6);
  EXPECT_EQ(after.machines, shop.machines);
  EXPECT_EQ(after.fixtures[0].at.y, shop.fixtures[0].at.y);
}

TEST(DistributeThings, LeavesTwoAlone) {
  const Layout shop = benchShop();
  EXPECT_EQ(distributeThings(shop, {"saw", "lathe"}, Along::Up).after, shop);
}

}  // namespace
}  // namespace stopwalk::edits
