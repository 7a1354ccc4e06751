#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/floor/floor_index.h"
#include "core/floor/plan.h"
#include "core/geometry/box_tree.h"

namespace stopwalk::floor {

// What stands in the way of a straight line. Touching is not crossing: a line may end at a wall, run along a
// wall or solid and pass a corner or the end of a wall. But between two things that touch each other there is
// no way through: where one closes the line's left and the other its right, the line is crossed.
class Obstacles {
 public:
  explicit Obstacles(const Plan& plan);

  struct Obstacle {
    std::optional<std::size_t> solid;  // none: a wall
  };
  using Spared = std::function<bool(std::size_t solid)>;

  // Something that crosses `line`, of the walls, except in the last `free_end` mm, and of the solids that are
  // not spared.
  std::optional<Obstacle> on(Segment line, double free_end, const FloorIndex& index,
                             const Spared& spared) const;

  const geometry::BoxTree& wallBoxes() const { return wall_boxes_; }
  const std::vector<Segment>& walls() const { return walls_; }

 private:
  std::vector<Segment> walls_;
  geometry::BoxTree wall_boxes_;
};

// The stretches of the line's parallel at `aside` to its left that are inside the polygon, in order.
std::vector<geometry::Stretch> insideAlong(Segment line, double aside,
                                           const geometry::IndexedPolygon& polygon);

// Whether more than the outline of `polygon` lies on the line.
bool crosses(Segment line, const geometry::IndexedPolygon& polygon);

}  // namespace stopwalk::floor
