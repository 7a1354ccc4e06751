#include "core/floor/door_overlaps.h"

#include <algorithm>

namespace stopwalk::floor {

using geometry::distance;

DoorOverlaps::DoorOverlaps(const std::vector<DoorPlan>& doors, const RoomWalls& walls)
    : doors_(doors.size()) {
  for (std::size_t i = 0; i < doors.size(); ++i) {
    for (const Opening& o : doors[i].covers) {
      const Segment edge = walls.segment(o.edge);
      const double size = distance(edge.a, edge.b);
      covers_.push_back({o.edge.room, o.edge.edge, o.from_t * size, o.to_t * size, i});
    }
  }
  std::sort(covers_.begin(), covers_.end());
}

std::vector<std::pair<std::size_t, std::size_t>> DoorOverlaps::pairs() const {
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  const Cover* farthest = nullptr;  // of those before, on the same edge
  for (const Cover& c : covers_) {
    if (farthest && (farthest->room != c.room || farthest->edge != c.edge)) farthest = nullptr;
    if (farthest && farthest->door != c.door && std::min(farthest->to, c.to) - c.from > kDoorOverlap_mm)
      pairs.push_back(std::minmax(farthest->door, c.door));
    if (!farthest || c.to > farthest->to) farthest = &c;
  }
  std::sort(pairs.begin(), pairs.end());
  pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
  return pairs;
}

std::vector<bool> DoorOverlaps::underAny(const std::vector<bool>& marked) const {
  std::vector<Cover> over;  // the marked; `to` the farthest of those up to here on the edge
  for (const Cover& c : covers_) {
    if (!marked[c.door]) continue;
    over.push_back(c);
    if (over.size() < 2) continue;
    const Cover& before = over[over.size() - 2];
    if (before.room == c.room && before.edge == c.edge) over.back().to = std::max(over.back().to, before.to);
  }
  std::vector<bool> under = marked;
  for (const Cover& c : covers_) {
    // The last that begins early enough to reach into this one.
    const auto behind = std::partition_point(over.begin(), over.end(), [&](const Cover& o) {
      return std::tuple(o.room, o.edge, o.from) < std::tuple(c.room, c.edge, c.to - kDoorOverlap_mm);
    });
    if (behind == over.begin()) continue;
    const Cover& o = *std::prev(behind);
    if (o.room == c.room && o.edge == c.edge && o.to > c.from + kDoorOverlap_mm) under[c.door] = true;
  }
  return under;
}

}  // namespace stopwalk::floor
