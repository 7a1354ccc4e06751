#include "app/window/in_turn.h"

#include <gtest/gtest.h>

#include <QTest>

namespace stopwalk::window {
namespace {

struct Steps {
  // A step that takes so long.
  std::function<void()> of(int ms) {
    return [this, ms] {
      QTest::qSleep(ms);
      ++done;
    };
  }
  int done = 0;
  InTurn in_turn;
};

TEST(InTurn, WhatIsSmallIsDoneAtOnce) {
  bool at_once = false;
  for (int i = 0; i < 50 && !at_once; ++i) {  // a busy machine is late now and then
    int done = 0;
    const auto small = [&done] { ++done; };
    InTurn in_turn;
    in_turn.begin({small, small, small});
    at_once = done == 3 && in_turn.isDone();
  }
  EXPECT_TRUE(at_once);
}

TEST(InTurn, WhatTakesLongIsDoneOneAnEvent) {
  Steps steps;
  steps.in_turn.begin({steps.of(5), steps.of(5), steps.of(5)});
  EXPECT_EQ(steps.done, 1);
  for (int before = steps.done; before < 3; before = steps.done) {
    ASSERT_TRUE(QTest::qWaitFor([&] { return steps.done > before; }, 5000));
    EXPECT_EQ(steps.done, before + 1);
  }
  EXPECT_TRUE(steps.in_turn.isDone());
}

TEST(InTurn, WhatBeginsAnewTakesThePlaceOfWhatIsLeft) {
  Steps steps;
  bool late = false;
  steps.in_turn.begin({steps.of(5), [&] { late = true; }});
  steps.in_turn.begin({steps.of(5), steps.of(5)});
  ASSERT_TRUE(QTest::qWaitFor([&] { return steps.in_turn.isDone(); }, 5000));
  EXPECT_EQ(steps.done, 3);
  EXPECT_FALSE(late);
}

TEST(InTurn, WhatIsLeftIsDoneAtOnceWhereItIsAskedForAndNeverWhereItIsLeft) {
  Steps steps;
  steps.in_turn.begin({steps.of(5), steps.of(5), steps.of(5)});
  steps.in_turn.finish();
  EXPECT_EQ(steps.done, 3);
  steps.in_turn.begin({steps.of(5), steps.of(5)});
  steps.in_turn.leave();
  QTest::qWait(50);
  EXPECT_EQ(steps.done, 4);
}

}  // namespace
}  // namespace stopwalk::window
