#include "app/window/freshness.h"

#include <gtest/gtest.h>

#include <QDeadlineTimer>
#include <QTest>

namespace stopwalk::window {
namespace {

using panels::Age;

class FreshnessOf : public testing::Test {
 protected:
  FreshnessOf() {
    QObject::connect(&freshness, &Freshness::aged, &freshness, [this](Age age) { ages.push_back(age); });
  }
  bool becomes(Age age) {
    return QTest::qWaitFor([&] { return freshness.age() == age; }, 5000);
  }

  Freshness freshness;
  std::vector<Age> ages;
};

TEST_F(FreshnessOf, WhatIsChangedIsNotCurrentFromThatMomentOnAndAgesUntilItIsAnswered) {
  freshness.changed();
  EXPECT_EQ(freshness.age(), Age::JustChanged);
  EXPECT_TRUE(becomes(Age::MomentAgo));
  EXPECT_EQ(ages, (std::vector{Age::JustChanged, Age::BeingComputed, Age::MomentAgo}));
  freshness.answered();
  EXPECT_EQ(freshness.age(), Age::Current);
}

TEST_F(FreshnessOf, WhatIsAnsweredWithinAFrameIsNeverPale) {
  for (int i = 0; i < 5; ++i) {
    freshness.changed();
    freshness.answered();
    QTest::qWait(25);
  }
  for (const Age age : ages) EXPECT_FALSE(isPale(age));
  EXPECT_EQ(freshness.age(), Age::Current);
}

TEST_F(FreshnessOf, WhatWasPaleIsCurrentWithTheAnswer) {
  for (int i = 0; i < 3; ++i) {
    freshness.changed();
    freshness.changed();  // the same change, told twice
    ASSERT_TRUE(QTest::qWaitFor([&] { return isPale(freshness.age()); }, 5000));
    freshness.answered();
    EXPECT_EQ(freshness.age(), Age::Current);
    QTest::qWait(120);
  }
}

// Where the machine is held up in between, it is as late as it says, and all begins again.
TEST_F(FreshnessOf, WhatIsChangedAgainAndAgainStaysPaleBetweenTheAnswers) {
  constexpr int kChanges = 6;
  int changes = 0;
  for (const QDeadlineTimer patience(60000); changes < kChanges && !patience.hasExpired();) {
    freshness.changed();
    ASSERT_TRUE(QTest::qWaitFor([&] { return isPale(freshness.age()); }, 5000));
    const bool is_held_up = freshness.age() == Age::MomentAgo;
    freshness.answered();
    changes = is_held_up ? 0 : changes + 1;
    EXPECT_EQ(freshness.age(), changes > 1 ? Age::BeingComputed : Age::Current) << "no flicker";
  }
  EXPECT_EQ(changes, kChanges) << "held up for a minute";
  EXPECT_TRUE(becomes(Age::Current)) << "once nothing was changed for a moment";
}

TEST_F(FreshnessOf, WhatIsHeldIsOfAMomentAgoAtOnceAndUntilItIsAnswered) {
  freshness.held();
  EXPECT_EQ(freshness.age(), Age::MomentAgo);
  freshness.changed();
  EXPECT_EQ(freshness.age(), Age::MomentAgo);
  freshness.answered();
  EXPECT_EQ(freshness.age(), Age::Current);
}

}  // namespace
}  // namespace stopwalk::window
