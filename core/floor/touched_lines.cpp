#include "core/floor/touched_lines.h"

#include <algorithm>

#include "core/geometry/box.h"
#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kTouched_mm = 1e-3;
constexpr std::size_t kMost = 256;

bool meetEndToEnd(const Segment& a, const Segment& b) {
  const auto isEnd = [](const Segment& s, Point p) { return s.a == p || s.b == p; };
  const bool at_a = isEnd(b, a.a), at_b = isEnd(b, a.b);
  if (!at_a && !at_b) return false;
  if (at_a && at_b) return true;
  // Only there: the other ends lie off the other line.
  const Point other_of_a = at_a ? a.b : a.a, met = at_a ? a.a : a.b, other_of_b = b.a == met ? b.b : b.a;
  return distance(b, other_of_a) > kTouched_mm && distance(a, other_of_b) > kTouched_mm;
}

bool touch(const Segment& a, const Segment& b) {
  return overlap(geometry::boxOf(a).grown(kTouched_mm), geometry::boxOf(b)) && !meetEndToEnd(a, b) &&
         distance(a, b) <= kTouched_mm;
}

template <class See>
void eachLineNear(const Plan& plan, const Box& box, See see) {
  for (const Segment& w : plan.walls) see(w);
  for (const Passage& p : plan.passages) see(p.first), see(p.second);
  for (const Solid& s : plan.solids) {
    if (!overlap(geometry::boxOf(s.outline), box)) continue;
    for (std::size_t i = 0; i < s.outline.size(); ++i) see(geometry::edgeOf(s.outline, i));
  }
}

}  // namespace

std::optional<std::vector<Segment>> linesTouched(const Plan& plan, std::span<const Polygon> outlines) {
  std::vector<Segment> own, touched;
  for (const Polygon& outline : outlines)
    for (std::size_t i = 0; i < outline.size(); ++i) own.push_back(geometry::edgeOf(outline, i));
  const auto isKnown = [&](const Segment& s) {
    return std::ranges::find(own, s) != own.end() || std::ranges::find(touched, s) != touched.end();
  };
  const auto addTouching = [&](const Segment& line) {
    eachLineNear(plan, geometry::boxOf(line).grown(kTouched_mm), [&](const Segment& other) {
      if (touch(line, other) && !isKnown(other)) touched.push_back(other);
    });
  };
  for (const Segment& line : own) addTouching(line);
  for (std::size_t next = 0; next < touched.size(); ++next) {
    if (touched.size() > kMost) return std::nullopt;
    addTouching(Segment(touched[next]));
  }
  return touched;
}

}  // namespace stopwalk::floor
