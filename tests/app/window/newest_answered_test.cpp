#include "app/window/newest_answered.h"

#include <gtest/gtest.h>

#include <QTest>
#include <atomic>
#include <stdexcept>

namespace stopwalk::window {
namespace {

class Answered : public testing::Test {
 protected:
  bool becomes(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 10000); }

  QObject owner;
  QList<int> answers;
  QStringList failures;
  NewestAnswered<int, int> worker{&owner,
                                  [](int question, const auto& give) {
                                    if (question < 0) throw std::runtime_error("below nothing");
                                    give(2 * question);
                                  },
                                  [this](std::shared_ptr<const int> answer) { answers << *answer; },
                                  [this](const QString& why) { failures << why; }};
};

TEST_F(Answered, AQuestionThatFailsIsToldAndTheNextIsAnswered) {
  worker.ask(-1);
  ASSERT_TRUE(becomes([&] { return !failures.isEmpty(); }));
  EXPECT_EQ(failures, QStringList{"below nothing"});
  EXPECT_FALSE(worker.isCurrent());
  worker.ask(4);
  ASSERT_TRUE(becomes([&] { return worker.isCurrent(); }));
  EXPECT_EQ(answers, QList<int>{8});
}

TEST_F(Answered, AFailureOfWhatWasLeftIsNotTold) {
  worker.ask(-1);
  worker.leave();
  worker.ask(1);
  ASSERT_TRUE(becomes([&] { return !answers.isEmpty(); }));
  EXPECT_TRUE(failures.isEmpty());
}

TEST(NewestAnsweredTwice, NothingBetterIsMadeOfWhatWasLeft) {
  QObject owner;
  std::atomic<int> made = 0;
  int answers = 0;
  NewestAnswered<int, int> worker{&owner,
                                  [&](int, const auto& give) {
                                    while (give(++made)) QTest::qSleep(1);
                                  },
                                  [&](std::shared_ptr<const int>) { ++answers; }, [](const QString&) {}};
  worker.ask(1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return answers > 0; }, 10000));
  worker.leave();
  QTest::qWait(50);
  const int then = made;
  QTest::qWait(50);
  EXPECT_EQ(made, then);
}

// Answers with how often it looked whether it is wanted, until told to be done.
class WorkedOn : public testing::Test {
 protected:
  bool becomes(const std::function<bool()>& holds) { return QTest::qWaitFor(holds, 10000); }
  bool isAtWork() {
    const int then = looks;
    QTest::qWait(30);
    return looks > then;
  }

  QObject owner;
  std::atomic<int> looks = 0, begun = 0;
  std::atomic<bool> done = false;
  QList<int> answers;
  std::unique_ptr<NewestAnswered<int, int>> worker = std::make_unique<NewestAnswered<int, int>>(
      &owner,
      [this](int question, const auto& give) {
        ++begun;
        while (give.isWanted() && !done) ++looks, QTest::qSleep(1);
        if (give.isWanted()) give(question);
      },
      [this](std::shared_ptr<const int> answer) { answers << *answer; }, [](const QString&) {});
};

TEST_F(WorkedOn, AnotherQuestionWaitsForItAndOneAfreshDoesNot) {
  worker->ask(1);
  ASSERT_TRUE(becomes([&] { return begun == 1; }));
  worker->ask(2);
  EXPECT_TRUE(isAtWork());
  EXPECT_EQ(begun, 1);
  worker->askAfresh(3);
  ASSERT_TRUE(becomes([&] { return begun == 2; }));
  done = true;
  ASSERT_TRUE(becomes([&] { return worker->isCurrent(); }));
  EXPECT_EQ(answers, QList<int>{3});
}

TEST_F(WorkedOn, NothingIsWorkedOnThatWasLeft) {
  worker->ask(1);
  ASSERT_TRUE(becomes([&] { return begun == 1; }));
  worker->leave();
  QTest::qWait(20);
  EXPECT_FALSE(isAtWork());
}

TEST_F(WorkedOn, ItsEndWaitsForNoAnswer) {
  worker->ask(1);
  ASSERT_TRUE(becomes([&] { return begun == 1; }));
  worker.reset();  // hangs where the answer is made to its end
  EXPECT_TRUE(answers.isEmpty());
}

TEST_F(Answered, AFailureOfWhatIsAskedNoMoreIsNotTold) {
  worker.ask(-1);
  worker.ask(3);
  ASSERT_TRUE(becomes([&] { return worker.isCurrent(); }));
  EXPECT_TRUE(failures.isEmpty());
  EXPECT_EQ(answers, QList<int>{6});
}

}  // namespace
}  // namespace stopwalk::window
