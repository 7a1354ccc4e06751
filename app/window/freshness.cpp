#include "app/window/freshness.h"

#include <algorithm>

namespace stopwalk::window {
namespace {

using panels::Age;

constexpr int kFrame_ms = 16;
constexpr int kLate_ms = 100;   // sooner than this an audit is as good as at once
constexpr int kStill_ms = 100;  // longer than between two strokes of a key that is held down

}  // namespace

Freshness::Freshness(QObject* parent) : QObject(parent) {
  const auto set = [this](QTimer& timer, int ms, auto then) {
    timer.setSingleShot(true);
    timer.setInterval(ms);
    timer.setTimerType(Qt::PreciseTimer);
    connect(&timer, &QTimer::timeout, this, then);
  };
  set(frame_, kFrame_ms, [this] { become(std::max(age_, Age::BeingComputed)); });
  set(late_, kLate_ms, [this] { become(Age::MomentAgo); });
  set(still_, kStill_ms, [this] {
    if (!is_awaited_) become(Age::Current);
  });
}

void Freshness::changed() {
  is_going_on_ = still_.isActive() && (is_going_on_ || still_.remainingTime() <=
                                                           kStill_ms - kFrame_ms / 2);  // not the same change
  if (!is_awaited_) {
    frame_.start();
    late_.start();
  }
  is_awaited_ = true;
  still_.start();
  become(std::max(age_, Age::JustChanged));
}

void Freshness::held() {
  is_awaited_ = true;
  become(Age::MomentAgo);
}

void Freshness::answered() {
  is_awaited_ = false;
  frame_.stop();
  late_.stop();
  const bool waits = is_going_on_ && age_ == Age::BeingComputed && still_.isActive();
  if (!waits) become(Age::Current);
}

void Freshness::look() {
  if (!is_awaited_) become(Age::Current);
}

void Freshness::become(Age age) {
  if (age == age_) return;
  age_ = age;
  emit aged(age);
}

}  // namespace stopwalk::window
