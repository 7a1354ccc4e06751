#pragma once

#include <QCoreApplication>
#include <QPainter>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "app/edits/selection.h"
#include "app/plan/changes.h"
#include "app/plan/items/item.h"
#include "app/plan/picture.h"
#include "app/plan/routes.h"
#include "core/audit/report.h"
#include "core/floor/narrow_place.h"

namespace stopwalk::plan {

// What an audit says, on the plan: how each station stands, the walks of what is picked, what a drag or a
// supposition changes, and what cannot be built as it is drawn.
class AuditMarks {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::plan::AuditMarks)

 public:
  // Of `layout` as it is supposed to be; `is_current`: not of an earlier one. While something is previewed
  // the last report of the layout as it is stays the measure of what changes; else `as_it_is`, if there is
  // one. What a drag changed a moment ago is kept until more is known.
  struct Audited {
    std::shared_ptr<const audit::Report> report;
    bool is_current = false;
    bool is_preview = false;
    std::shared_ptr<const audit::Report> as_it_is = nullptr;
    std::shared_ptr<const floor::NarrowPlaces> narrow_places = nullptr;  // of the report's layout
    bool is_held = false;  // what stands in the way by supposition is being dragged
  };
  // `layout` for what things are called.
  void set(Audited audited, const layout::Layout& layout = {});

  const audit::Report* report() const { return report_.get(); }
  const std::map<std::string, StationState>& states() const { return states_; }
  // The changes, a line for each station, gravest first, and how many more there are than `most`; the first
  // says so if they are of an earlier moment.
  QString tellsOfChanges(std::size_t most = kMostTold) const;
  static constexpr std::size_t kMostTold = 5;
  bool isCurrent() const { return is_current_; }
  // The finding that somebody looks at, in this report and in others to come; none: nullptr.
  void lookAt(const audit::Finding* finding);

  // With what a station, or those of a machine, walk to their stops (the phone may be far off), and with all
  // that the finding about it that is looked at has measured.
  geometry::Box withWalksOf(const std::string& id, geometry::Box box) const;

  void paintFaults(QPainter& painter, const ViewTransform& view, const Theme& theme,
                   const Picture& picture) const;
  // The walks of what is picked, of the first kMostWalked stations, and what the finding looked at measured,
  // as long as they are those of the layout shown; where they are narrow only where that is given.
  RoutesOnPlan routes(const ViewTransform& view, const edits::Selection& selection) const;
  static constexpr std::size_t kMostWalked = 60;
  // Of so many stations that are picked the walks are not drawn.
  std::size_t walksLeftOut(const edits::Selection& selection) const;
  void paintChanges(QPainter& painter, const ViewTransform& view, const Theme& theme,
                    const layout::Layout& layout) const;

 private:
  void compare(const std::shared_ptr<const audit::Report>& as_it_is, const layout::Layout& layout);
  void findChanges(const audit::Report& before, const layout::Layout& layout);
  void noteStates();
  void findLookedAt();
  std::vector<MeasuredOnPlan> measured() const;
  std::vector<const audit::StationReport*> picked(const edits::Selection& selection) const;
  std::optional<geometry::Segment> narrowOf(const std::vector<geometry::Point>& path_m) const;

  std::shared_ptr<const audit::Report> report_;
  bool is_current_ = false;
  bool is_preview_ = false;
  bool is_held_ = false;
  std::shared_ptr<const audit::Report> settled_;  // of the layout as it is, while something else is previewed
  std::vector<StationChange> changes_;            // from there to what is previewed
  std::map<std::string, StationState> states_;
  std::vector<std::map<std::string, StationState>::iterator> in_order_;  // of the report's stations
  std::set<std::string> faulty_;                                         // ids
  // What is looked at, and the same in this report; none: there is none like it.
  struct LookedAt {
    std::string rule, subject, which;
  };
  std::optional<LookedAt> looked_at_;
  const audit::Finding* finding_ = nullptr;

  std::shared_ptr<const floor::NarrowPlaces> narrow_places_;
  // Of the report's walks; found when they are painted.
  mutable std::map<const std::vector<geometry::Point>*, std::optional<geometry::Segment>> narrow_;
};

}  // namespace stopwalk::plan
