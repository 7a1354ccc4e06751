#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::floor {

// The pieces of a plan, found by place. Keeps no reference to the plan. Points on an outline belong to the
// floor.
class FloorIndex {
 public:
  explicit FloorIndex(const Plan& plan);

  std::optional<std::size_t> roomAt(Point p) const { return rooms_.firstHolding(p); }
  // The index of the door whose open passage holds `p`.
  std::optional<std::size_t> doorAt(Point p) const;
  bool insideSolid(Point p) const { return solids_.anyInside(p); }
  // In a room or an open passage, and not inside a solid.
  bool onFloor(Point p) const { return (roomAt(p) || doorAt(p)) && !insideSolid(p); }
  // Whether some floor begins there: on the line along which two things touch there is none.
  bool touchesFloor(Point p) const;

  void moveSolid(std::size_t solid, Polygon outline) {
    solids_.replace(solid, geometry::IndexedPolygon(std::move(outline)));
  }

  const geometry::IndexedPolygons& rooms() const { return rooms_; }
  const geometry::IndexedPolygons& passages() const { return passages_; }
  const geometry::IndexedPolygons& solids() const { return solids_; }

 private:
  std::vector<double> edgesFrom(Point p) const;

  geometry::IndexedPolygons rooms_, passages_, solids_;
  std::vector<std::size_t> door_of_passage_;
};

}  // namespace stopwalk::floor
