#pragma once

#include <string>
#include <vector>

#include "core/layout/layout.h"

// Pulls a place that is being drawn or dragged onto what it is meant for. Typed numbers are never pulled.
namespace stopwalk::plan {

using geometry::Point;
using geometry::Segment;

struct Snap {
  Point by;                     // what to move by
  std::vector<Segment> guides;  // what it was pulled to, for drawing; ends at the thing itself
};

// What a layout has to be pulled to: walls, corners and middles of rooms and of footprints, and lines in a
// way's width from them.
class SnapTargets {
 public:
  SnapTargets() = default;
  // Without the things named.
  SnapTargets(const layout::Layout& layout, const std::vector<std::string>& without);

  // How to move a thing with these points of reference so that one of them comes to lie on a target within
  // `tolerance`; with nothing near, the first onto the grid, unless `grid` is 0.
  Snap pull(const std::vector<Point>& references, double tolerance_mm, double grid_mm) const;

 private:
  struct Line {
    double at = 0;   // the coordinate
    Point of;        // the point that it goes through
    int weight = 0;  // 0: a thing's own; 1: in a way's width from it
  };

  void addOutline(const geometry::Polygon& outline, bool is_solid);

  std::vector<Line> upright_;  // at x
  std::vector<Line> level_;    // at y
  std::vector<Segment> edges_;
};

// The points that a footprint is dragged by: its origin, corners and middles of its sides.
std::vector<Point> referencesOf(const layout::Footprint& footprint, Point at, double turn);

}  // namespace stopwalk::plan
