#pragma once

#include <memory>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/box.h"

namespace stopwalk::floor {

// What of a floor's solids is new, and what is gone. Of a floor whose rooms, walls or passages differ,
// nothing is said.
struct PlanChange {
  bool comparable = true;  // only solids differ, and coordinates are counted from the same origin
  std::vector<Polygon> gone, come;

  bool none() const { return gone.empty() && come.empty(); }
  // From a box to that of what changed.
  double away(const geometry::Box& box) const;
};

PlanChange changeBetween(const Plan& before, const Plan& now);

// Whether what changed parts nothing that was joined at a clearance, and joins nothing that was parted: all
// of the region's boundary round what is gone is of one connected part before, and all of it round what has
// come is now. Looked at near the change only; what is not found there is not so. At clearances of nearly a
// metre and more nothing is told.
class PartsRound {
 public:
  PartsRound(const Plan& before, const Plan& now, const PlanChange& change);
  ~PartsRound();
  bool stay(double clearance) const;

 private:
  struct Near;
  bool tells_ = true;
  std::unique_ptr<Near> gone_, come_;
};

}  // namespace stopwalk::floor
