#include "core/floor/walk_change.h"

#include <algorithm>

#include "core/floor/touched_lines.h"
#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kInfinite = std::numeric_limits<double>::infinity();

// Whether the polyline keeps the distance from the outline's edges.
bool keepsFrom(const std::vector<Point>& path, const Polygon& outline, double least) {
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

bool isWithin(const Box& box, const Segment& line, double reach) {
  if (!overlap(box.grown(reach), geometry::boxOf(line))) return false;
  const Segment diagonal{box.low, box.high};
  return distance(line, 0.5 * (box.low + box.high)) <= reach + distance(diagonal.a, diagonal.b) / 2;
}

}  // namespace

WalkChange::WalkChange(PlanChange change, const Plan& before, const Plan& now, double clearance,
                       std::shared_ptr<const DoorBounds> doors)
    : change_(std::move(change)),
      clearance_(clearance),
      doors_(std::move(doors)),
      parts_(before, now, change_) {
  std::vector<Polygon> outlines = change_.gone;
  outlines.insert(outlines.end(), change_.come.begin(), change_.come.end());
  auto touched = linesTouched(now, outlines);
  if (!touched) return;  // nothing stays for sure
  touched_ = *std::move(touched);
  parts_stay_ = change_.comparable && parts_.stay(clearance) && parts_.stay(kBodyHalfWidth_mm);
  for (const Polygon& outline : change_.gone)
    gone_ends_.push_back(doors_->end(geometry::boxOf(outline).grown(clearance)));
}

bool WalkChange::isNear(const geometry::Box& place) const {
  const auto isBy = [&](const Segment& line) { return isWithin(place, line, kRoundEnds_mm); };
  return change_.away(place) < kRoundEnds_mm || std::ranges::any_of(touched_, isBy);
}

bool WalkChange::narrowPartsStay() const {
  if (!narrow_parts_stay_) {
    narrow_parts_stay_ = true;
    for (int c = kWidestFallback_mm; c > kBodyHalfWidth_mm && *narrow_parts_stay_; --c)
      narrow_parts_stay_ = parts_.stay(c);
  }
  return *narrow_parts_stay_;
}

// No other way of less than the reach has opened: each would come within the clearance of something that is
// gone. The way found is still free of what has come. At the ends all is as it was.
bool WalkChange::leaves(const Walk& walk, double reach, Point from,
                        std::span<const DoorBounds::End> ends) const {
  if (change_.none()) return true;
  if (reach == kInfinite || isNear(geometry::boxOf(from))) return false;
  for (const Polygon& outline : change_.come)
    if (!keepsFrom(walk.path, outline, clearance_ + kLengthMargin_mm)) return false;
  for (const Segment& line : touched_)
    if (!keepsFrom(walk.path, {line.a, line.b}, clearance_ + kLengthMargin_mm)) return false;
  reach += kLengthMargin_mm;
  std::optional<DoorBounds::End> begin;
  for (const DoorBounds::End& end : ends) {
    if (distance(end.box, from) > reach) continue;
    if (isNear(end.box)) return false;
    for (std::size_t i = 0; i < change_.gone.size(); ++i) {
      const Box& gone = gone_ends_[i].box;
      if (distance(gone, from) + distance(gone, end.box) >= reach) continue;
      if (!begin) begin = doors_->end(from);
      if (!isLongerBy(i, reach, *begin, end)) return false;
    }
  }
  return true;
}

// By its box, and if that says nothing by many points of its outline.
bool WalkChange::isLongerBy(std::size_t gone, double reach, const DoorBounds::End& from,
                            const DoorBounds::End& to) const {
  constexpr int kPieces = 6;
  DoorBounds::End by = gone_ends_[gone];
  if (doors_->between(from, by) + doors_->between(to, by) >= reach) return true;
  const Polygon& outline = change_.gone[gone];
  double least = kInfinite, longest = 0;
  for (std::size_t k = 0; k < outline.size(); ++k) {
    const Segment edge = geometry::edgeOf(outline, k);
    for (int i = 0; i < kPieces; ++i) {
      by.box = geometry::boxOf(edge.a + ((i + 0.5) / kPieces) * (edge.b - edge.a));
      least = std::min(least, doors_->between(from, by) + doors_->between(to, by));
    }
    longest = std::max(longest, distance(edge.a, edge.b) / kPieces);
  }
  // From the middle of a piece to elsewhere on it, the way grows shorter by no more than the piece's length.
  return least - longest - 2 * clearance_ >= reach;
}

}  // namespace stopwalk::floor
