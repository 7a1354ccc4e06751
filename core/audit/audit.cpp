#include "core/audit/audit.h"

#include <algorithm>
#include <limits>
#include <string>
#include <tuple>
#include <unordered_map>
#include <unordered_set>

#include "core/audit/accepted.h"
#include "core/audit/context.h"

namespace stopwalk::audit {
namespace {

// In the order of the file: rooms, and everything that a finding can be about.
class FileOrder {
 public:
  explicit FileOrder(const layout::Layout& layout) {
    for (const layout::Room& r : layout.rooms) add(r.id);
    for (const layout::Door& d : layout.doors) add(d.id);
    for (const layout::Fixture& f : layout.fixtures) add(f.id);
    for (const layout::Machine& m : layout.machines) {
      add(m.id);
      for (const layout::Station& s : m.stations) add(m.id + "/" + s.id);
      for (const layout::Device& d : m.devices) add(m.id + "/" + d.id);
    }
    for (const layout::Device& d : layout.devices) add(d.id);
    for (const layout::Phone& p : layout.phones) add(p.id);
    for (const layout::TapeCheck& t : layout.tape_checks) add(t.id);
  }
  // What has no place comes last.
  std::size_t of(const std::string& id) const {
    const auto found = place_.find(id);
    return found == place_.end() ? std::numeric_limits<std::size_t>::max() : found->second;
  }

 private:
  void add(std::string id) { place_.emplace(std::move(id), place_.size()); }
  std::unordered_map<std::string, std::size_t> place_;
};

std::vector<Finding> findingsOf(const Context& context, const Profile& profile) {
  std::vector<Finding> findings;
  for (const Rule* rule : rules()) {
    const Setting& setting = profile.of(*rule);
    if (!setting.on) continue;
    for (Finding& f : rule->find(context, setting)) {
      f.rule = rule->id;
      f.severity = setting.severity;
      f.basis = setting.basis;
      findings.push_back(std::move(f));
    }
  }
  // Stable: what is equal stays in the order of the rules, and within a rule as found.
  const FileOrder order(context.layout);
  std::ranges::stable_sort(findings, {}, [&](const Finding& f) {
    return std::tuple(f.severity, order.of(f.room), order.of(f.subject));
  });
  return findings;
}

Nearest nearest(const Way& way) {
  Nearest n;
  n.status = way.status;
  if (!way.found()) return n;
  n.walk_m = way.walk_m;
  if (way.status != Status::AtHand) n.clear_width_m = way.clear_width_m;
  for (const Point& p : way.path) n.path_m.push_back(0.001 * p);
  return n;
}

StationReport stationReport(const Context& c, std::size_t i) {
  const StationEntry& s = c.stations[i];
  StationReport r;
  r.id = s.id;
  r.name = c.name(s);
  r.machine = c.machine(s).id;
  r.role = s.station->role;
  r.room = c.roomId(s.room);
  r.at_m = 0.001 * s.at;
  r.stop = nearest(c.stop_ways[i]);
  if (const auto d = c.stop_ways[i].index) {
    r.stop.device = c.devices[*d].id;
    r.stop.name = c.deviceName(*d, s.machine);
    r.stop.kind = c.devices[*d].kind->key;
    r.stop.run_down_s = c.relation.runDown(*d, s.machine);
    r.stop.seconds = secondsFor(*r.stop.walk_m, r.stop.run_down_s);
  }
  r.phone = nearest(c.phone_ways[i]);
  if (const auto p = c.phone_ways[i].index) {
    r.phone.device = c.layout.phones[*p].id;
    r.phone.name = c.phoneName(*p);
    r.phone.seconds = secondsFor(*r.phone.walk_m);
  }
  return r;
}

void judge(std::vector<StationReport>& stations, const std::vector<Finding>& findings) {
  std::unordered_set<std::string> failing, warning;
  for (const Finding& f : findings) {
    if (f.severity == Severity::Fail) failing.insert(f.subject);
    if (f.severity == Severity::Warn) warning.insert(f.subject);
  }
  for (StationReport& s : stations)
    s.verdict = failing.contains(s.id)   ? Verdict::Fails
                : warning.contains(s.id) ? Verdict::Warns
                                         : Verdict::Meets;
}

Report reportOf(const Context& context) {
  const layout::Layout& layout = context.layout;
  Report report;
  report.layout_name = layout.site.name;
  if (layout.revision) report.revision = layout.revision->number;
  report.profile = context.profile.id;
  report.hours = context.hours;
  report.unit = layout.unit;
  report.machines = layout.machines.size();
  report.devices = context.devices.size();
  for (std::size_t i = 0; i < context.stations.size(); ++i)
    report.stations.push_back(stationReport(context, i));
  report.findings = findingsOf(context, context.profile);
  judge(report.stations, report.findings);
  markAccepted(report.findings, layout.accepted_findings);
  return report;
}

}  // namespace

Report audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
             floor::Hours hours, Failed failed) {
  return reportOf(Context(layout, kinds, profile, hours, failed));
}

Auditor::Auditor() : last_(std::make_unique<LastWalks>()) {}
Auditor::~Auditor() = default;

Report Auditor::audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
                      floor::Hours hours, Failed failed) {
  return reportOf(Context(layout, kinds, profile, hours, failed, last_.get()));
}

std::size_t Auditor::walksKept() const {
  return last_->count().kept;
}

std::size_t Auditor::walksFound() const {
  return last_->count().found;
}

std::size_t Report::count(Severity severity) const {
  return static_cast<std::size_t>(std::ranges::count(findings, severity, &Finding::severity));
}

}  // namespace stopwalk::audit
