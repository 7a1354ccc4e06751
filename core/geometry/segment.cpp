#include "core/geometry/segment.h"

#include <algorithm>
#include <utility>

namespace stopwalk::geometry {

namespace {

Point swapped(Point p) {
  return {p.y, p.x};
}

// The stretch of s (along x from the origin) in a disc about `centre`.
std::optional<Stretch> withinDisc(Point centre, double radius) {
  const double square = radius * radius - centre.y * centre.y;
  if (square < 0) return std::nullopt;
  const double half = std::sqrt(square);
  return Stretch{centre.x - half, centre.x + half};
}

// The stretch of the x axis in the strip along ab, as wide as the diameter and as long as ab.
std::optional<Stretch> withinStrip(Point a, Point b, double radius) {
  const double size = distance(a, b);
  if (!(size > 0)) return std::nullopt;
  const Point u = (1 / size) * (b - a), n = leftOf(u);
  Stretch all{-1e300, 1e300};
  const auto cut = [&all](double slope, double offset, double low, double high) {
    if (std::abs(slope) < 1e-15) return low <= offset && offset <= high;
    double from = (low - offset) / slope, to = (high - offset) / slope;
    if (from > to) std::swap(from, to);
    all = {std::max(all.from, from), std::min(all.to, to)};
    return all.from <= all.to;
  };
  if (!cut(u.x, -dot(u, a), 0, size) || !cut(n.x, -dot(n, a), -radius, radius)) return std::nullopt;
  return all;
}

}  // namespace

Frame frameOf(Segment s) {
  const double size = distance(s.a, s.b);
  return {s.a, size > 0 ? (1 / size) * (s.b - s.a) : Point{1, 0}};
}

Point at(Segment s, double t) {
  if (t <= 0) return s.a;
  if (t >= 1) return s.b;
  return s.a + t * (s.b - s.a);
}

double nearestParameter(Segment s, Point p) {
  const Point d = s.b - s.a;
  const double square = squaredLength(d);
  return square > 0 ? std::clamp(dot(p - s.a, d) / square, 0.0, 1.0) : 0.0;
}

Point nearestPoint(Segment s, Point p) {
  return at(s, nearestParameter(s, p));
}

double distance(Segment s, Point p) {
  return distance(nearestPoint(s, p), p);
}

double distance(Segment s, Segment t) {
  if (crossProperly(s, t, 0)) return 0;
  return std::min({distance(s, t.a), distance(s, t.b), distance(t, s.a), distance(t, s.b)});
}

bool crossProperly(Segment s, Segment t, double touch) {
  const auto apart = [touch](Segment line, Segment ends) {
    const Frame frame = frameOf(line);
    const double a = frame.in(ends.a).y, b = frame.in(ends.b).y;
    return (a > touch && b < -touch) || (a < -touch && b > touch);
  };
  return apart(s, t) && apart(t, s);
}

std::optional<Stretch> stretchWithin(Segment line, Segment other, double radius) {
  const double size = distance(line.a, line.b);
  const Frame frame = frameOf(line);
  const Point a = frame.in(other.a), b = frame.in(other.b);
  std::optional<Stretch> all;
  for (const auto& part : {withinDisc(a, radius), withinDisc(b, radius), withinStrip(a, b, radius)}) {
    if (!part) continue;
    all = all ? Stretch{std::min(all->from, part->from), std::max(all->to, part->to)} : part;
  }
  if (!all || all->from > size || all->to < 0) return std::nullopt;
  const double scale = size > 0 ? 1 / size : 1;
  return Stretch{std::clamp(scale * all->from, 0.0, 1.0), std::clamp(scale * all->to, 0.0, 1.0)};
}

std::optional<Segment> clippedByX(Segment s, double low, double high) {
  if (s.a.x > s.b.x) std::swap(s.a, s.b);
  if (s.a.x > high || s.b.x < low) return std::nullopt;
  const Point d = s.b - s.a;
  Segment cut = s;
  if (s.a.x < low) cut.a = {low, s.a.y + (low - s.a.x) / d.x * d.y};
  if (s.b.x > high) cut.b = {high, s.a.y + (high - s.a.x) / d.x * d.y};
  return cut;
}

std::optional<Segment> clippedByY(Segment s, double low, double high) {
  const auto cut = clippedByX({swapped(s.a), swapped(s.b)}, low, high);
  if (!cut) return std::nullopt;
  return Segment{swapped(cut->a), swapped(cut->b)};
}

}  // namespace stopwalk::geometry
