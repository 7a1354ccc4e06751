#include "app/window/freshness.h"

#include <gtest/gtest.h>

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

TEST_F(FreshnessOf, WhatIsChangedAgainAndAgainStaysPaleBetweenTheAnswers) {
  for (int i = 0; i < 5; ++i) {
    freshness.changed();
    ASSERT_TRUE(QTest::qWaitFor([&] { return isPale(freshness.age()); }, 5000));
    if (freshness.age() == Age::MomentAgo) GTEST_SKIP() << "the machine was held up for 100 ms";
    freshness.answered();
    EXPECT_EQ(freshness.age(), Age::BeingComputed) << "no flicker";
  }
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
