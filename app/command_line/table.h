#pragma once

#include <cstddef>
#include <span>
#include <string>

#include "core/files/report_json.h"

namespace stopwalk::app {

struct TableStyle {
  std::size_t columns = 100;
  bool colour = false;  // besides the words, never alone
};

// Reports for people: stations and findings, worst first, totals, and the caution.
std::string auditTable(std::span<const files::FiledReport> reports, TableStyle style);

}  // namespace stopwalk::app
