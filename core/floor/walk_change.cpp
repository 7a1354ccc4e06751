#include "core/floor/walk_change.h"

#include <algorithm>

#include "core/floor/thinned.h"
#include "core/floor/touched_lines.h"
#include "core/geometry/indexed_polygon.h"
#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kInfinite = std::numeric_limits<double>::infinity();

// Lines of the plan that stand within the box.
std::vector<Segment> linesIn(const Plan& plan, const Box& box) {
  std::vector<Segment> lines;
  const auto add = [&](const Segment& line) {
    if (overlap(geometry::boxOf(line), box)) lines.push_back(line);
  };
  std::ranges::for_each(plan.walls, add);
  for (const Solid& solid : plan.solids)
    if (overlap(geometry::boxOf(solid.outline), box))
      for (std::size_t i = 0; i < solid.outline.size(); ++i) add(geometry::edgeOf(solid.outline, i));
  return lines;
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
  Box about;
  for (const Polygon& outline : outlines) about.add(geometry::boxOf(outline));
  for (const Segment& line : touched_) about.add(geometry::boxOf(line));
  lines_ = linesIn(now, about.grown(kRoundEnds_mm + clearance_ + kLengthMargin_mm));
  for (const Polygon& outline : change_.gone)
    for (std::size_t i = 0; i < outline.size(); ++i) lines_.push_back(geometry::edgeOf(outline, i));
  for (const Polygon& outline : change_.gone)
    gone_ends_.push_back(doors_->end(geometry::boxOf(outline).grown(clearance)));
}

bool WalkChange::isNear(const geometry::Box& place) const {
  const auto isBy = [&](const Segment& line) { return isWithin(place, line, kRoundEnds_mm); };
  return change_.away(place) < kRoundEnds_mm || std::ranges::any_of(touched_, isBy);
}

// It has the clearance on all sides, whether what changed is there or not.
bool WalkChange::takesNoStep(const Segment& place) const {
  const double least = clearance_ + kLengthMargin_mm;
  const Box near = geometry::boxOf(place).grown(least);
  for (const Segment& line : lines_)
    if (overlap(near, geometry::boxOf(line)) && distance(line, place) < least) return false;
  for (const auto* outlines : {&change_.gone, &change_.come})
    for (const Polygon& outline : *outlines)
      if (geometry::IndexedPolygon(outline).holds(place.a)) return false;
  return true;
}

bool WalkChange::isAt(Point p) const {
  const Box here = geometry::boxOf(p);
  const auto isBy = [&](const Segment& line) { return distance(line, p) < kLengthMargin_mm; };
  return change_.away(here) < kLengthMargin_mm || std::ranges::any_of(touched_, isBy);
}

bool WalkChange::partsStay(double clearance) const {
  const auto [it, fresh] = parts_stay_at_.try_emplace(clearance, false);
  if (fresh) it->second = parts_stay_ && parts_.stay(clearance);
  return it->second;
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
  if (reach == kInfinite || !leavesSteps({from, from})) return false;
  for (const Polygon& outline : change_.come)
    if (!keepsFrom(walk.path, outline, clearance_ + kLengthMargin_mm)) return false;
  for (const Segment& line : touched_)
    if (!keepsFrom(walk.path, Polygon{line.a, line.b}, clearance_ + kLengthMargin_mm)) return false;
  reach += kLengthMargin_mm;
  std::optional<DoorBounds::End> begin;
  for (const DoorBounds::End& end : ends) {
    if (distance(end.box, from) > reach) continue;
    if (!leavesSteps(end.line)) return false;
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
