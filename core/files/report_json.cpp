#include "core/files/report_json.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/audit/accepted.h"
#include "core/audit/walk_status.h"
#include "core/audit/wording.h"
#include "core/files/printable.h"
#include "core/files/version.h"

namespace stopwalk::files {
namespace {

using Json = nlohmann::ordered_json;
using audit::word;

// Enough digits for a millionth of a millimetre and none of the noise beyond.
double rounded(double value) {
  constexpr double kScale = 1e9;
  const double scaled = value * kScale;
  return std::abs(scaled) < 1e15 ? std::round(scaled) / kScale + 0.0 : value;
}

Json number(const std::optional<double>& value) {
  return value && std::isfinite(*value) ? Json(rounded(*value)) : Json(nullptr);
}
Json named(const std::string& id) {
  return id.empty() ? Json(nullptr) : Json(id);
}
Json point(geometry::Point p) {
  return Json::array({rounded(p.x), rounded(p.y)});
}

Json path(const std::vector<geometry::Point>& points) {
  Json list = Json::array();
  for (const geometry::Point& p : points) list.push_back(point(p));
  return list;
}

std::string text(const Json& json) {
  return printableJson(json.dump(-1, ' ', false, Json::error_handler_t::replace));
}

Json stopOf(const audit::Nearest& n) {
  return {{"device", named(n.device)},
          {"kind", named(n.kind)},
          {"status", word(n.status)},
          {"walk_m", number(n.walk_m)},
          {"clear_width_m", number(n.clear_width_m)},
          {"run_down_s", number(n.run_down_s)},
          {"seconds", number(n.seconds)},
          {"path_m", path(n.path_m)}};
}

Json phoneOf(const audit::Nearest& n) {
  return {{"device", named(n.device)},    {"status", word(n.status)},
          {"walk_m", number(n.walk_m)},   {"clear_width_m", number(n.clear_width_m)},
          {"seconds", number(n.seconds)}, {"path_m", path(n.path_m)}};
}

Json stationOf(const audit::StationReport& s, bool accepted) {
  return {{"id", s.id},
          {"machine", s.machine},
          {"role", word(s.role)},
          {"room", named(s.room)},
          {"at_m", point(s.at_m)},
          {"stop", stopOf(s.stop)},
          {"phone", phoneOf(s.phone)},
          {"verdict", word(s.verdict)},
          {"accepted", accepted}};
}

// What lets a finding stand is told from what did so once, or may.
void addAcceptance(Json& json, const audit::Finding& f, inspection::Date today, layout::LengthUnit unit) {
  const auto add = [&](const char* key, const audit::Acceptance& a) -> Json& {
    Json& added = json[key] = {{"reason", a.reason}, {"by", a.by}, {"until", a.until}};
    if (a.measured) added["measured"] = number(a.measured);
    return added;
  };
  const audit::AcceptedState state = audit::acceptedState(f, today);
  if (state == audit::AcceptedState::Yes)
    add("accepted", *f.accepted);
  else if (state == audit::AcceptedState::Unclear)
    add("unclear_acceptance", *f.unclear);
  else if (state != audit::AcceptedState::No)
    add("no_longer_accepted", *f.accepted)["why"] = audit::whyNoLonger(f, today, unit);
}

Json findingOf(const audit::Finding& f, inspection::Date today, layout::LengthUnit unit) {
  Json json = {{"rule", f.rule},
               {"severity", word(f.severity)},
               {"subject", f.subject},
               {"which", named(f.which)},
               {"room", named(f.room)},
               {"measured", number(f.measured)},
               {"limit", number(f.limit)},
               {"unit", f.unit},
               {"text", f.text},
               {"basis", {{"kind", word(f.basis.kind)}, {"reference", f.basis.reference}}}};
  addAcceptance(json, f, today, unit);
  return json;
}

template <class Things, class Write>
std::string lines(const Things& things, Write write) {
  std::string all;
  for (const auto& thing : things) all += (all.empty() ? "\n    " : ",\n    ") + text(write(thing));
  return "[" + all + (all.empty() ? "]" : "\n  ]");
}

}  // namespace

RecordsUsed recordsUsed(const std::string& file, const InspectionLog& log,
                        std::span<const inspection::FailedDevice> failed,
                        std::span<const inspection::FailedDevice> gone) {
  RecordsUsed used{file, log.lines, log.head(), {}, {}, isEmpty(log) ? kEmptyLog : faultText(log)};
  for (const inspection::FailedDevice& f : failed) used.failed.push_back(f.device);
  for (const inspection::FailedDevice& f : gone) used.gone.push_back(f.device);
  return used;
}

std::string reportJson(const FiledReport& filed, inspection::Date today) {
  const audit::Report& r = filed.report;
  const std::vector<bool> accepted = audit::acceptedStations(r, today);
  std::size_t next = 0;
  const auto station = [&](const audit::StationReport& s) { return stationOf(s, accepted[next++]); };
  const auto finding = [&](const audit::Finding& f) { return findingOf(f, today, r.unit); };
  const Json program = {{"version", kVersion}, {"report", 1}};
  const Json layout = {{"file", filed.file},
                       {"name", r.layout_name},
                       {"revision", r.revision ? Json(*r.revision) : Json(nullptr)},
                       {"sha256", filed.sha256}};
  Json profile = {{"id", r.profile},
                  {"rules_off", filed.rules_off},
                  {"hours", word(r.hours)},
                  {"clearance_m", floor::kMeasuringClearance_mm / 1000},
                  {"body_half_width_m", floor::kBodyHalfWidth_mm / 1000}};
  if (!filed.limits.empty()) profile["limits"] = filed.limits;
  const std::string records = filed.records
                                  ? ",\n  \"records\": " + text({{"file", filed.records->file},
                                                                 {"records", filed.records->records},
                                                                 {"head", filed.records->head},
                                                                 {"failed", filed.records->failed},
                                                                 {"gone", filed.records->gone},
                                                                 {"fault", filed.records->fault}})
                                  : std::string();
  Json idle = Json::array();
  for (const layout::AcceptedFinding& a : filed.idle)
    idle.push_back({{"rule", a.rule}, {"subject", a.subject}, {"which", named(a.which)}});
  const std::string accepted_not_found =
      filed.idle.empty() ? std::string() : ",\n  \"accepted_not_found\": " + text(idle);
  const Json summary = {{"machines", r.machines},
                        {"stations", r.stations.size()},
                        {"devices", r.devices},
                        {"fail", r.count(audit::Severity::Fail)},
                        {"warn", r.count(audit::Severity::Warn)},
                        {"note", r.count(audit::Severity::Note)}};
  return "{\n  \"stopwalk\": " + text(program) + ",\n  \"layout\": " + text(layout) + records +
         ",\n  \"profile\": " + text(profile) + ",\n  \"stations\": " + lines(r.stations, station) +
         ",\n  \"findings\": " + lines(r.findings, finding) + accepted_not_found +
         ",\n  \"summary\": " + text(summary) + "\n}";
}

std::string walkJson(const std::string& from, const std::string& to, const floor::Walk& walk) {
  std::vector<geometry::Point> path_m;
  if (walk.found())
    for (const geometry::Point& p : walk.path) path_m.push_back(0.001 * p);
  const std::optional<double> none;
  const Json json = {{"from", from},
                     {"to", to},
                     {"status", word(audit::statusOf(walk.status))},
                     {"walk_m", number(walk.found() ? walk.length_mm / 1000 : none)},
                     {"clear_width_m", number(walk.found() ? 2 * walk.clearance_mm / 1000 : none)},
                     {"path_m", path(path_m)}};
  return text(json) + "\n";
}

}  // namespace stopwalk::files
