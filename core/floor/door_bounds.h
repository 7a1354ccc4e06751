#pragma once

#include <cstddef>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/box.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::floor {

// Lower bounds of walks by the doors that they must pass: from a point to an opening, from opening to opening
// in a straight line, from an opening to a point. Hangs on rooms and passages only, not on what stands in
// them. Cost of making it: doors squared.
class DoorBounds {
 public:
  explicit DoorBounds(const Plan& plan);

  // Where a way may be: a point, or somewhere in a box that lies in one room whole. Kept for many bounds.
  struct End {
    geometry::Box box;
    bool in_room = false;  // else nothing is known but the straight line
    std::size_t room = 0;
    std::vector<double> to_door;  // the least way to each door
    Segment line = {};            // what is in the box, if that is one place of a walk
  };
  End end(Point p) const;
  End end(const Segment& line) const;
  End end(const geometry::Box& box) const;

  // As an end, but only to be the second of two: without the ways to the doors.
  End place(const geometry::Box& box) const;

  // No walk from one to the other is shorter.
  double between(const End& a, const End& b) const;
  // Whether a walk of that length may come into the room.
  bool mayPass(std::size_t room, const End& a, const End& b, double length) const;

 private:
  struct Door {
    std::vector<Segment> openings;
    geometry::Box box;  // of them
    std::vector<std::size_t> rooms;
  };
  static double distance(const Door& a, const Door& b);
  void join();
  End ended(End end) const;

  geometry::IndexedPolygons rooms_;
  std::vector<Door> doors_;
  std::vector<std::vector<std::size_t>> doors_of_room_;
  std::vector<double> ways_;  // from door to door, by rows
};

}  // namespace stopwalk::floor
