#include "app/command_line/report_pages.h"

#include "app/command_line/table.h"
#include "core/files/report_csv.h"

namespace stopwalk::app {

std::string ReportPages::before(bool first) const {
  if (format_ == "csv") return first ? files::csvHead() : "";
  if (format_ == "findings-csv") return first ? files::findingsCsvHead() : "";
  if (format_ != "json") return "";
  return !first ? ",\n" : several_ ? "[" : "";
}

std::string ReportPages::page(const files::FiledReport& report) const {
  if (format_ == "csv") return files::reportCsv(report, today_);
  if (format_ == "findings-csv") return files::findingsCsv(report, today_);
  if (format_ == "json") return files::reportJson(report, today_);
  return format_ == "summary" ? "" : auditSheet(report, style_, today_);
}

std::string ReportPages::end(const std::vector<SummaryLine>& lines) const {
  if (format_ == "csv" || format_ == "findings-csv") return "";
  if (format_ == "json") return several_ ? "]\n" : "\n";
  return (several_ || format_ == "summary" ? summaryTable(lines, style_) : "") + caution(style_);
}

}  // namespace stopwalk::app
