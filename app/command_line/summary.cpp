#include "app/command_line/summary.h"

#include <algorithm>
#include <tuple>

#include "app/command_line/text_columns.h"
#include "core/audit/rule.h"
#include "core/audit/wording.h"

namespace stopwalk::app {
namespace {

using Counts = SummaryLine::Counts;

constexpr std::string_view kTogether = "together";  // the last line's name

// Of the gravest findings the one whose rule stands first in docs/rules.md.
const audit::Finding* worstOf(const audit::Report& report) {
  const auto gravity = [](const audit::Finding& f) {
    const auto at = std::ranges::find(audit::rules(), f.rule, &audit::Rule::id);
    return std::pair(f.severity, at - audit::rules().begin());
  };
  const auto worst = std::ranges::min_element(report.findings, {}, gravity);
  return worst == report.findings.end() ? nullptr : &*worst;
}

audit::Verdict verdictOf(const audit::Report& report) {
  audit::Verdict worst = report.count(audit::Severity::Fail) > 0   ? audit::Verdict::Fails
                         : report.count(audit::Severity::Warn) > 0 ? audit::Verdict::Warns
                                                                   : audit::Verdict::Meets;
  for (const audit::StationReport& s : report.stations) worst = std::max(worst, s.verdict);
  return worst;
}

// Of a layout that could not be audited nothing is known: it may be the worst of all.
bool isWorse(const SummaryLine& a, const SummaryLine& b) {
  if (!a.counts || !b.counts) return !a.counts && b.counts;
  const auto gravity = [](const Counts& c) { return std::tie(c.verdict, c.fail, c.warn, c.untold, c.note); };
  return gravity(*a.counts) > gravity(*b.counts);
}

// The folder that all the files are in, with its slash; empty if there is none.
std::string folderOf(const std::vector<SummaryLine>& lines) {
  std::string folder = lines.front().file.substr(0, lines.front().file.rfind('/') + 1);
  for (const SummaryLine& line : lines)
    while (!line.file.starts_with(folder)) {
      folder.pop_back();
      folder.erase(folder.rfind('/') + 1);  // the root's own folder is none
    }
  return folder;
}

std::string labelOf(const SummaryLine& line, const std::string& folder) {
  constexpr std::string_view kEnd = ".layout.yaml";
  std::string label = line.file.substr(folder.size());
  if (label.ends_with(kEnd)) label.resize(label.size() - kEnd.size());
  return printable(label.empty() ? line.file : label);
}

// Columns of numbers as narrow as their heads; what is left goes to the layout, as far as it needs it, and to
// the finding.
std::vector<Column> columnsFor(const std::vector<std::string>& labels, const TableStyle& style) {
  std::vector<Column> columns = {{"", 5},
                                 {"LAYOUT"},
                                 {"MACHINES", 8, true},
                                 {"STATIONS", 8, true, 1},
                                 {"FAIL", 5, true, 1},
                                 {"WARN", 5, true, 1},
                                 {"NOTE", 5, true, 1},
                                 {"WORST FINDING"}};
  std::size_t left = style.columns;
  for (const Column& c : columns) left -= c.columns + (&c == &columns.front() ? 0 : c.gap);
  std::size_t longest = std::max(columns[1].head.size(), kTogether.size());
  for (const std::string& label : labels) longest = std::max(longest, width(label));
  columns[1].columns = std::min(longest, left / 2);
  columns.back().columns = left - columns[1].columns;
  return columns;
}

std::vector<std::string> cellsOf(const std::string& word, const std::string& label, const Counts& c,
                                 const std::string& finding) {
  return {word,
          label,
          std::to_string(c.machines),
          std::to_string(c.stations),
          std::to_string(c.fail),
          std::to_string(c.warn),
          std::to_string(c.note),
          finding};
}

// Where a line has room for it, at whom the finding is.
std::string findingOf(const Counts& c, const TableStyle& style) {
  if (c.fail + c.warn == 0 && c.untold > 0)
    return "no finding: " + counted(c.untold, "station") + " without a way to a stop or a phone";
  if (c.worst_rule.empty()) return "-";
  constexpr std::size_t kWide = 100;
  return c.worst_rule + (style.columns >= kWide ? ", " + printable(c.worst_name) : "");
}

std::string lineOf(const SummaryLine& line, const std::string& label, const std::vector<Column>& columns,
                   const TableStyle& style) {
  if (!line.counts)
    return row(columns,
               {"error", label, "-", "-", "-", "-", "-",
                line.exit == Exit::NoFile ? "a file cannot be read" : "has errors"},
               Ink::Fail, style);
  const audit::Verdict verdict = line.counts->verdict;
  return row(columns,
             cellsOf(std::string(audit::word(verdict)), label, *line.counts, findingOf(*line.counts, style)),
             inkOf(verdict), style);
}

std::string totalsLine(const std::vector<SummaryLine>& lines, const std::vector<Column>& columns,
                       const TableStyle& style) {
  Counts all;
  for (const SummaryLine& line : lines) {
    if (!line.counts) continue;
    all.machines += line.counts->machines;
    all.stations += line.counts->stations;
    all.fail += line.counts->fail;
    all.warn += line.counts->warn;
    all.note += line.counts->note;
  }
  return row(columns, cellsOf("", std::string(kTogether), all, ""), Ink::Plain, style);
}

// What is not asked is not found.
std::string rulesOffIn(const std::vector<SummaryLine>& lines, const std::string& folder) {
  std::vector<std::string> off;
  for (const SummaryLine& line : lines)
    if (line.counts && line.counts->rules_off > 0)
      off.push_back(labelOf(line, folder) + " (" + std::to_string(line.counts->rules_off) + ")");
  return off.empty() ? "" : " Rules are off in " + audit::listed(off) + ".";
}

// They are those of the whole run.
std::string limitsOf(const std::vector<SummaryLine>& lines) {
  for (const SummaryLine& line : lines)
    if (line.counts && !line.counts->limits.empty()) return " " + limitsText(line.counts->limits) + ".";
  return "";
}

// Nor is what no rule says a finding.
std::string untoldIn(const std::vector<SummaryLine>& lines, const std::string& folder) {
  std::vector<std::string> untold;
  for (const SummaryLine& line : lines)
    if (line.counts && line.counts->untold > 0)
      untold.push_back(labelOf(line, folder) + " (" + std::to_string(line.counts->untold) + ")");
  return untold.empty() ? ""
                        : " Stations without a way to a stop or to a phone, which no failing or warning rule "
                          "that is on says, are in " +
                              audit::listed(untold) + ".";
}

std::string totalsText(const std::vector<SummaryLine>& lines, const TableStyle& style) {
  std::size_t errors = 0, by_verdict[3] = {};
  for (const SummaryLine& line : lines)
    ++(line.counts ? by_verdict[static_cast<std::size_t>(line.counts->verdict)] : errors);
  const auto& [meets, warns, fails] = by_verdict;
  std::string text = counted(lines.size(), "layout") + ": " + counted(fails, audit::Verdict::Fails) + ", " +
                     counted(warns, audit::Verdict::Warns) + ", " + counted(meets, audit::Verdict::Meets) +
                     " the chosen rules";
  if (errors > 0)
    text += ", " + std::to_string(errors) +
            " with errors, not audited and not counted together: standard error says what is wrong";
  return paragraph(
      text + "." + untoldIn(lines, folderOf(lines)) + rulesOffIn(lines, folderOf(lines)) + limitsOf(lines), 0,
      style);
}

}  // namespace

namespace {

// A station as the table of stations calls it; what else there is by its id.
std::string calledIn(const audit::Report& report, const std::string& subject) {
  const auto station = std::ranges::find(report.stations, subject, &audit::StationReport::id);
  return station == report.stations.end() ? subject : station->name + " (" + subject + ")";
}

}  // namespace

SummaryLine summaryOf(const files::FiledReport& filed) {
  const audit::Report& r = filed.report;
  SummaryLine line{filed.file, Exit::Done,
                   Counts{r.machines,
                          r.stations.size(),
                          0,
                          0,
                          0,
                          filed.rules_off,
                          r.countUntold(),
                          verdictOf(r),
                          {},
                          {},
                          filed.limits}};
  line.counts->fail = r.count(audit::Severity::Fail);
  line.counts->warn = r.count(audit::Severity::Warn);
  line.counts->note = r.count(audit::Severity::Note);
  if (const audit::Finding* worst = worstOf(r)) {
    line.counts->worst_rule = worst->rule;
    line.counts->worst_name = calledIn(r, worst->subject);
  }
  return line;
}

std::string summaryTable(const std::vector<SummaryLine>& lines, const TableStyle& style) {
  if (lines.empty()) return "";
  std::vector<const SummaryLine*> worst_first;
  for (const SummaryLine& line : lines) worst_first.push_back(&line);
  std::ranges::stable_sort(worst_first, [](const auto* a, const auto* b) { return isWorse(*a, *b); });

  const std::string folder = folderOf(lines);
  std::vector<std::string> labels;
  for (const SummaryLine* line : worst_first) labels.push_back(labelOf(*line, folder));
  const std::vector<Column> columns = columnsFor(labels, style);

  const std::string title = "All " + counted(lines.size(), "layout") +
                            (folder.empty() ? "" : " in " + printable(folder)) + ", worst first";
  std::string text;
  for (const std::string& line : wrapped(title, style.columns))
    text += inked(line, Ink::Strong, style) + "\n";
  text += "\n" + headRow(columns, style);
  for (std::size_t i = 0; i < labels.size(); ++i) text += lineOf(*worst_first[i], labels[i], columns, style);
  return text + totalsLine(lines, columns, style) + "\n" + totalsText(lines, style) + "\n";
}

}  // namespace stopwalk::app
