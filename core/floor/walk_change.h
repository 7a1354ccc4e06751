#pragma once

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/floor/door_bounds.h"
#include "core/floor/plan_change.h"
#include "core/floor/walks.h"

namespace stopwalk::floor {

// What rounding, and the chords of a drawn arc, may take from a length or distance.
inline constexpr double kLengthMargin_mm = 1;
// Where an end of a walk steps out to is a matter of what stands so near.
inline constexpr double kRoundEnds_mm = 2000;

// One change of a floor, and which walks it cannot have changed: docs/walks.md tells why.
class WalkChange {
 public:
  WalkChange(PlanChange change, const Plan& before, const Plan& now, double clearance,
             std::shared_ptr<const DoorBounds> doors);

  const PlanChange& change() const { return change_; }
  // Whether nothing is joined that was parted, nor parted that was joined. Else nothing holds.
  bool partsStay() const { return parts_stay_; }
  // The same at another clearance.
  bool partsStay(double clearance) const;
  // The same at each clearance below, at which ways may have been sought.
  bool narrowPartsStay() const;
  // Lines elsewhere that it cuts, or no longer cuts: they lie a little otherwise.
  const std::vector<Segment>& touched() const { return touched_; }
  // Whether the steps of a place may be otherwise, for what stands near it or for a line that is touched.
  bool isNear(const geometry::Box& place) const;
  // Whether it takes no step, before or after.
  bool takesNoStep(const Segment& place) const;
  bool leavesSteps(const Segment& place) const {
    return !isNear(geometry::boxOf(place)) || takesNoStep(place);
  }
  // Whether the point may have come to be on the floor, or off it.
  bool isAt(Point p) const;
  // Whether the walk is still the nearest: from a point to the nearest of some ends, none longer than `reach`
  // being of any matter.
  bool leaves(const Walk& walk, double reach, Point from, std::span<const DoorBounds::End> ends) const;

 private:
  // Whether every way by one of what is gone is longer.
  bool isLongerBy(std::size_t gone, double reach, const DoorBounds::End& from,
                  const DoorBounds::End& to) const;

  PlanChange change_;
  double clearance_;
  std::shared_ptr<const DoorBounds> doors_;
  PartsRound parts_;
  std::vector<Segment> touched_;
  bool parts_stay_ = false;
  mutable std::optional<bool> narrow_parts_stay_;
  mutable std::map<double, bool> parts_stay_at_;
  std::vector<DoorBounds::End> gone_ends_;  // grown by the clearance
  std::vector<Segment> lines_;              // all that stands about the change, before and after
};

}  // namespace stopwalk::floor
