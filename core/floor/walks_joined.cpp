// What leads where, at a clearance asked for; nothing is measured.
#include <algorithm>

#include "core/floor/walks_memory.h"

namespace stopwalk::floor {

std::vector<std::int32_t> Walks::parts(const Place& place, double clearance_mm) const {
  Layer& layer = finder().layer(std::max(clearance_mm, 0.0));
  std::vector<std::int32_t> found;
  for (const Segment& part : finder().localParts(place)) {
    const Ends& ends = layer.ends(part);
    for (const Exit& e : ends.exits) found.push_back(e.part);
    for (const PartLanding& l : ends.landings) found.push_back(l.part);
  }
  std::ranges::sort(found);
  const auto repeated = std::ranges::unique(found);
  found.erase(repeated.begin(), repeated.end());
  return found;
}

bool Walks::keeps(Point p, double clearance_mm) const {
  const double clearance = std::max(clearance_mm, 0.0);
  if (FloorPieces* pieces = memory_->usePieces(0))
    if (const auto kept = pieces->keeps(p, clearance)) return *kept;
  return finder().keeps(p, clearance);
}

std::vector<char> Walks::leadTo(std::span<const Point> from, std::span<const Point> gates,
                                double clearance_mm) const {
  std::vector<char> leads(from.size(), 0);
  if (from.empty() || gates.empty()) return leads;
  Layer& layer = finder().layer(std::max(clearance_mm, 0.0));
  std::vector<char> goal(static_cast<std::size_t>(layer.region().parts()), 0);
  for (const Point gate : gates)
    if (const auto part = layer.region().partAt(finder().local(gate)); part != Region::kNone) goal[part] = 1;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const Point p = finder().local(from[i]);
    if (!finder().onFloor(p)) continue;
    leads[i] = std::ranges::any_of(layer.ends({p, p}).exits,
                                   [&](const Exit& e) { return e.part != Region::kNone && goal[e.part]; });
  }
  return leads;
}

bool Walks::partsStay(double clearance_mm) const {
  const Memory& m = *memory_;
  const auto stay = [&](const WalkChange* change) { return !change || change->partsStay(clearance_mm); };
  return m.lifted && stay(m.lifted->back.get()) && stay(m.put_back_before.get()) &&
         (!m.lifted_just_now || stay(&m.lifted->floor.memory_->known.lastChange()));
}

std::vector<std::optional<std::int32_t>> Walks::joinedNearby(std::span<const Point> points,
                                                             double clearance_mm) const {
  if (FloorPieces* pieces = memory_->usePieces(0)) return pieces->joined(points, std::max(clearance_mm, 0.0));
  return std::vector<std::optional<std::int32_t>>(points.size());
}

}  // namespace stopwalk::floor
