#pragma once

#include <algorithm>
#include <cstdint>
#include <limits>
#include <utility>
#include <vector>

#include "core/floor/slots.h"

namespace stopwalk::floor {

// Things put away by length, to be taken out again shelf by shelf, the shortest lengths first. On one shelf
// lies what differs by less than kShelf_mm, in no order: so it costs nothing to keep it in order.
template <class T>
class Shelves {
 public:
  // `length` finite and not negative.
  void put(double length, T thing) {
    const auto shelf = static_cast<std::size_t>(length / kShelf_mm);
    if (shelf >= first_.size()) first_.resize(shelf + 1, kNone);
    first_[shelf] = things_.put({std::move(thing), first_[shelf]});
    lowest_ = std::min(lowest_, shelf);
  }
  // No thing put away is shorter; infinity if there is none.
  double least() const {
    return lowest_ == kNoShelf ? std::numeric_limits<double>::infinity()
                               : static_cast<double>(lowest_) * kShelf_mm;
  }
  // One from the lowest shelf; there must be one.
  T take() {
    Thing taken = things_.take(first_[lowest_]);
    first_[lowest_] = taken.below;
    while (lowest_ < first_.size() && first_[lowest_] == kNone) ++lowest_;
    if (lowest_ == first_.size()) lowest_ = kNoShelf;
    return std::move(taken.thing);
  }
  void clear() {
    things_.clear();
    first_.clear();
    lowest_ = kNoShelf;
  }

 private:
  static constexpr double kShelf_mm = 25;
  static constexpr std::int32_t kNone = -1;
  static constexpr std::size_t kNoShelf = std::numeric_limits<std::size_t>::max();
  struct Thing {
    T thing;
    std::int32_t below;  // the next on its shelf
  };
  Slots<Thing> things_;
  std::vector<std::int32_t> first_;  // of each shelf
  std::size_t lowest_ = kNoShelf;    // with something on it
};

}  // namespace stopwalk::floor
