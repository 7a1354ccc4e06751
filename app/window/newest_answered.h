#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <exception>
#include <functional>
#include <memory>
#include <thread>
#include <utility>

#include "app/window/newest.h"

namespace stopwalk::window {

// Answers the newest question on a thread of its own, and gives the answers on the owner's; questions between
// are not answered. Gone before its owner is: its end waits for the answer that is being made. What throws on
// the way, such as of memory, leaves the question without an answer, and the thread at work.
template <class Question, class Answer>
class NewestAnswered {
 public:
  // Whether a better answer may follow: no other question waits, and this one was not left.
  using Give = std::function<bool(Answer)>;

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
    next_.close();
    worker_.join();
  }
  NewestAnswered(const NewestAnswered&) = delete;
  NewestAnswered& operator=(const NewestAnswered&) = delete;

  void ask(Question question) { next_.put({++asked_, std::move(question)}); }
  // Nothing is wanted any more: answers on their way are dropped.
  void leave() { left_ = answered_ = ++asked_; }
  // Whether the last answer was to the last question.
  bool isCurrent() const { return asked_ == answered_; }

 private:
  void work() {
    while (auto next = next_.take()) {
      const int asked = next->first;
      try {
        make_(next->second, [&](Answer answer) {
          give(asked, std::make_shared<const Answer>(std::move(answer)));
          return !next_.waits() && asked > left_;
        });
      } catch (const std::exception& e) {
        fail(asked, e.what());
      }
    }
  }
  void fail(int asked, const char* why) {
    QMetaObject::invokeMethod(
        owner_,
        [this, why = QString::fromLocal8Bit(why), asked] {
          if (asked > left_) failed_(why);
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
