#pragma once

#include <cmath>
#include <vector>

namespace stopwalk::geometry {

// A place or a vector in the plan, millimetres, x to the right, y up.
struct Point {
  double x = 0;
  double y = 0;
  bool operator==(const Point&) const = default;
};

inline Point operator+(Point a, Point b) {
  return {a.x + b.x, a.y + b.y};
}
inline Point operator-(Point a, Point b) {
  return {a.x - b.x, a.y - b.y};
}
inline Point operator*(double k, Point a) {
  return {k * a.x, k * a.y};
}
inline Point operator-(Point a) {
  return {-a.x, -a.y};
}
inline double dot(Point a, Point b) {
  return a.x * b.x + a.y * b.y;
}
inline double cross(Point a, Point b) {
  return a.x * b.y - a.y * b.x;
}
inline double squaredLength(Point a) {
  return dot(a, a);
}
inline double length(Point a) {
  return std::sqrt(dot(a, a));
}
inline double distance(Point a, Point b) {
  return length(b - a);
}
// The vector turned a quarter turn to the left.
inline Point leftOf(Point a) {
  return {-a.y, a.x};
}
inline Point unit(Point a) {
  return (1 / length(a)) * a;
}

// The unit vector at `deg` degrees counter-clockwise from +x; exact at multiples of 90.
Point direction(double deg);
// `p` turned by `deg` degrees counter-clockwise about the origin; exact at multiples of 90.
Point turned(Point p, double deg);

struct Segment {
  Point a;
  Point b;
  bool operator==(const Segment&) const = default;
};

// Corners in order, either direction, not closed (the last joins the first).
using Polygon = std::vector<Point>;

}  // namespace stopwalk::geometry
