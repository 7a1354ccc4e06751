// A guarded start stops nothing: its card asks only to look at it.
#include <algorithm>

#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class LookedAt : public Inspecting {
 protected:
  void goToAStart() {
    openAndCome();
    startRound();
    const auto& order = round().order();
    const auto start =
        std::ranges::find_if(order, [](const std::string& d) { return d.ends_with("/start"); });
    ASSERT_NE(start, order.end());
    round().goTo(*start);
    settle();
  }
};

TEST_F(LookedAt, ItsCardHasOneBoxAndNoClock) {
  using inspection::Tried;
  openAndCome();
  startRound();
  ASSERT_FALSE(card().tried().box(Tried::Pressed)->isHidden()) << "the first is a stop";
  type("3");
  EXPECT_TRUE(card().tried().box(Tried::Pressed)->answer());
  window.reset();
  open();
  goToAStart();
  for (const Tried test : inspection::kTried)
    EXPECT_EQ(card().tried().box(test)->isHidden(), test != Tried::Seen) << word(test).data();
  EXPECT_TRUE(card().timer().isHidden());
  EXPECT_TRUE(card().tried().box(Tried::Seen)->text().contains("pin"));
  type("3p");
  enter();
  EXPECT_TRUE(onDisk().checks.empty()) << "a pass says that it was looked at";
  type("1 p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].tested, (std::vector<std::pair<Tried, bool>>{{Tried::Seen, true}}));
  EXPECT_TRUE(onDisk().checks[0].run_down_s.empty());
  EXPECT_FALSE(card().told().contains("only looked at")) << card().told().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
