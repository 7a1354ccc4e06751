#include "app/command_line/audit_layout.h"

#include <algorithm>
#include <sstream>

#include "app/command_line/input.h"
#include "app/command_line/log.h"
#include "app/command_line/output.h"
#include "app/command_line/used_records.h"
#include "core/audit/accepted.h"
#include "core/audit/audit.h"
#include "core/files/faults.h"
#include "core/files/sha256.h"

namespace stopwalk::app {
namespace {

// As they hold: of several for the same the last one.
std::vector<std::string> limitsOf(const AuditOptions& options) {
  std::vector<std::string> limits;
  for (const std::string& limit : options.limits) {
    const std::string key = limit.substr(0, limit.find('=') + 1);
    std::erase_if(limits, [&](const std::string& earlier) { return earlier.starts_with(key); });
    limits.push_back(limit);
  }
  return limits;
}

void printFaults(const Input& input, const audit::Report& report, Session& session) {
  std::vector<floor::Fault> faults;
  for (const audit::Finding& f : report.findings)
    if (f.rule == "drawing-fault") faults.push_back({f.subject, f.room, f.text});
  if (!faults.empty()) print(files::faultsAt(input.text, input.file, faults), session);
}

}  // namespace

AuditedInput auditInput(const std::string& file, const AuditOptions& options,
                        const std::optional<audit::Profile>& asked, Session& session) {
  AuditedInput done;
  done.input = LayoutInput(options.kinds, session).read(file);
  const auto without = [&](Exit exit) {
    done.exit = exit;
    return std::move(done);
  };
  if (!done.input.layout) return without(done.input.exit);
  done.in_the_way = wouldReplaceInput(done.input, options.out, session);
  if (done.in_the_way) return without(Exit::Wrong);
  Profiles profiles(session);
  ChosenProfile chosen = asked ? ChosenProfile{asked, Exit::Done} : profiles.of(done.input);
  if (!chosen.profile) return without(chosen.exit);
  // A profile that is asked for goes before what the layout says of itself.
  done.profile = asked ? *asked : audit::withHouseRules(*chosen.profile, done.input.layout->house_rules);
  if (!applyLimits(done.profile, options, session)) return without(Exit::Wrong);
  const floor::Hours hours = options.hours == "after" ? floor::Hours::After : floor::Hours::Open;
  const UsedRecords records = recordsOf(done.input, done.profile.inspection, session);
  if (!records.good) return without(Exit::NoFile);
  done.report = audit::audit(*done.input.layout, done.input.kinds, done.profile, hours, records.failed);
  done.records = records.used;
  done.failed = records.failed;
  session.log.debug("audited {} by {}: {} findings", file, done.report->profile,
                    done.report->findings.size());
  printFaults(done.input, *done.report, session);
  return done;
}

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
  const Console console{
      session.console.in,     session.console.out, told, false, false, session.console.columns,
      session.console.window, session.console.now};
  const auto log = logTo(told, session.log.level());
  Session own{console, *log, told, {}};
  AuditedInput audited = auditInput(file, options, asked, own);
  if (!audited.report) return {told.str(), "", {file, audited.exit, {}}, audited.exit, audited.in_the_way};
  const auto idle = audit::notNeeded(audited.input.layout->accepted_findings, audited.report->findings);
  const files::FiledReport filed{
      file,
      files::sha256(audited.input.text),
      std::move(*audited.report),
      audited.records,
      static_cast<std::size_t>(std::ranges::count(audited.profile.settings, false, &audit::Setting::on)),
      idle,
      limitsOf(options)};
  const SummaryLine line = summaryOf(filed);
  return {told.str(), pages.page(filed), line, line.counts->fail > 0 ? Exit::Failed : Exit::Done};
}

}  // namespace stopwalk::app
