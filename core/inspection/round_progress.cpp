#include "core/inspection/round_progress.h"

#include <algorithm>
#include <ranges>
#include <set>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

const Check* checkIn(const Records& records, std::size_t round, const std::string& device) {
  const auto newest_first = std::views::reverse(records.checks);
  const auto at = std::ranges::find_if(
      newest_first, [&](const Check& c) { return c.round == round && c.device == device; });
  return at == newest_first.end() ? nullptr : &*at;
}

std::vector<std::string> stillToCheck(const Round& round, const Records& records) {
  std::set<std::string> checked;
  for (const Check& c : records.checks)
    if (c.round == round.number) checked.insert(c.device);
  std::vector<std::string> left;
  for (const std::string& device : round.devices)
    if (!checked.contains(device)) left.push_back(device);
  return left;
}

std::vector<const Round*> unfinishedRounds(const Records& records) {
  std::set<std::pair<std::size_t, std::string>> checked;
  for (const Check& c : records.checks) checked.emplace(c.round, c.device);
  std::vector<const Round*> rounds;
  for (const Round& r : std::views::reverse(records.rounds))
    if (std::ranges::any_of(r.devices, [&](const std::string& d) {
          return !checked.contains({r.number, d});
        }))
      rounds.push_back(&r);
  return rounds;
}

std::vector<const Check*> actionsDueOn(const Records& records, Date day) {
  std::vector<const Check*> due = openActions(records);
  std::erase_if(due, [&](const Check* c) { return !c->corrective->due || *c->corrective->due > day; });
  return due;
}

}  // namespace stopwalk::inspection
