#include "app/window/in_turn.h"

#include <QElapsedTimer>
#include <algorithm>
#include <utility>

namespace stopwalk::window {
namespace {

constexpr qint64 kTogether_ns = 2000000;  // of a frame, which is 16

}  // namespace

InTurn::InTurn(QObject* parent) : QObject(parent) {
  next_.setSingleShot(true);
  connect(&next_, &QTimer::timeout, this, &InTurn::go);
}

void InTurn::begin(std::vector<std::function<void()>> steps) {
  steps_ = std::move(steps);
  std::ranges::reverse(steps_);
  go();
}

void InTurn::finish() {
  while (!isDone()) doNext();
}

void InTurn::leave() {
  steps_.clear();
}

void InTurn::go() {
  QElapsedTimer time;
  time.start();
  while (!isDone() && time.nsecsElapsed() < kTogether_ns) doNext();
  if (!isDone()) next_.start(0);
}

// Taken out first: it may begin others.
void InTurn::doNext() {
  const auto step = std::move(steps_.back());
  steps_.pop_back();
  step();
}

}  // namespace stopwalk::window
