#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace stopwalk::files {

// The known word that `word` was most likely meant to be, at most two slips of the pen away; empty: none is
// near. Bounded in cost: long words have no near ones.
std::string_view nearest(std::string_view word, const std::vector<std::string_view>& known);

// `; did you mean X?`, or nothing.
std::string didYouMean(std::string_view word, const std::vector<std::string_view>& known);

// `a, b or c`.
std::string anyOf(const std::vector<std::string_view>& words);

}  // namespace stopwalk::files
