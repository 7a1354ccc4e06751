#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <thread>
#include <utility>

#include "app/window/newest.h"

namespace stopwalk::window {

// Answers the newest question on a thread of its own, and gives the answer on the owner's; questions between
// are not answered. Gone before its owner is: its end waits for the answer that is being made.
template <class Question, class Answer>
class NewestAnswered {
 public:
  // `make` is called on the thread, one question at a time, and may keep things from one to the next.
  NewestAnswered(QObject* owner, std::function<Answer(const Question&)> make,
                 std::function<void(std::shared_ptr<const Answer>)> give)
      : owner_(owner), make_(std::move(make)), give_(std::move(give)), worker_([this] { work(); }) {}
  ~NewestAnswered() {
    next_.close();
    worker_.join();
  }
  NewestAnswered(const NewestAnswered&) = delete;
  NewestAnswered& operator=(const NewestAnswered&) = delete;

  void ask(Question question) { next_.put({++asked_, std::move(question)}); }
  // Whether the last answer was to the last question.
  bool isCurrent() const { return asked_ == answered_; }

 private:
  void work() {
    while (auto next = next_.take()) {
      const auto answer = std::make_shared<const Answer>(make_(next->second));
      QMetaObject::invokeMethod(
          owner_,
          [this, answer, asked = next->first] {
            answered_ = asked;
            give_(answer);
          },
          Qt::QueuedConnection);
    }
  }

  QObject* owner_;
  std::function<Answer(const Question&)> make_;
  std::function<void(std::shared_ptr<const Answer>)> give_;
  Newest<std::pair<int, Question>> next_;
  int asked_ = 0;
  int answered_ = 0;
  std::thread worker_;
};

}  // namespace stopwalk::window
