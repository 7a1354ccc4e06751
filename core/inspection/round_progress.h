#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/inspection/schedule.h"

// How far rounds have come. All of it is in the records, so that a round goes on where it was left.
namespace stopwalk::inspection {

// By device what was last said of it in a round.
std::map<std::string, const Check*> checksIn(const Records& records, std::size_t round);
// Of a round's devices those that have no check in it, in the order to be walked.
std::vector<std::string> stillToCheck(const Round& round, const Records& records);
// The rounds with a device still to check, the newest first.
std::vector<const Round*> unfinishedRounds(const Records& records);

}  // namespace stopwalk::inspection
