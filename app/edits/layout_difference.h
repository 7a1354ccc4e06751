#pragma once

#include <cstddef>
#include <optional>
#include <tuple>
#include <vector>

#include "core/layout/layout.h"

namespace stopwalk::edits {

// From `at` on, the `before` of one list stands where the `after` of the other does.
template <class T>
struct ListDifference {
  std::size_t at = 0;
  std::vector<T> before;
  std::vector<T> after;
};

// What differs between two layouts: all that undo has to keep of a step.
class LayoutDifference {
 public:
  LayoutDifference(const layout::Layout& before, const layout::Layout& after);

  bool empty() const { return empty_; }
  // Makes of the one layout the other. `layout` must be equal to the one that it is made from.
  void redo(layout::Layout& layout) const;
  void undo(layout::Layout& layout) const;

 private:
  // A layout without its lists.
  struct Head {
    layout::Layout before;
    layout::Layout after;
  };

  bool empty_ = true;
  std::optional<Head> head_;
  std::tuple<ListDifference<layout::Room>, ListDifference<layout::Door>, ListDifference<layout::Fixture>,
             ListDifference<layout::Machine>, ListDifference<layout::Device>, ListDifference<layout::Phone>,
             ListDifference<layout::Note>, ListDifference<layout::TapeCheck>>
      lists_;
};

}  // namespace stopwalk::edits
