#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <chrono>
#include <exception>
#include <functional>
#include <limits>
#include <memory>
#include <new>
#include <thread>
#include <utility>

#include "app/window/newest.h"

namespace stopwalk::window {

// Answers the newest question on a thread of its own, and gives the answers on the owner's; questions between
// are not answered. Gone before its owner is: its end waits for whoever makes an answer to see that it is not
// wanted. What throws on the way, such as of memory, leaves the question without an answer, and the thread at
// work.
template <class Question, class Answer>
class NewestAnswered {
 public:
  // What an answer is made by.
  class Give {
   public:
    // Whether a better answer may follow: no other question waits, and this one was not left.
    bool operator()(Answer answer) const {
      of_.give(asked_, std::make_shared<const Answer>(std::move(answer)));
      return !of_.next_.waits() && isWanted();
    }
    // Whether the answer would be of use. It still is where another question only follows.
    bool isWanted() const { return asked_ > of_.left_; }

   private:
    friend NewestAnswered;
    Give(NewestAnswered& of, int asked) : of_(of), asked_(asked) {}
    NewestAnswered& of_;
    const int asked_;
  };

  using Failed = std::function<void(const QString& why)>;

  // `make` is called on the thread, one question at a time, and may keep things from one to the next; the
  // others on the owner's.
  NewestAnswered(QObject* owner, std::function<void(const Question&, const Give&)> make,
                 std::function<void(std::shared_ptr<const Answer>)> given, Failed failed)
      : owner_(owner),
        make_(std::move(make)),
        given_(std::move(given)),
        failed_(std::move(failed)),
        worker_([this] { work(); }) {}
  ~NewestAnswered() {
    left_ = std::numeric_limits<int>::max();
    next_.close();
    worker_.join();
  }
  NewestAnswered(const NewestAnswered&) = delete;
  NewestAnswered& operator=(const NewestAnswered&) = delete;

  void ask(Question question) { next_.put({++asked_, std::move(question)}); }
  // Nothing of what was asked before is wanted any more, nor of use to what is asked now.
  void askAfresh(Question question) {
    left_ = asked_;
    ask(std::move(question));
  }
  // Nothing is wanted any more: answers on their way are dropped.
  void leave() { left_ = answered_ = ++asked_; }
  // The last question, and whether that or a later one was answered, or is not wanted any more.
  int asked() const { return asked_; }
  bool isAnswered(int question) const { return answered_ >= question; }
  // Whether the last answer was to the last question.
  bool isCurrent() const { return asked_ == answered_; }

 private:
  void work() {
    while (auto next = next_.take()) {
      const int asked = next->first;
      try {
        make_(next->second, Give(*this, asked));
      } catch (const std::exception& e) {
        fail(asked, e.what());
      }
    }
  }
  // Where memory is short there may be none for telling so either: else the program would end of it. It is
  // told as soon as there is some, if nothing else is asked for meanwhile.
  void fail(int asked, const char* why) {
    while (asked > left_ && !next_.waits()) {
      try {
        return tell(asked, why);
      } catch (const std::bad_alloc&) {
        std::this_thread::sleep_for(kTellAgain);
      }
    }
  }
  void tell(int asked, const char* why) {
    QMetaObject::invokeMethod(
        owner_,
        [this, why = QString::fromLocal8Bit(why), asked] {
          if (asked == asked_) failed_(why);  // else what was asked since is on its way
        },
        Qt::QueuedConnection);
  }
  void give(int asked, std::shared_ptr<const Answer> answer) {
    QMetaObject::invokeMethod(
        owner_,
        [this, answer = std::move(answer), asked] {
          if (asked <= left_) return;
          answered_ = asked;
          given_(answer);
        },
        Qt::QueuedConnection);
  }

  static constexpr std::chrono::milliseconds kTellAgain{50};

  QObject* owner_;
  std::function<void(const Question&, const Give&)> make_;
  std::function<void(std::shared_ptr<const Answer>)> given_;
  Failed failed_;
  Newest<std::pair<int, Question>> next_;
  int asked_ = 0;
  int answered_ = 0;
  std::atomic<int> left_ = 0;  // nothing up to here is wanted
  std::thread worker_;
};

}  // namespace stopwalk::window
