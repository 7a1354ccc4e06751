#include "core/inspection/bundle.h"

#include <algorithm>
#include <set>

namespace stopwalk::inspection {

Bundle bundleOf(const Records& records, const Schedule& schedule, Date from, Date to) {
  Bundle bundle{from, to, {}, {}, {}, failedDevices(records, schedule), {}};
  const auto isThen = [&](const Moment& at) { return from <= at.date && at.date <= to; };
  for (const Round& r : records.rounds)
    if (isThen(r.at)) bundle.rounds.push_back(r);
  const std::vector<std::size_t> by = correctedBy(records);
  std::set<std::size_t> wanted;
  for (std::size_t i = 0; i < records.checks.size(); ++i) {
    const Check& c = records.checks[i];
    if (!isThen(c.at) && !wanted.contains(c.number)) continue;
    wanted.insert(by[i]);
    bundle.checks.push_back(c);
    bundle.corrected_by.push_back(by[i]);
  }
  for (const Check* c : openActions(records)) bundle.open_actions.push_back(*c);
  return bundle;
}

}  // namespace stopwalk::inspection
