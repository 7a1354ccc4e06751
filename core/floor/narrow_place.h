#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/floor/floor_index.h"
#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "core/geometry/box_tree.h"

namespace stopwalk::floor {

// Derived from the house's body width: where it is narrower, two people cannot pass each other.
inline constexpr double kTwoBodies_mm = 4 * kBodyHalfWidth_mm;

// Tells where a way is narrowest: how far apart what stands on its one side is from what stands on its other.
class NarrowPlaces {
 public:
  explicit NarrowPlaces(const Plan& plan);

  // The shortest line between two walls or solids that the path crosses, its ends on them and nothing
  // between; none where all are `wider_mm` or more. Found to 0.001 mm wherever an end of it is a corner, or
  // the path begins or ends on it. Cost: the square of what stands within `wider_mm` of the path.
  std::optional<Segment> along(std::span<const Point> path, double wider_mm = kTwoBodies_mm) const;

 private:
  std::vector<Segment> near(std::span<const Point> path, double within_mm) const;

  std::vector<Segment> edges_;
  geometry::BoxTree tree_;
  FloorIndex index_;
};

}  // namespace stopwalk::floor
