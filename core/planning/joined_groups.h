#pragma once

#include <cstddef>
#include <functional>
#include <vector>

// Of so many places those that there is a way between from each to each. What is joined to one need not be
// joined to the next: where a place is too near to something, one steps aside.
namespace stopwalk::planning {

// Whether there is a way between two places, either way. Not of a place with itself: it is nowhere.
using Joined = std::function<bool(std::size_t, std::size_t)>;

// `first` and all others, as they come, that are joined to it and to each other; ascending. Empty: it is
// nowhere.
std::vector<std::size_t> joinedTo(std::size_t first, std::size_t count, const Joined& joined);
// The largest that is found so, of equal ones that with the first place.
std::vector<std::size_t> largestGroup(std::size_t count, const Joined& joined);

}  // namespace stopwalk::planning
