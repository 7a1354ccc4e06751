#include "core/floor/floor_index.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/segment.h"

namespace stopwalk::floor {

namespace {

constexpr double kThrough_mm = 1e-5;  // an edge as near as that goes through a point
constexpr double kSharpest = 0.02;  // edges that part by less run along one another: between them is nothing

template <class Pieces, class OutlineOf>
geometry::IndexedPolygons indexed(const Pieces& pieces, OutlineOf&& outline_of) {
  std::vector<geometry::IndexedPolygon> polygons;
  polygons.reserve(pieces.size());
  for (const auto& piece : pieces) polygons.emplace_back(outline_of(piece));
  return geometry::IndexedPolygons(std::move(polygons));
}

}  // namespace

FloorIndex::FloorIndex(const Plan& plan)
    : rooms_(indexed(plan.rooms, [](const Polygon& room) { return room; })),
      passages_(indexed(plan.passages, [](const Passage& p) { return outlineOf(p); })),
      solids_(indexed(plan.solids, [](const Solid& s) { return s.outline; })) {
  for (const Passage& p : plan.passages) door_of_passage_.push_back(p.door);
}

std::optional<std::size_t> FloorIndex::doorAt(Point p) const {
  const auto passage = passages_.firstHolding(p);
  return passage ? std::optional(door_of_passage_[*passage]) : std::nullopt;
}

// The directions in which edges leave `p`, in order.
std::vector<double> FloorIndex::edgesFrom(Point p) const {
  std::vector<double> angles;
  const geometry::Box area = geometry::boxOf(p).grown(geometry::kTouch_mm);
  for (const geometry::IndexedPolygons* polygons : {&rooms_, &passages_, &solids_}) {
    polygons->boxes().any(area, [&](std::size_t i) {
      return (*polygons)[i].anyEdge(area, [&](std::size_t edge) {
        const geometry::Segment e = geometry::edgeOf((*polygons)[i].corners(), edge);
        if (geometry::distance(e, p) <= kThrough_mm)
          for (const Point end : {e.a, e.b})
            if (geometry::distance(end, p) > kThrough_mm)
              angles.push_back(std::atan2(end.y - p.y, end.x - p.x));
        return false;
      });
    });
  }
  std::ranges::sort(angles);
  return angles;
}

bool FloorIndex::touchesFloor(Point p) const {
  if (!onFloor(p)) return false;
  const std::vector<double> angles = edgesFrom(p);
  if (angles.empty()) return true;
  for (std::size_t i = 0; i < angles.size(); ++i) {
    const double next = i + 1 < angles.size() ? angles[i + 1] : angles[0] + 2 * std::numbers::pi;
    const double middle = (angles[i] + next) / 2;
    const bool is_corner = next - angles[i] > kSharpest;
    if (is_corner && onFloor(p + geometry::kTouch_mm * Point{std::cos(middle), std::sin(middle)}))
      return true;
  }
  return false;
}

}  // namespace stopwalk::floor
