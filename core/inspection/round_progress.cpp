#include "core/inspection/round_progress.h"

#include <algorithm>
#include <map>
#include <ranges>
#include <set>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

// A correction says something else of the check that it corrects, and is no newer one.
std::map<std::string, const Check*> checksIn(const Records& records, std::size_t round) {
  struct Said {
    std::size_t first = 0;  // of its chain, in the records
    const Check* check = nullptr;
  };
  const std::vector<std::size_t> corrects = placesCorrected(records);
  std::vector<std::size_t> first(corrects.size());
  std::map<std::string, Said> last;
  for (std::size_t i = 0; i < first.size(); ++i) {
    first[i] = corrects[i] == i ? i : first[corrects[i]];
    if (records.checks[first[i]].round != round) continue;
    Said& said = last[records.checks[i].device];
    if (!said.check || said.first <= first[i]) said = {first[i], &records.checks[i]};
  }
  std::map<std::string, const Check*> checks;
  for (const auto& [device, said] : last) checks.emplace(device, said.check);
  return checks;
}

std::vector<std::string> stillToCheck(const Round& round, const Records& records) {
  const std::vector<std::size_t> rounds = roundsOf(records);
  std::set<std::string> checked;
  for (std::size_t i = 0; i < rounds.size(); ++i)
    if (rounds[i] == round.number) checked.insert(records.checks[i].device);
  std::vector<std::string> left;
  for (const std::string& device : round.devices)
    if (!checked.contains(device)) left.push_back(device);
  return left;
}

std::vector<const Round*> unfinishedRounds(const Records& records) {
  const std::vector<std::size_t> round_of = roundsOf(records);
  std::set<std::pair<std::size_t, std::string>> checked;
  for (std::size_t i = 0; i < round_of.size(); ++i) checked.emplace(round_of[i], records.checks[i].device);
  std::vector<const Round*> rounds;
  for (const Round& r : std::views::reverse(records.rounds))
    if (std::ranges::any_of(r.devices, [&](const std::string& d) {
          return !checked.contains({r.number, d});
        }))
      rounds.push_back(&r);
  return rounds;
}

}  // namespace stopwalk::inspection
