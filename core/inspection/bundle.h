#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

// What an insurer is given of a period, as values; the layout, its audit and the hashes stand beside it.
struct Bundle {
  Date from{}, to{};          // both days included
  std::vector<Round> rounds;  // opened then
  // Made then, or perhaps then, and with each those that correct it whenever they were written.
  std::vector<Check> checks;
  std::vector<std::size_t>
      corrected_by;  // for each of `checks` the number of the one that corrects it; 0: none
  std::map<std::size_t, ShortOfPass> short_passes;  // of those that do not do what they seem to
  std::vector<FailedDevice> failed;                 // as the records stand now
  std::map<std::pair<std::size_t, std::string>, Check>
      failures;                     // by number and device, the checks that `failed` names
  std::vector<Check> open_actions;  // the checks that ask for them, as the records stand now
};

Bundle bundleOf(const Records& records, const Schedule& schedule, Date from, Date to, const AsOf& as_of);

}  // namespace stopwalk::inspection
