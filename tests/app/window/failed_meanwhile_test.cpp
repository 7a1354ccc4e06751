// What another found while a card was filled in is seen before that card says the opposite.
#include "app/rounds/device_history.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;

class FailedMeanwhile : public Inspecting {
 protected:
  FailedMeanwhile() {
    openAndCome();
    startRound();
    device = round().device();
  }
  std::string told() { return card().told().toStdString(); }
  std::string device;
};

TEST_F(FailedMeanwhile, APassIsRefusedOnceAndTheCardShowsTheFailure) {
  type("123p");
  recordElsewhere(device, Result::Fail);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u) << "nobody of this window saw it";
  EXPECT_TRUE(card().told().contains("failed meanwhile, by check 2")) << told();
  EXPECT_FALSE(card().failedText().isEmpty());
  EXPECT_EQ(round().device(), device);
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << told();
  EXPECT_EQ(onDisk().checks.back().result, Result::Pass);
}

// It was shown for a while, by the look that is taken now and then.
TEST_F(FailedMeanwhile, ThatTheFailureWasReadIsNotThatItWasSeen) {
  type("123");
  recordElsewhere(device, Result::Fail);
  window->records().lookNow();
  settle();
  type("p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
  EXPECT_TRUE(card().told().contains("failed meanwhile")) << told();
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << told();
}

TEST_F(FailedMeanwhile, WhatIsKeptOfACardIsOfWhenItWasBegun) {
  type("123p");
  key(Qt::Key_PageDown, Qt::ControlModifier);
  recordElsewhere(device, Result::Fail);
  window->records().lookNow();
  again();
  goOnWithRound();
  round().goTo(device);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
  EXPECT_TRUE(card().told().contains("failed meanwhile")) << told();
  again();
  goOnWithRound();
  round().goTo(device);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << "once: " << told();
}

TEST_F(FailedMeanwhile, AFailureAndWhatIsOfAnotherDeviceAreNeverRefused) {
  type("3f");
  recordElsewhere(device, Result::Fail);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << told();
  type("123p");
  recordElsewhere(device, Result::Fail);
  enter();
  EXPECT_EQ(onDisk().checks.size(), 4u) << told();
}

TEST_F(FailedMeanwhile, OnesOwnFailureIsKnown) {
  type("3f");
  enter();
  round().goTo(device);
  type("123p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << told();
}

}  // namespace
}  // namespace stopwalk::window
