#include "core/planning/joined_groups.h"

#include <algorithm>
#include <utility>

namespace stopwalk::planning {

std::vector<std::size_t> joinedTo(std::size_t first, std::size_t count, const Joined& joined) {
  std::vector<std::size_t> group;
  if (!joined(first, first)) return group;
  group.push_back(first);
  for (std::size_t i = 0; i < count; ++i)
    if (i != first && std::ranges::all_of(group, [&](std::size_t g) { return joined(g, i); }))
      group.push_back(i);
  std::ranges::sort(group);
  return group;
}

std::vector<std::size_t> largestGroup(std::size_t count, const Joined& joined) {
  std::vector<std::size_t> largest;
  std::vector<bool> seen(count);
  for (std::size_t first = 0; first < count; ++first) {
    if (seen[first]) continue;
    std::vector<std::size_t> group = joinedTo(first, count, joined);
    for (const std::size_t i : group) seen[i] = true;
    if (group.size() > largest.size()) largest = std::move(group);
  }
  return largest;
}

}  // namespace stopwalk::planning
