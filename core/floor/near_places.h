#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/floor/walks.h"
#include "core/geometry/box_tree.h"

namespace stopwalk::floor {

// The straight-line distance from a point to the nearest point of a place: no walk to it is shorter.
double straightLineTo(Point p, const Place& place);

// Many places by where they are. They must outlive it.
class NearPlaces {
 public:
  explicit NearPlaces(std::span<const Place> places);

  // Those whose straight-line distance is at most `radius`, ascending.
  std::vector<std::size_t> within(Point p, double radius) const;

 private:
  std::span<const Place> places_;
  geometry::BoxTree tree_;
};

}  // namespace stopwalk::floor
