#include "core/files/report_csv.h"

#include <vector>

#include "core/audit/accepted.h"
#include "core/audit/wording.h"
#include "core/files/csv.h"

namespace stopwalk::files {
namespace {

using audit::word;

std::string number(const std::optional<double>& value) {
  return value ? audit::decimal(*value, 6) : std::string();
}

std::string rowOf(const std::string& file, const audit::StationReport& s, bool accepted) {
  return csvRow({file,
                 s.id,
                 s.machine,
                 std::string(word(s.role)),
                 s.room,
                 number(s.at_m.x),
                 number(s.at_m.y),
                 s.stop.device,
                 s.stop.kind,
                 std::string(word(s.stop.status)),
                 number(s.stop.walk_m),
                 number(s.stop.clear_width_m),
                 number(s.stop.run_down_s),
                 number(s.stop.seconds),
                 s.phone.device,
                 std::string(word(s.phone.status)),
                 number(s.phone.walk_m),
                 number(s.phone.clear_width_m),
                 number(s.phone.seconds),
                 std::string(word(s.verdict)),
                 accepted ? "yes" : ""});
}

// Whether it is accepted: who accepted it stands there also when that is over.
std::string acceptedWord(audit::AcceptedState state) {
  switch (state) {
    case audit::AcceptedState::No:
      return "";
    case audit::AcceptedState::Yes:
      return "yes";
    case audit::AcceptedState::Unclear:
      return "unclear";
    case audit::AcceptedState::Over:
    case audit::AcceptedState::NoDay:
    case audit::AcceptedState::Worse:
      break;
  }
  return "no longer";
}

std::string rowOf(const std::string& file, const audit::Finding& f, inspection::Date today) {
  const audit::Acceptance a = f.accepted ? *f.accepted : f.unclear.value_or(audit::Acceptance());
  return csvRow({file, f.rule, std::string(word(f.severity)), f.subject, f.which, f.room, number(f.measured),
                 number(f.limit), f.unit, f.text, std::string(word(f.basis.kind)), f.basis.reference,
                 acceptedWord(audit::acceptedState(f, today)), a.by, a.until, a.reason, number(a.measured)});
}

}  // namespace

std::string csvHead() {
  return csvRow({"layout",
                 "station",
                 "machine",
                 "role",
                 "room",
                 "x_m",
                 "y_m",
                 "stop",
                 "stop_kind",
                 "stop_status",
                 "stop_walk_m",
                 "stop_clear_width_m",
                 "stop_run_down_s",
                 "stop_seconds",
                 "phone",
                 "phone_status",
                 "phone_walk_m",
                 "phone_clear_width_m",
                 "phone_seconds",
                 "verdict",
                 "accepted"});
}

std::string reportCsv(const FiledReport& report, inspection::Date today) {
  std::string text;
  const std::vector<bool> accepted = audit::acceptedStations(report.report, today);
  for (std::size_t i = 0; i < accepted.size(); ++i)
    text += rowOf(report.file, report.report.stations[i], accepted[i]);
  return text;
}

std::string findingsCsvHead() {
  return csvRow({"layout", "rule", "severity", "subject", "which", "room", "measured", "limit", "unit",
                 "text", "basis", "basis_reference", "accepted", "accepted_by", "accepted_until",
                 "accepted_reason", "accepted_measured"});
}

std::string findingsCsv(const FiledReport& report, inspection::Date today) {
  std::string text;
  for (const audit::Finding& f : report.report.findings) text += rowOf(report.file, f, today);
  return text;
}

}  // namespace stopwalk::files
