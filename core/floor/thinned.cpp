#include "core/floor/thinned.h"

#include <algorithm>
#include <functional>

#include "core/floor/walk_change.h"
#include "core/geometry/segment.h"

namespace stopwalk::floor {

namespace {

// What stands so near to a way is likely to be met by one like it.
constexpr double kBeside_mm = 1200;

}  // namespace

Thinned::Thinned(Plan plan, double clearance) : plan_(std::move(plan)), clearance_(clearance) {
  for (Solid& solid : plan_.solids) {
    const geometry::Box box = geometry::boxOf(solid.outline);
    left_.push_back({std::move(solid), box});
  }
  plan_.solids.clear();
}

template <class Wanted>
void Thinned::putBack(Wanted wanted) {
  const auto begin = std::ranges::stable_partition(left_, std::not_fn(wanted)).begin();
  for (auto it = begin; it != left_.end(); ++it) plan_.solids.push_back(std::move(it->solid));
  left_.erase(begin, left_.end());
}

void Thinned::putBackAt(const geometry::Box& place) {
  putBack([&](const Left& left) { return distance(left.box, place) < kRoundEnds_mm; });
}

void Thinned::putBackAlong(std::span<const Point> path) {
  if (path.empty()) return;
  putBack([&](const Left& left) {
    const geometry::Box near = left.box.grown(kBeside_mm);
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
      const Segment leg{path[i], path[i + 1]};
      if (overlap(near, geometry::boxOf(leg)) && !keepsFrom({&path[i], 2}, left.solid.outline, kBeside_mm))
        return true;
    }
    return false;
  });
}

bool Thinned::keepsClear(std::span<const Point> path) const {
  const double least = clearance_ + kLengthMargin_mm;
  return std::ranges::all_of(left_, [&](const Left& l) { return keepsFrom(path, l.solid.outline, least); });
}

bool keepsFrom(std::span<const Point> path, const Polygon& outline, double least) {
  const geometry::Box near = geometry::boxOf(outline).grown(least);
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    const Segment leg{path[i], path[i + 1]};
    if (!geometry::overlap(geometry::boxOf(leg), near)) continue;
    for (std::size_t k = 0; k < outline.size(); ++k) {
      const Segment edge{outline[k], outline[(k + 1) % outline.size()]};
      // Two that do not cross are nearest at an end; those that cross come to nought at some depth.
      if (std::min({distance(leg, edge.a), distance(leg, edge.b), distance(edge, leg.a),
                    distance(edge, leg.b)}) < least)
        return false;
      const double a = cross(leg.b - leg.a, edge.a - leg.a), b = cross(leg.b - leg.a, edge.b - leg.a);
      const double c = cross(edge.b - edge.a, leg.a - edge.a), d = cross(edge.b - edge.a, leg.b - edge.a);
      if (a * b <= 0 && c * d <= 0) return false;
    }
  }
  return true;
}

}  // namespace stopwalk::floor
