#include "core/floor/floor_index.h"

namespace stopwalk::floor {

namespace {

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

}  // namespace stopwalk::floor
