#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/indexed_polygon.h"

namespace stopwalk::floor {

// One straight wall of a room, though its outline may have corners along it: `edges` edges from corner
// `first`.
struct StraightWall {
  std::size_t room = 0;
  std::size_t first = 0;
  std::size_t edges = 0;
  geometry::Segment chord;
};

struct WallEdge {
  std::size_t room = 0;
  std::size_t edge = 0;
  bool operator==(const WallEdge&) const = default;
};

// The walls of all rooms, found by place. Refers to `rooms`; an empty outline has no walls.
class RoomWalls {
 public:
  explicit RoomWalls(const geometry::IndexedPolygons& rooms);

  geometry::Segment segment(WallEdge e) const { return geometry::edgeOf(rooms_[e.room].corners(), e.edge); }
  // Whether the room is to the left of its walls as their corners run.
  bool isLeft(std::size_t room) const { return left_[room]; }
  const geometry::IndexedPolygons& rooms() const { return rooms_; }

  // The straight walls of `room` within `reach` of `p`, nearest first.
  std::vector<StraightWall> near(std::size_t room, geometry::Point p, double reach) const;
  // The edges of all rooms in `area`, in the order of the file.
  std::vector<WallEdge> in(const geometry::Box& area) const;

 private:
  const geometry::IndexedPolygons& rooms_;
  std::vector<bool> left_;
  std::vector<StraightWall> straight_;
  geometry::BoxTree straight_boxes_;
  std::vector<WallEdge> edges_;
  geometry::BoxTree edge_boxes_;
};

}  // namespace stopwalk::floor
