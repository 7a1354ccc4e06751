#pragma once

#include <QPainter>
#include <QString>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/plan/check_legend.h"
#include "app/plan/items/item.h"
#include "app/plan/picture.h"

namespace stopwalk::plan {

// What the inspection records say of each device, and the walk past those of a round, as values.
struct InspectedOnPlan {
  struct Device {
    CheckMark mark;
    QString text;  // how long ago it was checked, or its place in the round
    QString told;  // all of it in a sentence
    bool operator==(const Device&) const = default;
  };
  QString title;                          // what the signs are of, if it is not the last checks
  std::map<std::string, Device> devices;  // by id
  struct Leg {
    std::vector<geometry::Point> path;  // mm
    bool is_next = false;               // to the device that is to be checked
    bool operator==(const Leg&) const = default;
  };
  std::vector<Leg> walk;  // in order
  bool operator==(const InspectedOnPlan&) const = default;
};

// That on the plan: the sign of its last check at each device, with a ring of how much of its time has gone,
// its text beside it, a legend, and the walk dashed.
class InspectionLayer {
 public:
  explicit InspectionLayer(InspectedOnPlan inspected);

  const InspectedOnPlan& inspected() const { return inspected_; }
  const std::map<std::string, CheckMark>& marks() const { return marks_; }
  bool isFailed(const std::string& id) const;
  QString told(const std::string& id) const;  // empty: nothing
  std::vector<Label> labels(const Picture& picture, const ViewTransform& view) const;
  const CheckLegend& legend() const { return legend_; }
  // Where it hides the fewest marks; empty: there is nothing to explain.
  QRectF legendBox(const Picture& picture, const ViewTransform& view, const QRectF& visible) const;
  void paintWalk(QPainter& painter, const ViewTransform& view, const Theme& theme) const;

 private:
  InspectedOnPlan inspected_;
  std::map<std::string, CheckMark> marks_;
  CheckLegend legend_;
};

}  // namespace stopwalk::plan
