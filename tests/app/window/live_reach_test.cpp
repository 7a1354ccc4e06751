#include "app/window/live_reach.h"

#include <gtest/gtest.h>

#include <QTest>
#include <algorithm>

#include "app/plan/catalogue.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::window {
namespace {

using What = audit::ReachTarget::What;

LiveReach::Question questionOf(What what) {
  static const auto layout =
      std::make_shared<const layout::Layout>(support::shopLayout(support::kShopSizes[0]));
  static const auto kinds = std::make_shared<const layout::DeviceKinds>(plan::bundledCatalogue().kinds);
  return {layout, kinds, floor::Hours::Open, {what, ""}, {}};
}

TEST(LiveReach, AnswersCoarseThenFine) {
  LiveReach live;
  std::vector<std::shared_ptr<const plan::ReachLayer>> answers;
  QObject::connect(&live, &LiveReach::answered, &live, [&](auto reach) { answers.push_back(reach); });
  live.ask(questionOf(What::Phone));
  EXPECT_FALSE(live.isCurrent());
  ASSERT_TRUE(QTest::qWaitFor([&] { return answers.size() == 2; }, 10000));
  EXPECT_TRUE(live.isCurrent());
  EXPECT_GT(answers[0]->reach()->map.step_mm(), answers[1]->reach()->map.step_mm());
}

// Else the window would do it, and be held up.
TEST(LiveReach, AnswersArePaintedForTheViewAskedFor) {
  LiveReach live;
  int answers = 0;
  LiveReach::Question question = questionOf(What::Phone);
  question.seen = {{}, plan::Theme::light(), {640, 480}};
  QObject::connect(&live, &LiveReach::answered, &live, [&](auto reach) {
    ++answers;
    EXPECT_TRUE(reach->isPaintedFor(question.seen));
  });
  live.ask(question);
  ASSERT_TRUE(QTest::qWaitFor([&] { return answers == 2; }, 10000));
}

TEST(LiveReach, WhatIsOutOfOrderIsNoStop) {
  LiveReach live;
  std::shared_ptr<const plan::ReachLayer> last;
  QObject::connect(&live, &LiveReach::answered, &live, [&](auto reach) { last = reach; });
  LiveReach::Question question = questionOf(What::AnyStop);
  live.ask(question);
  ASSERT_TRUE(QTest::qWaitFor([&] { return live.isCurrent(); }, 10000));
  const std::size_t stops = last->reach()->devices;
  const layout::Machine& machine =
      *std::ranges::find_if(question.layout->machines, [](const layout::Machine& m) {
        return std::ranges::find(m.devices, "mushroom-button", &layout::Device::kind) != m.devices.end();
      });
  const auto button = std::ranges::find(machine.devices, "mushroom-button", &layout::Device::kind);
  question.out_of_order = {machine.id + "/" + button->id};
  live.ask(question);
  ASSERT_TRUE(QTest::qWaitFor([&] { return live.isCurrent(); }, 10000));
  EXPECT_EQ(last->reach()->devices + 1, stops);
}

// Else a colour would mean one length with what is supposed and another without.
TEST(LiveReach, WhatIsSupposedHasTheColoursOfWhatIs) {
  LiveReach live;
  std::shared_ptr<const plan::ReachLayer> last;
  QObject::connect(&live, &LiveReach::answered, &live, [&](auto reach) { last = reach; });
  const auto topOf = [&](const LiveReach::Question& question) {
    live.ask(question);
    EXPECT_TRUE(QTest::qWaitFor([&] { return live.isCurrent(); }, 10000));
    return last->top_mm();
  };
  LiveReach::Question nearer = questionOf(What::Phone), farther = nearer;
  farther.layout = std::make_shared<const layout::Layout>(support::shopLayout(support::kShopSizes[1]));
  const double near = topOf(nearer), far = topOf(farther);
  ASSERT_LT(near, far);
  nearer.as_it_is = farther.layout;
  EXPECT_EQ(topOf(nearer), far);
  farther.as_it_is = questionOf(What::Phone).layout;
  EXPECT_EQ(topOf(farther), far) << "what is supposed needs more";
}

TEST(LiveReach, TheLastAnswerIsToTheLastQuestion) {
  LiveReach live;
  std::shared_ptr<const plan::ReachLayer> last;
  QObject::connect(&live, &LiveReach::answered, &live, [&](auto reach) { last = reach; });
  for (int i = 0; i < 20; ++i) live.ask(questionOf(i % 2 == 0 ? What::Phone : What::AnyStop));
  live.ask(questionOf(What::CutOff));
  ASSERT_TRUE(QTest::qWaitFor([&] { return live.isCurrent(); }, 10000));
  EXPECT_EQ(last->reach()->target.what, What::CutOff);
}

TEST(LiveReach, WhatWasLeftIsNotAnsweredAnyMore) {
  LiveReach live;
  int answers = 0;
  QObject::connect(&live, &LiveReach::answered, &live, [&] { ++answers; });
  live.ask(questionOf(What::Phone));
  live.leave();
  EXPECT_TRUE(live.isCurrent());
  QTest::qWait(500);
  EXPECT_EQ(answers, 0);
  live.ask(questionOf(What::CutOff));
  EXPECT_TRUE(QTest::qWaitFor([&] { return answers == 2; }, 10000));
  EXPECT_TRUE(live.isCurrent());
}

TEST(LiveReach, GoesAwayWhileItIsAtWork) {
  for (int i = 0; i < 5; ++i) LiveReach().ask(questionOf(What::AnyStop));
}

}  // namespace
}  // namespace stopwalk::window
