#include "app/command_line/table.h"

#include <algorithm>
#include <numeric>
#include <vector>

#include "app/command_line/text_columns.h"
#include "core/audit/accepted.h"
#include "core/audit/wording.h"

namespace stopwalk::app {
namespace {

using audit::Report;
using audit::StationReport;
using audit::Status;

constexpr const char* kCaution =
    "Stopwalk checks a drawing against chosen rules; it does not certify a machine, a stop or a room. Local "
    "codes, the machine's maker, "
    "the authority having jurisdiction and licensed people come first. Never rely on a stop as a guard. Test "
    "a stop only as the maker "
    "and the shop's procedure say, with the work clear. Anyone may press any stop.";

std::string walkText(const audit::Nearest& n, layout::LengthUnit unit) {
  if (n.status == Status::AtHand) return "at hand";
  if (!n.walk_m) return std::string(audit::word(n.status));
  return audit::lengthCell(*n.walk_m, unit) + (n.status == Status::Narrow ? ", narrow" : "");
}

std::string restText(const audit::Nearest& n) {
  if (!n.seconds) return "-";
  return audit::secondsCell(*n.seconds) + (n.run_down_s ? "" : " *");
}

std::vector<Column> columnsFor(const TableStyle& style) {
  // What is left of the width goes to the two columns of names.
  const std::size_t walk = 11, rest = 8, verdict = 5, gaps = 5 * 2;
  const std::size_t left = style.columns - (verdict + 2 * walk + rest + gaps);
  const std::size_t station = left / 2;
  return {{"", verdict},        {"STATION", station},    {"NEAREST STOP", left - station},
          {"WALK", walk, true}, {"AT REST", rest, true}, {"PHONE", walk, true}};
}

std::string stationTable(const Report& report, const TableStyle& style, inspection::Date today) {
  const std::vector<Column> columns = columnsFor(style);
  std::vector<std::size_t> worst_first(report.stations.size());
  std::iota(worst_first.begin(), worst_first.end(), std::size_t{0});
  std::ranges::stable_sort(worst_first, std::ranges::greater(),
                           [&](std::size_t i) { return report.stations[i].verdict; });

  const std::vector<bool> accepted = audit::acceptedStations(report, today);
  std::string text = headRow(columns, style);
  bool unknown = false;
  for (const std::size_t i : worst_first) {
    const StationReport* s = &report.stations[i];
    unknown = unknown || (s->stop.seconds && !s->stop.run_down_s);
    text += row(columns,
                {std::string(audit::word(s->verdict)),
                 printable(s->name + " (" + s->id + ")") + (accepted[i] ? ", accepted" : ""),
                 s->stop.name.empty() ? "-" : printable(s->stop.name), walkText(s->stop, report.unit),
                 restText(s->stop), walkText(s->phone, report.unit)},
                inkOf(s->verdict), style);
  }
  if (report.stations.empty()) text += "       no stations\n";
  if (unknown) text += "\n" + paragraph("* without a run-down, which is not recorded", 0, style);
  return text;
}

std::string rulesOffText(std::size_t rules) {
  return counted(rules, "rule") + (rules == 1 ? " is off" : " are off");
}

std::string findingList(const Report& report, const TableStyle& style, inspection::Date today) {
  std::string text;
  for (const audit::Finding& f : report.findings) {
    std::string sentence = paragraph(f.text, 6, style);
    sentence.replace(0, 4, inked(std::string(audit::word(f.severity)), inkOf(f.severity), style));
    if (f.accepted) sentence += paragraph(audit::acceptedText(f, today, report.unit), 6, style);
    if (f.unclear) sentence += paragraph(audit::unclearText(f), 6, style);
    text += sentence + paragraph("(" + f.rule + "; " + audit::basisText(f.basis) + ")", 6, style);
  }
  if (text.empty()) text = paragraph(audit::noFindingsText(report), 0, style);
  const std::string untold = audit::untoldText(report);
  return untold.empty() ? text : text + paragraph(untold + ".", 0, style);
}

// Should it come back, it may be accepted unseen.
std::string idleText(const files::FiledReport& filed, const TableStyle& style, inspection::Date today) {
  if (filed.idle.empty()) return "";
  std::string text =
      paragraph("Accepted in the layout, and not found now. Where it is mended take it out there.", 0, style);
  for (const layout::AcceptedFinding& a : filed.idle)
    text += paragraph(audit::namedText(a) + ": " + audit::comeBackText(a, today, filed.report.unit) + ".", 6,
                      style) +
            paragraph(audit::acceptedText({a.reason, a.by, a.until}, today), 6, style);
  return text;
}

std::string totals(const Report& report, const TableStyle& style) {
  return paragraph(counted(report.machines, "machine") + ", " + counted(report.stations.size(), "station") +
                       ", " + counted(report.devices, "device") +
                       "; findings: " + std::to_string(report.count(audit::Severity::Fail)) + " fail, " +
                       std::to_string(report.count(audit::Severity::Warn)) + " warn, " +
                       std::to_string(report.count(audit::Severity::Note)) +
                       " note. Stations that meet the chosen rules: " +
                       std::to_string(report.count(audit::Verdict::Meets)) + ".",
                   0, style);
}

}  // namespace

std::string auditSheet(const files::FiledReport& filed, TableStyle style, inspection::Date today) {
  style.columns = std::min(style.columns, kWidestText);
  const Report& r = filed.report;
  const std::string title =
      printable(r.layout_name) + (r.revision ? ", revision " + std::to_string(*r.revision) : "");
  std::string text;
  for (const std::string& line : wrapped(title, style.columns))
    text += inked(line, Ink::Strong, style) + "\n";
  text += paragraph(filed.file + "; profile " + r.profile + "; doors as " +
                        (r.hours == floor::Hours::Open ? "in opening hours" : "after hours") +
                        (filed.rules_off > 0 ? "; " + rulesOffText(filed.rules_off) : ""),
                    0, style);
  if (!filed.limits.empty()) text += paragraph(limitsText(filed.limits), 0, style);
  if (filed.records) {
    const std::string& fault = filed.records->fault;
    text += paragraph(
        "Inspection records: " + filed.records->file + ", " + counted(filed.records->records, "record") +
            (filed.records->failed.empty()
                 ? (fault.empty() ? "; no device is failed" : "; no device is known to be failed")
                 : "; failed and not passed since: " + audit::listed(filed.records->failed)),
        0, style);
    if (!fault.empty()) text += paragraph(fault, 0, style);
  }
  return text + "\n" + stationTable(r, style, today) + "\n" + findingList(r, style, today) +
         idleText(filed, style, today) + "\n" + totals(r, style) + "\n";
}

std::string caution(TableStyle style) {
  style.columns = std::min(style.columns, kWidestText);
  return paragraph(kCaution, 0, style);
}

}  // namespace stopwalk::app
