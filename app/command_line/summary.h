#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/console.h"
#include "app/command_line/table_rows.h"
#include "core/files/report_json.h"

namespace stopwalk::app {

// What the summary keeps of a layout.
struct SummaryLine {
  struct Counts {
    std::size_t machines = 0, stations = 0, fail = 0, warn = 0, note = 0, rules_off = 0;
    std::size_t untold = 0;  // stations without a way of which no failing or warning finding is
    audit::Verdict verdict = audit::Verdict::Meets;  // of the worst station or finding
    std::string worst_rule, worst_name;              // empty: no findings
    std::vector<std::string> limits;                 // set over the profile's
  };
  std::string file;
  Exit exit = Exit::Done;        // why it could not be audited
  std::optional<Counts> counts;  // none: it could not
};

SummaryLine summaryOf(const files::FiledReport& filed);

// A line a layout, the worst first, and the totals.
std::string summaryTable(const std::vector<SummaryLine>& lines, const TableStyle& style);

}  // namespace stopwalk::app
