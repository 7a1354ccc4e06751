#pragma once

#include <string>
#include <vector>

#include "app/command_line/summary.h"
#include "core/files/report_json.h"
#include "core/inspection/moment.h"

namespace stopwalk::app {

// The reports of one run in the format asked for, a piece at a time, so that none need wait for the others.
class ReportPages {
 public:
  // `several`: a list, with a summary where the format is for people.
  // `today` decides which acceptances are over.
  ReportPages(std::string format, bool several, TableStyle style, inspection::Date today)
      : format_(std::move(format)), several_(several), style_(style), today_(today) {}

  std::string before(bool first) const;
  std::string page(const files::FiledReport& report) const;
  std::string end(const std::vector<SummaryLine>& lines) const;

 private:
  std::string format_;
  bool several_;
  TableStyle style_;
  inspection::Date today_;
};

}  // namespace stopwalk::app
