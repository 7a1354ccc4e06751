#pragma once

#include <span>
#include <string>

#include "core/files/inspection_log.h"
#include "core/inspection/bundle.h"
#include "core/inspection/schedule.h"
#include "core/planning/inspection_walk.h"

// Records as other programs read them: one object each, without a line end.
namespace stopwalk::files {

std::string roundJson(const inspection::Round& round);
// That of a round that was opened just now, with the walk past its devices: `order`.
std::string newRoundJson(const inspection::Round& round, const planning::InspectionWalk& walk);
std::string checkJson(const inspection::Check& check);

// What `round show` tells: `fault`, `rounds`, `checks`, `failed`, `actions`, `gone`.
struct ShownRecords {
  std::string fault;  // faultText() of the log
  std::vector<inspection::Round> rounds;
  std::vector<inspection::Check> checks;
  std::vector<inspection::FailedDevice> failed;
  std::vector<inspection::Check> actions;      // the checks that ask for them
  std::vector<inspection::FailedDevice> gone;  // of `failed`, what is not in the layout
};
std::string shownJson(const ShownRecords& shown);

// What `round due` tells: `on`, `fault`, `due`, `actions`, `next`, `gone`.
struct DueList {
  inspection::Date on{};
  std::vector<inspection::Due> due;
  std::vector<inspection::Check> actions;  // the checks that ask for what is due
  std::optional<inspection::Date> next;
  std::vector<inspection::FailedDevice> gone;  // that failed, and are not in the layout
  std::string fault;                           // faultText() of the log
};
std::string dueJson(const DueList& list);

// What `round sheet` tells of what it wrote: `file`, `of`, `pages`, `devices`, `order` (null: it is the
// round's own, and another would be found now).
struct WrittenSheet {
  std::string file, of;
  std::size_t pages = 0;
  std::vector<std::string> devices;
  inspection::RoundWalk how;
  std::optional<planning::InspectionWalk> walk;
};
std::string sheetJson(const WrittenSheet& sheet);

// What `round bundle` tells: `file`, `from`, `to`, and how many there are of what is in it.
std::string bundleJson(const inspection::Bundle& bundle, const std::string& file);

// What `round verify` tells.
std::string verdictJson(const LogVerdict& verdict, const std::string& file, const InspectionLog& log);

}  // namespace stopwalk::files
