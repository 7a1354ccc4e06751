#include "core/files/report_csv.h"

#include <vector>

#include "core/audit/wording.h"
#include "core/files/csv.h"

namespace stopwalk::files {
namespace {

using audit::word;

std::string number(const std::optional<double>& value) {
  return value ? audit::decimal(*value, 6) : std::string();
}

std::string rowOf(const std::string& file, const audit::StationReport& s) {
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
                 std::string(word(s.verdict))});
}

std::string rowOf(const std::string& file, const audit::Finding& f) {
  const audit::Acceptance accepted = f.accepted.value_or(audit::Acceptance());
  return csvRow({file, f.rule, std::string(word(f.severity)), f.subject, f.which, f.room, number(f.measured),
                 number(f.limit), f.unit, f.text, std::string(word(f.basis.kind)), f.basis.reference,
                 accepted.by, accepted.until, accepted.reason});
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
                 "verdict"});
}

std::string reportCsv(const FiledReport& report) {
  std::string text;
  for (const audit::StationReport& s : report.report.stations) text += rowOf(report.file, s);
  return text;
}

std::string findingsCsvHead() {
  return csvRow({"layout", "rule", "severity", "subject", "which", "room", "measured", "limit", "unit",
                 "text", "basis", "basis_reference", "accepted_by", "accepted_until", "accepted_reason"});
}

std::string findingsCsv(const FiledReport& report) {
  std::string text;
  for (const audit::Finding& f : report.report.findings) text += rowOf(report.file, f);
  return text;
}

}  // namespace stopwalk::files
