#include "core/audit/judged.h"

#include <algorithm>
#include <iterator>
#include <limits>

#include "core/audit/accepted.h"

namespace stopwalk::audit {
namespace {

constexpr std::array kEach{Each::Station, Each::Machine, Each::Device,   Each::Phone,
                           Each::Room,    Each::Layout,  Each::TapeCheck};

std::size_t kindOf(Each each) {
  return static_cast<std::size_t>(each);
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

}  // namespace

Judged::Judged(const Context& context, const Wanted& wanted) : context_(context) {
  const layout::Layout& layout = context.layout;
  orderIds();
  report_.layout_name = layout.site.name;
  if (layout.revision) report_.revision = layout.revision->number;
  report_.profile = context.profile.called();
  report_.hours = context.hours;
  report_.unit = layout.unit;
  report_.machines = layout.machines.size();
  report_.devices = context.devices.size();
  std::vector<Placed> fresh;
  for (const Each each : kEach) {
    subjects_[kindOf(each)].resize(countOf(each));
    for (std::size_t i = 0; i < countOf(each); ++i) {
      goOnIf(wanted);
      judge(each, i, fresh);
    }
  }
  replace({}, std::move(fresh));
  report_.stations.reserve(context.stations.size());
  for (std::size_t s = 0; s < context.stations.size(); ++s) {
    report_.stations.push_back(stationReport(s));
    station_of_id_.emplace(context.stations[s].id, s);
  }
}

std::size_t Judged::countOf(Each each) const {
  const Context& c = context_;
  switch (each) {
    case Each::Station:
      return c.stations.size();
    case Each::Machine:
      return c.layout.machines.size();
    case Each::Device:
      return c.devices.size();
    case Each::Phone:
      return c.phones.size();
    case Each::Room:
      return c.layout.rooms.size();
    case Each::TapeCheck:
      return c.layout.tape_checks.size();
    case Each::Layout:
      return 1;
  }
  return 0;
}

// What a rule may look at of its subject without asking.
void Judged::noteOwn(Each each, std::size_t index) {
  const Context& c = context_;
  Trace& trace = subjects_[kindOf(each)][index].trace;
  const auto addMachine = [&](std::size_t m) {
    trace.add(geometry::boxOf(c.layout.machines[m].at));
    for (auto [s, end] = c.stationsOf(m); s < end; ++s) trace.add(geometry::boxOf(c.stations[s].at));
    c.candidates(m);
  };
  if (each == Each::Station) {
    trace.add(geometry::boxOf(c.stations[index].at));
    c.candidates(c.stations[index].machine);
  } else if (each == Each::Machine) {
    addMachine(index);
  } else if (each == Each::Device) {
    trace.add(boxOf(c.placed[index].placed));
  } else if (each == Each::Phone) {
    trace.add(boxOf(c.phones[index].placed));
  } else if (each == Each::Room) {
    c.cutOffs(index);
  } else {
    trace.all = true;
  }
}

void Judged::judge(Each each, std::size_t index, std::vector<Placed>& fresh) {
  Subject& subject = subjects_[kindOf(each)][index];
  subject.trace = {};
  context_.traceIn(&subject.trace);
  noteOwn(each, index);
  for (std::size_t r = 0; r < rules().size(); ++r) {
    const Rule& rule = *rules()[r];
    const Setting& setting = context_.profile.of(rule);
    if (!setting.on) continue;
    for (std::size_t s = 0; s < rule.find.size(); ++s) {
      if (rule.find[s].each != each) continue;
      std::size_t number = 0;
      std::vector<Finding> found = rule.find[s].find(context_, setting, index);
      for (Finding& f : found) {
        f.rule = rule.id;
        f.severity = setting.severity;
        f.basis = setting.basis;
        fresh.push_back(
            {{f.severity, orderOf(f.room), orderOf(f.subject), r, s, index, number++}, std::move(f)});
      }
    }
  }
  context_.traceIn(nullptr);
}

// In the order of the file: rooms, and everything that a finding can be about.
void Judged::orderIds() {
  const layout::Layout& layout = context_.layout;
  const auto add = [&](std::string id) { order_.emplace(std::move(id), order_.size()); };
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
std::size_t Judged::orderOf(const std::string& id) const {
  const auto found = order_.find(id);
  return found == order_.end() ? std::numeric_limits<std::size_t>::max() : found->second;
}

StationReport Judged::stationReport(std::size_t i) const {
  const Context& c = context_;
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
  // Of a hand-held machine only whoever holds it needs a stop.
  const bool needs_none =
      r.stop.status == Status::None && c.machine(s).hand_held && r.role != layout::Role::Operator;
  r.lacks_stop = !c.stop_ways[i].found() && !needs_none;
  r.lacks_phone = !c.phone_ways[i].found();
  r.verdict = verdictOf(r);
  return r;
}

void Judged::count(const Finding& finding, int by) {
  if (finding.severity == Severity::Note) return;
  Counts& counts = counts_[finding.subject];
  std::size_t& n = finding.severity == Severity::Fail ? counts.fails : counts.warns;
  n = by > 0 ? n + 1 : n - 1;
}

// What lacks a way meets nothing, whichever rules are off.
Verdict Judged::verdictOf(const StationReport& station) const {
  const auto found = counts_.find(station.id);
  const Counts counts = found == counts_.end() ? Counts{} : found->second;
  if (counts.fails > 0) return Verdict::Fails;
  const bool lacks_a_way = station.lacks_stop || station.lacks_phone;
  return counts.warns > 0 || lacks_a_way ? Verdict::Warns : Verdict::Meets;
}

// Takes out the findings of what was judged again, and puts the fresh ones in their places.
void Judged::replace(const std::array<std::vector<char>, kEachKinds>& judged, std::vector<Placed> fresh) {
  std::ranges::sort(fresh, {}, &Placed::place);
  SharedList<Finding> findings;
  std::vector<std::pair<Place, Each>> places;
  findings.reserve(report_.findings.size() + fresh.size());
  places.reserve(report_.findings.size() + fresh.size());
  auto next = fresh.begin();
  const auto add = [&](Placed& placed) {
    count(placed.finding, +1);
    const Each each = rules()[placed.place.rule]->find[placed.place.search].each;
    places.emplace_back(placed.place, each);
    findings.push_back(std::move(placed.finding));
  };
  for (std::size_t i = 0; i < places_.size(); ++i) {
    const auto& [place, each] = places_[i];
    const std::vector<char>& out = judged[kindOf(each)];
    if (!out.empty() && out[place.of]) {
      count(report_.findings[i], -1);
      continue;
    }
    for (; next != fresh.end() && next->place < place; ++next) add(*next);
    places.emplace_back(place, each);
    findings.push_back(report_.findings.entry(i));
  }
  for (; next != fresh.end(); ++next) add(*next);
  report_.findings = std::move(findings);
  markAccepted(report_.findings, context_.layout.accepted_findings);
  places_ = std::move(places);
}

void Judged::again(const Changed& changed) {
  std::array<std::vector<char>, kEachKinds> judged;
  std::vector<Placed> fresh;
  for (const Each each : kEach) {
    std::vector<char>& these = judged[kindOf(each)];
    these.resize(countOf(each));
    for (std::size_t i = 0; i < these.size(); ++i)
      these[i] = subjects_[kindOf(each)][i].trace.meets(changed.places);
  }
  for (const std::size_t s : changed.stations) judged[kindOf(Each::Station)][s] = 1;
  for (const Each each : kEach)
    for (std::size_t i = 0; i < judged[kindOf(each)].size(); ++i)
      if (judged[kindOf(each)][i]) judge(each, i, fresh);
  std::vector<std::string> subjects;  // of findings that may be no more, or are new
  for (std::size_t i = 0; i < places_.size(); ++i)
    if (judged[kindOf(places_[i].second)][places_[i].first.of])
      subjects.push_back(report_.findings[i].subject);
  for (const Placed& p : fresh) subjects.push_back(p.finding.subject);
  replace(judged, std::move(fresh));  // verdicts hang on it
  const std::vector<char>& stations = judged[kindOf(Each::Station)];
  for (std::size_t s = 0; s < stations.size(); ++s)
    if (stations[s]) report_.stations.replace(s, stationReport(s));
  // Of the others the verdict may hang on findings of other things with their id.
  for (const std::string& id : subjects)
    for (auto [it, end] = station_of_id_.equal_range(id); it != end; ++it) {
      const std::size_t s = it->second;
      if (stations[s]) continue;
      const Verdict verdict = verdictOf(report_.stations[s]);
      if (report_.stations[s].verdict != verdict) report_.stations.own(s).verdict = verdict;
    }
}

}  // namespace stopwalk::audit
