#pragma once

#include <QPainter>
#include <QString>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/plan/items/item.h"
#include "app/plan/picture.h"

namespace stopwalk::plan {

// What the inspection records say of each device, and the walk past those of a round, as values.
struct InspectedOnPlan {
  struct Device {
    StationState state = StationState::NotAudited;
    QString text;  // how long ago it was checked, or its place in the round
    bool operator==(const Device&) const = default;
  };
  std::map<std::string, Device> devices;  // by id
  struct Leg {
    std::vector<geometry::Point> path;  // mm
    bool is_next = false;               // to the device that is to be checked
    bool operator==(const Leg&) const = default;
  };
  std::vector<Leg> walk;  // in order
  bool operator==(const InspectedOnPlan&) const = default;
};

// That on the plan: a tick, a triangle or a cross at each device, its text beside it, the walk dashed.
class InspectionLayer {
 public:
  explicit InspectionLayer(InspectedOnPlan inspected);

  const InspectedOnPlan& inspected() const { return inspected_; }
  const std::map<std::string, StationState>& states() const { return states_; }
  std::vector<Label> labels(const Picture& picture, const ViewTransform& view) const;
  void paintWalk(QPainter& painter, const ViewTransform& view, const Theme& theme) const;

 private:
  InspectedOnPlan inspected_;
  std::map<std::string, StationState> states_;
};

}  // namespace stopwalk::plan
