#include "core/inspection/round_progress.h"

#include <algorithm>
#include <map>
#include <ranges>
#include <set>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

// A correction says something else of the check that it corrects, and is no newer one.
const Check* checkIn(const Records& records, std::size_t round, const std::string& device) {
  std::map<std::size_t, std::size_t> begun;       // of each check the number of the first of its corrections
  std::map<std::size_t, const Check*> said_last;  // by that number
  for (const Check& c : records.checks) {
    if (c.round != round || c.device != device) continue;
    const auto old = c.corrects ? begun.find(*c.corrects) : begun.end();
    const std::size_t first = old == begun.end() ? c.number : old->second;
    begun[c.number] = first;
    said_last[first] = &c;
  }
  return said_last.empty() ? nullptr : said_last.rbegin()->second;
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
