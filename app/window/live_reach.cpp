#include "app/window/live_reach.h"

namespace stopwalk::window {

LiveReach::LiveReach(QObject* parent) : QObject(parent), worker_([this] { work(); }) {}

LiveReach::~LiveReach() {
  next_.close();
  worker_.join();
}

void LiveReach::ask(Question question) {
  next_.put({++asked_, std::move(question)});
}

void LiveReach::work() {
  while (auto next = next_.take()) {
    answer(next->first, next->second, kCoarse);
    if (!next_.waits()) answer(next->first, next->second, kFine);
  }
}

void LiveReach::answer(int number, const Question& question, std::size_t samples) {
  auto reach = std::make_shared<const plan::ReachLayer>(
      std::make_shared<const audit::Reach>(audit::reachOf(*question.layout, *question.kinds, question.hours,
                                                          question.target, samples, question.out_of_order)),
      *question.layout);
  QMetaObject::invokeMethod(
      this,
      [this, reach, number] {
        if (number < answered_ || number <= left_) return;
        answered_ = number;
        emit answered(reach);
      },
      Qt::QueuedConnection);
}

}  // namespace stopwalk::window
