#pragma once

#include <cstdint>
#include <utility>
#include <vector>

namespace stopwalk::floor {

// Things put away and taken out again in any order; places that fall free are used again, so that few stay in
// the cache.
template <class T>
class Slots {
 public:
  std::int32_t put(T thing) {
    if (free_.empty()) {
      things_.push_back(std::move(thing));
      return static_cast<std::int32_t>(things_.size()) - 1;
    }
    const std::int32_t slot = free_.back();
    free_.pop_back();
    things_[slot] = std::move(thing);
    return slot;
  }
  T take(std::int32_t slot) {
    free_.push_back(slot);
    return std::move(things_[slot]);
  }
  void clear() {
    things_.clear();
    free_.clear();
  }

 private:
  std::vector<T> things_;
  std::vector<std::int32_t> free_;
};

}  // namespace stopwalk::floor
