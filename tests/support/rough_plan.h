#pragma once

#include <random>

#include "core/floor/plan.h"

namespace stopwalk::support {

// Uniform numbers that are the same on every machine.
class Numbers {
 public:
  explicit Numbers(unsigned seed) : engine_(seed) {}
  double in(double low, double high) { return low + (high - low) * static_cast<double>(engine_()) / 4294967295.0; }
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }

 private:
  std::mt19937 engine_;
};

geometry::Polygon turnedBox(geometry::Point at, double width, double depth, double deg);

// One room, rectangular or L-shaped, within 8 by 7 m, with up to `most` solids thrown in: apart, touching, overlapping or
// through the walls; half of the plans on a 250 mm raster, so that edges are flush and collinear.
floor::Plan roughPlan(Numbers& numbers, int most);

// The plan turned by `deg` about the origin, then moved.
floor::Plan movedPlan(const floor::Plan& plan, double deg, geometry::Point by);
geometry::Point movedPoint(geometry::Point p, double deg, geometry::Point by);

}  // namespace stopwalk::support
