#pragma once

#include <algorithm>
#include <limits>

#include "core/geometry/point.h"

namespace stopwalk::geometry {

// An upright rectangle, closed. A new one is empty: it overlaps nothing until something is added.
struct Box {
  Point low{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
  Point high{-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

  void add(Point p) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  void add(const Box& b) {
    low = {std::min(low.x, b.low.x), std::min(low.y, b.low.y)};
    high = {std::max(high.x, b.high.x), std::max(high.y, b.high.y)};
  }
  bool empty() const { return low.x > high.x; }
  Box grown(double by) const {
    Box b;
    b.low = {low.x - by, low.y - by};
    b.high = {high.x + by, high.y + by};
    return b;
  }
};

inline bool overlap(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

inline Box boxOf(Point p) {
  return {p, p};
}

inline Box boxOf(Segment s) {
  return {{std::min(s.a.x, s.b.x), std::min(s.a.y, s.b.y)}, {std::max(s.a.x, s.b.x), std::max(s.a.y, s.b.y)}};
}

inline Box boxOf(const Polygon& polygon) {
  Box box;
  for (Point p : polygon) box.add(p);
  return box;
}

// Distance from `p` to the nearest point of a box that is not empty; 0 inside.
inline double distance(const Box& box, Point p) {
  const double dx = std::max({box.low.x - p.x, 0.0, p.x - box.high.x});
  const double dy = std::max({box.low.y - p.y, 0.0, p.y - box.high.y});
  return length({dx, dy});
}

// Between the nearest points of two boxes that are not empty; 0 where they meet.
inline double distance(const Box& a, const Box& b) {
  const double dx = std::max({a.low.x - b.high.x, 0.0, b.low.x - a.high.x});
  const double dy = std::max({a.low.y - b.high.y, 0.0, b.low.y - a.high.y});
  return length({dx, dy});
}

}  // namespace stopwalk::geometry
