#pragma once

#include <span>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/box.h"

namespace stopwalk::floor {

// A plan most of whose solids are left out, and put back where a walk turns out to come near them.
class Thinned {
 public:
  Thinned(Plan plan, double clearance);

  // With those that have been put back.
  const Plan& plan() const { return plan_; }
  // Those that have a say in the steps of a place.
  void putBackAt(const geometry::Box& place);
  // Those that stand by a way.
  void putBackAlong(std::span<const Point> path);
  // Whether the path keeps clear of all that is left out.
  bool keepsClear(std::span<const Point> path) const;

 private:
  struct Left {
    Solid solid;
    geometry::Box box;
  };
  template <class Wanted>
  void putBack(Wanted wanted);

  Plan plan_;
  std::vector<Left> left_;
  double clearance_;
};

// Whether the polyline keeps the distance from the outline's edges.
bool keepsFrom(std::span<const Point> path, const Polygon& outline, double least);

}  // namespace stopwalk::floor
