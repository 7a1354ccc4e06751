#pragma once

#include <optional>
#include <string>

#include "app/command_line/audit_options.h"
#include "app/command_line/input.h"
#include "app/command_line/profiles.h"
#include "app/command_line/report_pages.h"

namespace stopwalk::app {

// The limits of the line over those of the profile; tells the person what is wrong with them.
bool applyLimits(audit::Profile& profile, const AuditOptions& options, Session& session);

// A layout, and the report on it as its profile, its house rules, the line and the records beside it have it.
struct AuditedInput {
  Input input;
  audit::Profile profile;
  std::optional<audit::Report> report;
  std::optional<files::RecordsUsed> records;
  std::vector<inspection::FailedDevice> failed;  // by the records
  bool in_the_way = false;                       // the result would replace what the layout is made with
  Exit exit = Exit::Done;                        // why there is no report
};
AuditedInput auditInput(const std::string& file, const AuditOptions& options,
                        const std::optional<audit::Profile>& asked, Session& session);

// What is left of a layout when it has been audited and its report written down.
struct Audited {
  std::string told;  // for standard error
  std::string page;
  SummaryLine line;
  Exit exit = Exit::Done;
  bool in_the_way = false;  // of what is written, which must not be put in place
};

// Audits one layout, and prints nothing: others may be audited at the same time. `asked` is the profile of
// the line, none if the layout names its own.
Audited auditLayout(const std::string& file, const AuditOptions& options,
                    const std::optional<audit::Profile>& asked, const ReportPages& pages,
                    const Session& session);

}  // namespace stopwalk::app
