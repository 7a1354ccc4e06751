#include "core/floor/covered.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace stopwalk::floor {

using geometry::Point;
using std::numbers::pi;

namespace {

void add(Interval& hull, double from, double to) {
  if (!(from < to)) return;
  if (hull.empty()) {
    hull = {from, to};
  } else {
    hull = {std::min(hull.from, from), std::max(hull.to, to)};
  }
}

void addDisk(Interval& hull, double along, double off, double r) {
  const double half = r * r - off * off;
  if (half > 0) add(hull, along - std::sqrt(half), along + std::sqrt(half));
}

double wrapped(double angle) {
  return std::remainder(angle, 2 * pi);
}

}  // namespace

Interval nearSegment(Point o, Point d, Point a, Point b, double r) {
  const double off_a = cross(d, a - o), off_b = cross(d, b - o);
  if ((off_a >= r && off_b >= r) || (off_a <= -r && off_b <= -r)) return {};
  Interval hull;
  addDisk(hull, dot(a - o, d), off_a, r);
  addDisk(hull, dot(b - o, d), off_b, r);
  const double size = distance(a, b);
  if (size == 0) return hull;
  // The rectangle about ab, clipped by each pair of its sides.
  const Point t = (1 / size) * (b - a);
  const double along = dot(o - a, t), off = cross(t, o - a), d_along = dot(d, t), d_off = cross(t, d);
  double from = -1e300, to = 1e300;
  const auto clip = [&](double start, double rate, double low, double high) {
    if (rate == 0) {
      if (start <= low || start >= high) to = from;
      return;
    }
    const double s0 = (low - start) / rate, s1 = (high - start) / rate;
    from = std::max(from, std::min(s0, s1));
    to = std::min(to, std::max(s0, s1));
  };
  clip(along, d_along, 0, size);
  clip(off, d_off, -r, r);
  if (from < to) add(hull, from, to);
  return hull;
}

Interval nearSegmentRound(Point v, double circle, Point a, Point b, double r) {
  const double size = distance(a, b);
  if (size == 0) return {};
  const Point t = (1 / size) * (b - a);
  const double along = std::clamp(dot(v - a, t), 0.0, size);
  const Point toward = a + along * t - v;
  if (squaredLength(toward) >= (circle + r) * (circle + r)) return {};
  const double middle = std::atan2(toward.y, toward.x);
  double low = 0, high = 0;
  const auto reach = [&](double angle) {
    const double turn = wrapped(angle - middle);
    low = std::min(low, turn);
    high = std::max(high, turn);
  };
  for (Point end : {a, b}) {
    const double d = distance(end, v);
    const double cosine = (d * d + circle * circle - r * r) / (2 * d * circle);
    if (d == 0 || std::abs(cosine) >= 1) continue;
    const double at = std::atan2(end.y - v.y, end.x - v.x), half = std::acos(cosine);
    reach(at - half);
    reach(at + half);
  }
  // The sides of the segment's strip: points of the circle at distance r from the line, beside the segment.
  const double off = cross(t, v - a), line = std::atan2(t.y, t.x);
  for (double side : {r, -r}) {
    const double sine = (side - off) / circle;
    if (std::abs(sine) > 1) continue;
    const double lift = std::asin(sine);
    for (double angle : {lift, pi - lift}) {
      const double foot = dot(v - a, t) + circle * std::cos(angle);
      if (foot > 0 && foot < size) reach(line + angle);
    }
  }
  return {middle + low, middle + high};
}

void uncovered(double from, double to, std::vector<Interval>& covered, double least,
               std::vector<Interval>& free) {
  std::sort(covered.begin(), covered.end(),
            [](const Interval& x, const Interval& y) { return x.from < y.from; });
  free.clear();
  double at = from;
  for (const Interval& c : covered) {
    if (c.empty()) continue;
    if (c.from > at && c.from - at > least && at < to) free.push_back({at, std::min(c.from, to)});
    at = std::max(at, c.to);
  }
  if (to - at > least) free.push_back({at, to});
}

}  // namespace stopwalk::floor
