#include "app/plan/audit_marks.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>

#include "app/edits/things.h"
#include "app/plan/day.h"
#include "app/plan/guides.h"
#include "app/plan/new_findings.h"
#include "app/plan/station_states.h"
#include "app/plan/turn_marks.h"
#include "app/plan/turn_sign.h"
#include "core/audit/rule.h"

namespace stopwalk::plan {
namespace {

constexpr const char* kDrawingFault = "drawing-fault";  // the rule that the drawing itself is at fault

}  // namespace

void AuditMarks::set(Audited audited, const layout::Layout& layout) {
  const bool same = audited.report == report_ && audited.is_preview == is_preview_ &&
                    (audited.is_preview || audited.is_held);
  report_ = std::move(audited.report);
  is_current_ = audited.is_current;
  is_preview_ = audited.is_preview;
  is_held_ = audited.is_held;
  if (!same) compare(audited.as_it_is, layout);
  findLookedAt();
  narrow_places_ = is_current_ ? std::move(audited.narrow_places) : nullptr;
  noteStates();
}

// Stations come and go seldom, so that most often only how they stand is noted.
void AuditMarks::noteStates() {
  static const audit::SharedList<audit::StationReport> kNone;
  const auto& stations = report_ ? report_->stations : kNone;
  const auto isAt = [](const auto& place, const audit::StationReport& s) { return place->first == s.id; };
  if (!std::ranges::equal(in_order_, stations, isAt)) {
    states_.clear();
    in_order_.clear();
    for (const audit::StationReport& s : stations) in_order_.push_back(states_.try_emplace(s.id).first);
  }
  std::vector<StationState> states(stations.size(), StationState::BeingComputed);
  if (report_ && is_current_) states = statesOf(*report_, dateOf(QDate::currentDate()));
  for (std::size_t i = 0; i < states.size(); ++i) in_order_[i]->second = states[i];
}

// Everything but the states follows from the report alone.
void AuditMarks::compare(const std::shared_ptr<const audit::Report>& as_it_is, const layout::Layout& layout) {
  changes_.clear();
  faulty_.clear();
  narrow_.clear();
  // One of an earlier layout is no measure of what a drag changes.
  if (!is_preview_) settled_ = is_current_ ? report_ : nullptr;
  if (!report_) return;
  const auto& before = is_preview_ ? settled_ : as_it_is;
  if ((is_current_ || is_preview_ || is_held_) && before && before != report_) findChanges(*before, layout);
  for (const auto& finding : report_->findings)
    if (finding.rule == kDrawingFault) faulty_.insert(finding.subject);
}

// Of stations, and of other things that break a rule they kept, such as a device that nobody can walk to.
void AuditMarks::findChanges(const audit::Report& before, const layout::Layout& layout) {
  changes_ = changesBetween(before, *report_);
  for (StationChange& change : NewFindings(before, *report_).changesOfThings(*report_)) {
    const auto thing = edits::findThing(layout, change.station);
    const std::string name = thing ? edits::nameOf(layout, *thing) : change.station;
    if (!name.empty()) change.text = QString::fromStdString(name) + ": " + change.text;
    changes_.push_back(std::move(change));
  }
  sortGravestFirst(changes_);
}

QString AuditMarks::tellsOfChanges(std::size_t most) const {
  QStringList told;
  if (!changes_.empty() && !is_current_) told << tr("A moment ago:");
  for (std::size_t i = 0; i < std::min(changes_.size(), most); ++i)
    told << signOf(changes_[i].turn) + changes_[i].text;
  if (changes_.size() > most) told << tr("and %1 more").arg(changes_.size() - most);
  return told.join("\n");
}

void AuditMarks::lookAt(const audit::Finding* finding) {
  looked_at_.reset();
  if (finding) looked_at_ = {finding->rule, finding->subject, finding->which};
  findLookedAt();
}

// Of a rule that finds one thing about a subject it is the same finding also where another stop is the
// nearest.
void AuditMarks::findLookedAt() {
  finding_ = nullptr;
  if (!report_ || !looked_at_) return;
  const audit::Rule* rule = audit::findRule(looked_at_->rule);
  const auto isIt = [&](const audit::Finding& f) {
    return f.rule == looked_at_->rule && f.subject == looked_at_->subject &&
           (f.which == looked_at_->which || (rule && !rule->several));
  };
  const auto found = std::ranges::find_if(report_->findings, isIt);
  if (found != report_->findings.end()) finding_ = &*found;
}

geometry::Box AuditMarks::withWalksOf(const std::string& id, geometry::Box box) const {
  if (!report_) return box;
  for (const auto& station : report_->stations)
    if (station.id == id || station.machine == id)
      for (const geometry::Point p : station.stop.path_m) box.add(1000 * p);
  if (finding_ && finding_->subject == id)
    for (const audit::MeasuredLine& line : finding_->lines)
      for (const geometry::Point p : line.line_m) box.add(1000 * p);
  return box;
}

void AuditMarks::paintFaults(QPainter& painter, const ViewTransform& view, const Theme& theme,
                             const Picture& picture) const {
  for (const std::string& id : faulty_)
    if (const Item* item = picture.find(id); item && !item->bounds().empty())
      paintFaultMark(painter, theme, view.toPixels(item->bounds()).adjusted(-6, -6, 6, 6), is_current_);
}

std::optional<geometry::Segment> AuditMarks::narrowOf(const std::vector<geometry::Point>& path_m) const {
  if (!narrow_places_) return std::nullopt;
  auto known = narrow_.find(&path_m);
  if (known == narrow_.end()) {
    std::vector<geometry::Point> path;
    for (const geometry::Point p : path_m) path.push_back(1000 * p);
    known = narrow_.emplace(&path_m, narrow_places_->along(path)).first;
  }
  return known->second;
}

std::vector<MeasuredOnPlan> AuditMarks::measured() const {
  std::vector<MeasuredOnPlan> measured;
  if (!finding_) return measured;
  const auto limit = finding_->unit == "m" ? finding_->limit : std::nullopt;
  for (const audit::MeasuredLine& line : finding_->lines) {
    const bool is_walk = line.kind == audit::MeasuredLine::Kind::Route;
    measured.push_back({&line, is_walk ? narrowOf(line.line_m) : std::nullopt, limit});
  }
  return measured;
}

RoutesOnPlan AuditMarks::routes(const ViewTransform& view, const edits::Selection& selection) const {
  if (!report_ || !is_current_) return {};
  std::vector<Route> routes;
  for (const audit::StationReport* station : picked(selection)) {
    if (routes.size() >= 2 * kMostWalked) break;
    routes.push_back({&station->phone, RouteTo::Phone, narrowOf(station->phone.path_m)});
    routes.push_back({&station->stop, RouteTo::Stop, narrowOf(station->stop.path_m)});
  }
  return {view, routes, measured(), report_->unit};
}

std::size_t AuditMarks::walksLeftOut(const edits::Selection& selection) const {
  if (!report_ || !is_current_ || selection.ids().size() <= 1) return 0;
  return std::max(picked(selection).size(), kMostWalked) - kMostWalked;
}

// Itself, or with its machine.
std::vector<const audit::StationReport*> AuditMarks::picked(const edits::Selection& selection) const {
  std::vector<const audit::StationReport*> picked;
  if (selection.empty()) return picked;
  for (const auto& station : report_->stations)
    if (selection.contains(station.id) || selection.contains(station.machine)) picked.push_back(&station);
  return picked;
}

void AuditMarks::paintChanges(QPainter& painter, const ViewTransform& view, const Theme& theme,
                              const layout::Layout& layout) const {
  if (changes_.empty()) return;
  // Once through the layout for all that changes.
  std::unordered_map<std::string_view, std::optional<edits::Thing>> things;
  for (const StationChange& change : changes_) things.try_emplace(change.station);
  for (const edits::Thing& thing : edits::allThings(layout))
    if (const auto changed = things.find(edits::idOf(layout, thing)); changed != things.end())
      changed->second = thing;
  std::vector<std::pair<QPointF, Turn>> changes;
  for (const StationChange& change : changes_)
    if (const auto& thing = things.at(change.station))
      if (const auto at = edits::placeOf(layout, *thing))
        changes.emplace_back(view.toPixels(*at), change.turn);
  paintTurns(painter, theme, turnMarks(changes), is_current_);
}

}  // namespace stopwalk::plan
