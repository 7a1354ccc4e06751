// What is computed on a thread of its own where memory is short: told, and no end of the program.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <cstdlib>
#include <functional>
#include <new>

#include "app/window/newest_answered.h"

namespace {

thread_local int fails = 0;  // so often there is no memory on this thread

}  // namespace

void* operator new(std::size_t size) {
  if (fails > 0) {
    --fails;
    throw std::bad_alloc();
  }
  if (void* memory = std::malloc(size > 0 ? size : 1)) return memory;
  throw std::bad_alloc();
}
void operator delete(void* memory) noexcept {
  std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
  std::free(memory);
}

namespace stopwalk::window {
namespace {

class OutOfMemory : public testing::Test {
 protected:
  bool becomes(const std::function<bool()>& holds) {
    const QDeadlineTimer until(10000);
    while (!holds() && !until.hasExpired()) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return holds();
  }

  int arguments = 0;
  QCoreApplication program{arguments, nullptr};
};

TEST_F(OutOfMemory, IsToldAsSoonAsThereIsMemoryForThat) {
  QObject owner;
  QStringList failures;
  QList<int> answers;
  NewestAnswered<int, int> worker{&owner,
                                  [](int question, const auto& give) {
                                    if (question > 0) return void(give(question));
                                    fails = 3;
                                    throw std::bad_alloc();
                                  },
                                  [&](std::shared_ptr<const int> answer) { answers << *answer; },
                                  [&](const QString& why) { failures << why; }};
  worker.ask(-1);
  ASSERT_TRUE(becomes([&] { return !failures.isEmpty(); }));
  EXPECT_EQ(failures.size(), 1);
  worker.ask(4);
  ASSERT_TRUE(becomes([&] { return !answers.isEmpty(); })) << "the thread is at work";
  EXPECT_EQ(answers, QList<int>{4});
}

TEST_F(OutOfMemory, IsNotWaitedForAtTheEnd) {
  QObject owner;
  std::atomic<bool> failing = false;
  {
    NewestAnswered<int, int> worker{&owner,
                                    [&](int, const auto&) {
                                      fails = 1000000;
                                      failing = true;
                                      throw std::bad_alloc();
                                    },
                                    [](std::shared_ptr<const int>) {}, [](const QString&) {}};
    worker.ask(1);
    ASSERT_TRUE(becomes([&] { return failing.load(); }));
  }
}

}  // namespace
}  // namespace stopwalk::window
