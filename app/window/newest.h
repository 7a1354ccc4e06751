#pragma once

#include <condition_variable>
#include <mutex>
#include <optional>

namespace stopwalk::window {

// Hands values from one thread to another; of those not yet taken only the newest is there.
template <class T>
class Newest {
 public:
  void put(T value) {
    {
      const std::lock_guard lock(mutex_);
      value_ = std::move(value);
    }
    changed_.notify_one();
  }
  // No more comes: whoever waits goes home with none.
  void close() {
    {
      const std::lock_guard lock(mutex_);
      closed_ = true;
    }
    changed_.notify_all();
  }
  // Whether a value is there, or none will come.
  bool waits() {
    const std::lock_guard lock(mutex_);
    return closed_ || value_.has_value();
  }
  // Waits for a value; none after the closing.
  std::optional<T> take() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [&] { return closed_ || value_; });
    if (closed_) return std::nullopt;
    std::optional<T> value = std::move(value_);
    value_.reset();
    return value;
  }

 private:
  std::mutex mutex_;
  std::condition_variable changed_;
  std::optional<T> value_;
  bool closed_ = false;
};

}  // namespace stopwalk::window
