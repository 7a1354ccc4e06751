#pragma once

#include <string>
#include <string_view>

// What tells a finding from its rule's others about the same thing, and what of them is accepted: ids parted
// by commas, or a word. A word stands in brackets, which no id has: a room called `floor` is no word.
namespace stopwalk::layout {

inline std::string whichWord(std::string_view word) {
  return "(" + std::string(word) + ")";
}
inline bool isWhichWord(std::string_view which) {
  return which.starts_with('(');
}

}  // namespace stopwalk::layout
