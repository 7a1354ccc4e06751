#include "core/inspection/round_progress.h"

#include <algorithm>
#include <map>
#include <ranges>
#include <set>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

// A correction says something else of the check that it corrects, and is no newer one.
std::map<std::string, const Check*> checksIn(const Records& records, std::size_t round) {
  std::map<std::size_t, const Check*> begun;   // by the number of each, the first that it corrects
  std::map<std::string, const Check*> newest;  // by device, of those firsts
  std::map<std::string, const Check*> last;    // by device, what was last said of that
  for (const Check& c : records.checks) {
    if (c.round != round) continue;
    const auto old = c.corrects ? begun.find(*c.corrects) : begun.end();
    const bool corrects = old != begun.end() && old->second->device == c.device;
    const Check* first = begun[c.number] = corrects ? old->second : &c;
    const Check*& its_newest = newest[c.device];
    if (its_newest && first->number < its_newest->number) continue;
    its_newest = first;
    last[c.device] = &c;
  }
  return last;
}

const Check* checkIn(const Records& records, std::size_t round, const std::string& device) {
  const auto checks = checksIn(records, round);
  const auto at = checks.find(device);
  return at == checks.end() ? nullptr : at->second;
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
