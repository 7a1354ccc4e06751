#include "core/floor/narrow_place.h"

#include <algorithm>
#include <array>

#include "core/geometry/segment.h"

namespace stopwalk::floor {
namespace {

using geometry::kTouch_mm;

std::vector<Segment> edgesOf(const Plan& plan) {
  std::vector<Segment> edges = plan.walls;
  for (const Solid& solid : plan.solids)
    for (std::size_t i = 0; i < solid.outline.size(); ++i)
      edges.push_back({solid.outline[i], solid.outline[(i + 1) % solid.outline.size()]});
  return edges;
}

// Where on `line`, 0 to 1, it meets `other`; none where they run side by side.
std::optional<double> meeting(Segment line, Segment other) {
  const Point d = line.b - line.a, e = other.b - other.a;
  const double turn = cross(d, e);
  if (turn == 0) return std::nullopt;
  const double touch = kTouch_mm / std::max(length(e), kTouch_mm);
  const double on_line = cross(other.a - line.a, e) / turn, on_other = cross(other.a - line.a, d) / turn;
  if (on_other < -touch || on_other > 1 + touch) return std::nullopt;
  const double slack = kTouch_mm / std::max(length(d), kTouch_mm);
  if (on_line < -slack || on_line > 1 + slack) return std::nullopt;
  return std::clamp(on_line, 0.0, 1.0);
}

// What of `line` is left between the nearest things on either side of the place `t` on it.
Segment openAbout(Segment line, double t, std::span<const Segment> edges) {
  const double slack = 2 * kTouch_mm / length(line.b - line.a);
  double low = 0, high = 1;
  std::vector<double> stops;
  for (const Segment& edge : edges)
    if (const auto s = meeting(line, edge)) stops.push_back(*s);
  for (const double s : stops)
    if (s <= t + slack) low = std::max(low, s);
  for (const double s : stops)
    if (s >= t - slack && s > low + slack) high = std::min(high, s);
  return {geometry::at(line, low), geometry::at(line, high)};
}

// The shortest lines between two edges, and those by way of the path's ends.
std::vector<Segment> linesBetween(Segment s, Segment t, std::span<const Point> path) {
  std::vector<Segment> lines{{s.a, nearestPoint(t, s.a)},
                             {s.b, nearestPoint(t, s.b)},
                             {nearestPoint(s, t.a), t.a},
                             {nearestPoint(s, t.b), t.b}};
  for (const Point p : {path.front(), path.back()}) {
    lines.push_back({nearestPoint(s, p), nearestPoint(t, p)});
    lines.push_back({nearestPoint(s, p), nearestPoint(t, nearestPoint(s, p))});
    lines.push_back({nearestPoint(s, nearestPoint(t, p)), nearestPoint(t, p)});
  }
  return lines;
}

}  // namespace

NarrowPlaces::NarrowPlaces(const Plan& plan) : edges_(edgesOf(plan)), index_(plan) {
  std::vector<geometry::Box> boxes;
  for (const Segment& edge : edges_) boxes.push_back(boxOf(edge));
  tree_ = geometry::BoxTree(boxes);
}

std::vector<Segment> NarrowPlaces::near(std::span<const Point> path, double within_mm) const {
  std::vector<std::size_t> found;
  for (std::size_t i = 1; i < path.size(); ++i)
    tree_.any({path[i - 1], path[i]}, within_mm, [&](std::size_t edge) {
      if (geometry::distance({path[i - 1], path[i]}, edges_[edge]) < within_mm) found.push_back(edge);
      return false;
    });
  std::ranges::sort(found);
  found.erase(std::ranges::unique(found).begin(), found.end());
  std::vector<Segment> edges;
  for (const std::size_t i : found) edges.push_back(edges_[i]);
  return edges;
}

std::optional<Segment> NarrowPlaces::along(std::span<const Point> path, double wider_mm) const {
  if (path.size() < 2) return std::nullopt;
  const std::vector<Segment> edges = near(path, wider_mm);
  std::optional<Segment> narrowest;
  double least = wider_mm;
  const auto look = [&](Segment line) {
    const double long_mm = distance(line.a, line.b);
    if (long_mm >= least || long_mm <= kTouch_mm) return;
    for (std::size_t i = 1; i < path.size(); ++i) {
      const auto t = meeting(line, {path[i - 1], path[i]});
      if (!t) continue;
      const Segment open = openAbout(line, *t, edges);
      const double wide = distance(open.a, open.b);
      if (wide >= least || wide <= kTouch_mm || !index_.onFloor(geometry::at(open, 0.5))) continue;
      least = wide;
      narrowest = open;
    }
  };
  for (std::size_t i = 0; i < edges.size(); ++i)
    for (std::size_t j = i + 1; j < edges.size(); ++j) {
      if (!overlap(boxOf(edges[i]).grown(least), boxOf(edges[j]))) continue;
      for (const Segment& line : linesBetween(edges[i], edges[j], path)) look(line);
    }
  return narrowest;
}

}  // namespace stopwalk::floor
