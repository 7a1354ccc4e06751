#include "app/command_line/audit_layout.h"

#include <sstream>

#include "app/command_line/input.h"
#include "app/command_line/log.h"
#include "core/audit/audit.h"
#include "core/files/faults.h"
#include "core/files/sha256.h"

namespace stopwalk::app {
namespace {

void printFaults(const Input& input, const audit::Report& report, Session& session) {
  std::vector<floor::Fault> faults;
  for (const audit::Finding& f : report.findings)
    if (f.rule == "drawing-fault") faults.push_back({f.subject, f.room, f.text});
  if (!faults.empty()) print(files::faultsAt(input.text, input.file, faults), session);
}

struct Report {
  std::optional<files::FiledReport> filed;
  Exit exit = Exit::Done;  // why there is none
};

Report reportOn(const std::string& file, const AuditOptions& options,
                const std::optional<audit::Profile>& asked, Session& session) {
  const Input input = LayoutInput(options.kinds, session).read(file);
  if (!input.layout) return {{}, input.exit};
  Profiles profiles(session);
  ChosenProfile chosen = asked ? ChosenProfile{asked, Exit::Done} : profiles.of(input);
  if (!chosen.profile) return {{}, chosen.exit};
  // A profile that is asked for goes before what the layout says of itself.
  if (!asked) chosen.profile = audit::withHouseRules(std::move(*chosen.profile), input.layout->house_rules);
  if (!applyLimits(*chosen.profile, options, session)) return {{}, Exit::Wrong};
  const floor::Hours hours = options.hours == "after" ? floor::Hours::After : floor::Hours::Open;
  audit::Report report = audit::audit(*input.layout, input.kinds, *chosen.profile, hours);
  session.log.debug("audited {} by {}: {} findings", file, report.profile, report.findings.size());
  printFaults(input, report, session);
  return {files::FiledReport{file, files::sha256(input.text), std::move(report)}, Exit::Done};
}

}  // namespace

bool applyLimits(audit::Profile& profile, const AuditOptions& options, Session& session) {
  bool good = true;
  for (const std::string& limit : options.limits) {
    const std::string wrong = audit::applyLimit(profile, limit);
    if (!wrong.empty()) session.console.err << "stopwalk: --limit " << limit << ": " << wrong << "\n";
    good = good && wrong.empty();
  }
  return good;
}

Audited auditLayout(const std::string& file, const AuditOptions& options,
                    const std::optional<audit::Profile>& asked, const ReportPages& pages,
                    const Session& session) {
  std::ostringstream told;
  const Console console{session.console.in, session.console.out, told};
  const auto log = logTo(told, session.log.level());
  Session own{console, *log, told, {}};
  const Report report = reportOn(file, options, asked, own);
  if (!report.filed) return {told.str(), "", {file, report.exit, {}}, report.exit};
  const SummaryLine line = summaryOf(*report.filed);
  return {told.str(), pages.page(*report.filed), line, line.counts->fail > 0 ? Exit::Failed : Exit::Done};
}

}  // namespace stopwalk::app
