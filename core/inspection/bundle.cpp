#include "core/inspection/bundle.h"

#include <set>

#include "core/inspection/check_chain.h"

namespace stopwalk::inspection {

Bundle bundleOf(const Records& records, const Schedule& schedule, Date from, Date to, const AsOf& as_of) {
  Bundle bundle{
      from, to, {}, {}, {}, passesShort(records, schedule, as_of), failedDevices(records, schedule, as_of),
      {},   {}};
  for (const FailedDevice& f : bundle.failed)
    if (const Check* check = records.findCheck(f.check, f.device))
      bundle.failures.emplace(std::pair(f.check, f.device), *check);
  const auto isThen = [&](const Moment& at) { return from <= at.date && at.date <= to; };
  for (const Round& r : records.rounds)
    if (isThen(r.at)) bundle.rounds.push_back(r);
  std::set<const Check*> wanted;
  for (const CheckChain& chain : chainsOf(records))
    if (chain.isUndated() || isThen(chain.earliest()) || isThen(chain.latest()))
      wanted.insert(chain.checks.begin(), chain.checks.end());
  const std::vector<std::size_t> by = correctedBy(records);
  for (std::size_t i = 0; i < records.checks.size(); ++i) {
    if (!wanted.contains(&records.checks[i])) continue;
    bundle.checks.push_back(records.checks[i]);
    bundle.corrected_by.push_back(by[i]);
  }
  for (const Check* c : openActions(records, as_of)) bundle.open_actions.push_back(*c);
  return bundle;
}

}  // namespace stopwalk::inspection
