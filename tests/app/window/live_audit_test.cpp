#include "app/window/live_audit.h"

#include <gtest/gtest.h>

#include <QTest>
#include <QThread>
#include <functional>

#include "app/plan/catalogue.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::window {
namespace {

class LiveAudits : public testing::Test {
 protected:
  LiveAudits() {
    QObject::connect(&live, &LiveAudit::answered, &live, [this](auto given) {
      ++answers;
      answer = given;
    });
  }
  bool becomes(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 10000); }

  LiveAudit live;
  std::shared_ptr<const LiveAudit::Answer> answer;
  int answers = 0;
  LiveAudit::Question question{
      std::make_shared<const layout::Layout>(support::shopLayout(support::kShopSizes[0])),
      std::make_shared<const layout::DeviceKinds>(plan::bundledCatalogue().kinds), audit::defaultProfile()};
};

// So that nothing of it is computed where the plan is painted, nor for each frame of a drag.
TEST_F(LiveAudits, FindNarrowPlacesOfWhatStaysAndNotOfWhatIsDragged) {
  for (const bool is_preview : {false, true}) {
    answer.reset();
    question.is_preview = is_preview;
    live.ask(question);
    ASSERT_TRUE(becomes([&] { return answer != nullptr; }));
    EXPECT_EQ(answer->narrow_places == nullptr, is_preview);
  }
}

TEST_F(LiveAudits, AnswerTheLastQuestionLast) {
  std::shared_ptr<const layout::Layout> last;
  for (int i = 0; i < 20; ++i) {
    layout::Layout moved = *question.layout;
    moved.machines[0].at.x += 10 * i;
    last = question.layout = std::make_shared<const layout::Layout>(std::move(moved));
    live.ask(question);
    EXPECT_FALSE(live.isCurrent());
  }
  ASSERT_TRUE(becomes([&] { return live.isCurrent(); }));
  EXPECT_EQ(answer->layout, last);
  EXPECT_LT(answers, 20) << "those between are not asked";
}

TEST_F(LiveAudits, DoNotAnswerWhatWasLeft) {
  live.ask(question);
  live.leave();
  EXPECT_TRUE(live.isCurrent());
  QTest::qWait(500);
  EXPECT_EQ(answers, 0);
  live.ask(question);
  EXPECT_TRUE(becomes([&] { return answers == 1; }));
  EXPECT_TRUE(live.isCurrent());
}

// What is under way is answered where another layout follows; where it is audited by something else it is
// left.
TEST_F(LiveAudits, LeaveTheOneUnderWayForOtherRulesKindsAndFailuresOnly) {
  const auto answersToBoth = [&](const std::function<void()>& change) {
    answers = 0;
    live.ask(question);
    QThread::msleep(200);  // it is begun; what is answered meanwhile is given below
    change();
    live.ask(question);
    EXPECT_TRUE(becomes([&] { return live.isCurrent(); }));
    EXPECT_EQ(answer->layout, question.layout);
    QTest::qWait(50);
    return answers;
  };
  EXPECT_EQ(
      answersToBoth([&] { question.layout = std::make_shared<const layout::Layout>(*question.layout); }), 2);
  EXPECT_EQ(answersToBoth([&] { question.profile.settings[0].on = !question.profile.settings[0].on; }), 1);
  EXPECT_EQ(
      answersToBoth([&] { question.kinds = std::make_shared<const layout::DeviceKinds>(*question.kinds); }),
      1);
  EXPECT_EQ(answersToBoth([&] { question.failed.push_back({}); }), 1);
}

TEST_F(LiveAudits, GoAwayWhileAtWork) {
  for (int i = 0; i < 5; ++i) LiveAudit().ask(question);
}

}  // namespace
}  // namespace stopwalk::window
