#include "app/command_line/audit_layout.h"

#include <sstream>

#include "app/command_line/input.h"
#include "app/command_line/log.h"
#include "app/command_line/round_input.h"
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

// What the records beside a layout say. Not good: they are there, and cannot be read.
struct Records {
  bool good = true;
  std::vector<inspection::FailedDevice> failed;
  std::optional<files::RecordsUsed> used;
};

Records recordsFor(const std::string& layout_file, const inspection::Schedule& schedule, Session& session) {
  if (layout_file == "-") return {};
  const auto read = readRecordsOf(layout_file, session);
  if (!read->there) return {};
  if (!read->unreadable.empty()) return {false, {}, {}};
  Records records{true, inspection::failedDevices(read->log.records, schedule), {}};
  records.used = files::RecordsUsed{read->file, read->log.lines, read->log.head(), {}};
  for (const inspection::FailedDevice& f : records.failed) records.used->failed.push_back(f.device);
  session.console.err << "stopwalk: " << read->file << ": " << counted(read->log.lines, "inspection record")
                      << " taken into account; "
                      << (records.failed.empty() ? "no device" : counted(records.failed.size(), "device"))
                      << " failed the last check\n";
  return records;
}

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
  const Records records = recordsFor(file, chosen.profile->inspection, session);
  if (!records.good) return {{}, Exit::NoFile};
  audit::Report report = audit::audit(*input.layout, input.kinds, *chosen.profile, hours, records.failed);
  session.log.debug("audited {} by {}: {} findings", file, report.profile, report.findings.size());
  printFaults(input, report, session);
  return {files::FiledReport{file, files::sha256(input.text), std::move(report), records.used}, Exit::Done};
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
