#include "core/floor/plan_change.h"

#include <algorithm>
#include <limits>
#include <optional>

#include "core/floor/mesh.h"
#include "core/floor/region.h"
#include "core/floor/wall_grid.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kAround_mm = 2000;
// Of more, the box's own edge would cover what is on the outlines.
constexpr double kMostClearance_mm = kAround_mm / 2 - 10;
constexpr double kMostAcross_mm = 30000;  // beyond, the whole floor is as cheap
constexpr double kOnOutline_mm = 1e-3;

// The outlines of the one that the other has not: what both begin and end with is left out, and the rest
// compared.
std::vector<Polygon> onlyIn(std::span<const Solid> one, std::span<const Solid> other) {
  std::vector<Polygon> only;
  for (const Solid& s : one)
    if (std::ranges::find(other, s.outline, &Solid::outline) == other.end()) only.push_back(s.outline);
  return only;
}

bool sameRooms(const Plan& a, const Plan& b) {
  return a.rooms == b.rooms && a.walls == b.walls && a.passages == b.passages && originOf(a) == originOf(b);
}

Plan thingsIn(const Plan& plan, const Box& box) {
  Plan part;
  const auto meets = [&](const auto& shape) { return geometry::overlap(geometry::boxOf(shape), box); };
  for (const Polygon& room : plan.rooms)
    if (meets(room)) part.rooms.push_back(room);
  for (const Passage& p : plan.passages)
    if (meets(outlineOf(p))) part.passages.push_back(p);
  for (const Solid& s : plan.solids)
    if (meets(s.outline)) part.solids.push_back(s);
  for (const Segment& w : plan.walls)
    if (meets(w)) part.walls.push_back(w);
  return part;
}

// The floor within the box, shut off along it. What lies beyond the box is of no meaning.
Plan within(const Plan& plan, const Box& box) {
  Plan part = thingsIn(plan, box);
  const Polygon edge{box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
  for (std::size_t i = 0; i < edge.size(); ++i) part.walls.push_back({edge[i], edge[(i + 1) % edge.size()]});
  return part;
}

bool isOn(const std::vector<Polygon>& outlines, Point p) {
  return std::ranges::any_of(outlines, [&](const Polygon& outline) {
    for (std::size_t i = 0; i < outline.size(); ++i)
      if (distance(Segment{outline[i], outline[(i + 1) % outline.size()]}, p) < kOnOutline_mm) return true;
    return false;
  });
}

}  // namespace

double PlanChange::away(const Box& box) const {
  double least = std::numeric_limits<double>::infinity();
  for (const auto* outlines : {&gone, &come})
    for (const Polygon& outline : *outlines) least = std::min(least, distance(geometry::boxOf(outline), box));
  return least;
}

PlanChange changeBetween(const Plan& before, const Plan& now) {
  PlanChange change;
  change.comparable = sameRooms(before, now);
  if (!change.comparable) return change;
  std::span<const Solid> old(before.solids), fresh(now.solids);
  const auto same = [](const Solid& a, const Solid& b) { return a.outline == b.outline; };
  while (!old.empty() && !fresh.empty() && same(old.front(), fresh.front()))
    old = old.subspan(1), fresh = fresh.subspan(1);
  while (!old.empty() && !fresh.empty() && same(old.back(), fresh.back()))
    old = old.first(old.size() - 1), fresh = fresh.first(fresh.size() - 1);
  constexpr std::size_t kMost = 64;  // where more differ, little can be kept
  change.comparable = old.size() <= kMost && fresh.size() <= kMost;
  if (!change.comparable) return change;
  change.gone = onlyIn(old, fresh);
  change.come = onlyIn(fresh, old);
  return change;
}

// The floor about some outlines.
struct PartsRound::Near {
  Near(const Plan& plan, const std::vector<Polygon>& outlines, const Box& box)
      : mesh(within(plan, box)), grid(mesh), on(mesh.corners().size()) {
    for (std::size_t i = 0; i < on.size(); ++i) on[i] = isOn(outlines, mesh.plan(mesh.corners()[i]));
  }

  bool isOnePart(double clearance) const {
    const Region region(mesh, grid, clearance);
    std::optional<Mesh::Index> part;
    for (const Region::Piece& piece : region.pieces()) {
      if (!on[piece.corner] || (!piece.arc && !on[piece.other])) continue;
      if (part.value_or(piece.part) != piece.part) return false;
      part = piece.part;
    }
    return true;
  }

  Mesh mesh;
  WallGrid grid;
  std::vector<char> on;  // the outlines, of corners
};

PartsRound::PartsRound(const Plan& before, const Plan& now, const PlanChange& change) {
  const auto about = [&](const Plan& plan, const std::vector<Polygon>& outlines) -> std::unique_ptr<Near> {
    if (outlines.empty()) return nullptr;
    Box box;
    for (const Polygon& outline : outlines) box.add(geometry::boxOf(outline));
    box = box.grown(kAround_mm);
    tells_ = tells_ && std::max(box.high.x - box.low.x, box.high.y - box.low.y) <= kMostAcross_mm;
    return tells_ ? std::make_unique<Near>(plan, outlines, box) : nullptr;
  };
  gone_ = about(before, change.gone);
  come_ = about(now, change.come);
}
PartsRound::~PartsRound() = default;

bool PartsRound::stay(double clearance) const {
  return tells_ && clearance <= kMostClearance_mm && (!gone_ || gone_->isOnePart(clearance)) &&
         (!come_ || come_->isOnePart(clearance));
}

}  // namespace stopwalk::floor
