#include "core/files/bundle_csv.h"

#include <map>

#include "core/audit/wording.h"
#include "core/files/csv.h"

namespace stopwalk::files {
namespace {

using inspection::Check;

const std::vector<std::string> kColumns = {
    "kind",          "number",     "round",   "date",        "machine",       "device",           "room",
    "people",        "inspector",  "tested",  "result",      "run_down_s",    "mean_run_down_s",  "note",
    "action",        "corrective", "owner",   "due",         "corrects",      "corrected_by",     "revision",
    "layout_sha256", "entered",    "removed", "falls_short", "tagged_out_by", "tagged_out_until", "no_stop"};

// A row with some of the columns; the others are empty.
std::string row(const std::map<std::string, std::string>& cells) {
  std::vector<std::string> all;
  for (const std::string& column : kColumns) {
    const auto cell = cells.find(column);
    all.push_back(cell == cells.end() ? std::string() : cell->second);
  }
  return csvRow(all);
}

std::string joined(const std::vector<std::string>& texts) {
  std::string all;
  for (const std::string& text : texts) all += (all.empty() ? "" : " ") + text;
  return all;
}

std::string numberOr(std::size_t number) {
  return number == 0 ? std::string() : std::to_string(number);
}

std::string revisionText(const std::optional<int>& revision) {
  return revision ? std::to_string(*revision) : std::string();
}

std::map<std::string, std::string> cellsOf(const Check& c, const std::string& kind) {
  std::vector<std::string> tested, runs;
  for (const auto& [what, yes] : c.tested) tested.push_back(std::string(word(what)) + (yes ? "=yes" : "=no"));
  for (const double run : c.run_down_s) runs.push_back(audit::decimal(run, 3));
  const auto mean = inspection::meanOf(c.run_down_s);
  std::map<std::string, std::string> cells = {
      {"kind", kind},
      {"number", std::to_string(c.number)},
      {"round", std::to_string(c.round)},
      {"date", timeText(c)},
      {"machine", joined(c.machines)},
      {"device", c.device},
      {"room", c.room},
      {"people", c.inspector + (c.second.empty() ? "" : "; " + c.second)},
      {"inspector", c.inspector},
      {"tested", joined(tested)},
      {"result", std::string(word(c.result))},
      {"run_down_s", joined(runs)},
      {"mean_run_down_s", mean ? audit::decimal(*mean, 3) : ""},
      {"note", c.note},
      {"action", c.action},
      {"removed", c.removed ? "yes" : ""},
      {"no_stop", c.no_stop ? "yes" : ""},
      {"corrects", numberOr(c.corrects.value_or(0))},
      {"revision", revisionText(c.layout.revision)},
      {"layout_sha256", c.layout.sha256}};
  if (c.entered) cells["entered"] = momentText(*c.entered);
  if (c.tagged_out) {
    cells["tagged_out_by"] = c.tagged_out->by;
    if (c.tagged_out->until) cells["tagged_out_until"] = inspection::dateText(*c.tagged_out->until);
  }
  if (c.corrective) {
    cells["corrective"] = c.corrective->what;
    cells["owner"] = c.corrective->owner;
    if (c.corrective->due) cells["due"] = inspection::dateText(*c.corrective->due);
  }
  return cells;
}

// With the machines and people of the check that found it; of one that is missed only who that was.
std::map<std::string, std::string> cellsOf(const inspection::FailedDevice& f,
                                           const inspection::Bundle& bundle) {
  std::map<std::string, std::string> cells = {
      {"kind", "failed"},
      {"number", std::to_string(f.check)},
      {"date", f.on == inspection::kUnreadDay ? inspection::kNoReadableTime : inspection::dateText(f.on)},
      {"device", f.device},
      {"people", f.found_by},
      {"inspector", f.found_by},
      {"note", "since " + inspection::dayText(f.since)}};
  if (const auto check = bundle.failures.find({f.check, f.device}); check != bundle.failures.end()) {
    const auto found = cellsOf(check->second, "failed");
    for (const char* column : {"machine", "room", "people"}) cells[column] = found.at(column);
  }
  return cells;
}

std::string layoutRows(const inspection::Bundle& bundle, const FiledReport& filed) {
  const audit::Report& r = filed.report;
  std::string text = row({{"kind", "layout"},
                          {"note", r.layout_name + " (" + filed.file + ")"},
                          {"revision", revisionText(r.revision)},
                          {"layout_sha256", filed.sha256}});
  text += row({{"kind", "period"},
               {"note", inspection::dateText(bundle.from) + " to " + inspection::dateText(bundle.to)}});
  text +=
      row({{"kind", "audit"},
           {"note", "profile " + r.profile + ", findings: " + std::to_string(r.count(audit::Severity::Fail)) +
                        " fail, " + std::to_string(r.count(audit::Severity::Warn)) + " warn, " +
                        std::to_string(r.count(audit::Severity::Note)) + " note"}});
  if (filed.records)
    text += row({{"kind", "records"},
                 {"number", std::to_string(filed.records->records)},
                 {"note", filed.records->file + ", head " + filed.records->head +
                              (filed.records->fault.empty() ? "" : ". " + filed.records->fault)}});
  return text;
}

}  // namespace

std::string bundleCsv(const inspection::Bundle& bundle, const FiledReport& report) {
  std::string text = csvRow(kColumns) + layoutRows(bundle, report);
  for (const inspection::Round& r : bundle.rounds)
    text += row({{"kind", "round"},
                 {"number", std::to_string(r.number)},
                 {"date", momentText(r.at)},
                 {"people", r.by},
                 {"inspector", r.by},
                 {"note", r.of + ": " + joined(r.devices)},
                 {"revision", revisionText(r.layout.revision)},
                 {"layout_sha256", r.layout.sha256},
                 {"entered", r.entered ? momentText(*r.entered) : ""}});
  for (std::size_t i = 0; i < bundle.checks.size(); ++i) {
    auto cells = cellsOf(bundle.checks[i], "check");
    cells["corrected_by"] = numberOr(bundle.corrected_by[i]);
    if (const auto* pass = findShort(bundle.short_passes, bundle.checks[i]))
      cells["falls_short"] = clauseOf(*pass);
    text += row(cells);
  }
  for (const inspection::FailedDevice& f : bundle.failed) text += row(cellsOf(f, bundle));
  for (const Check& c : bundle.open_actions) text += row(cellsOf(c, "open-action"));
  return text;
}

}  // namespace stopwalk::files
