#include "core/floor/known_walks.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/floor/corridor.h"
#include "core/floor/near_places.h"
#include "core/floor/steps.h"
#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kInfinite = std::numeric_limits<double>::infinity();
// What rounding, and the chords of a drawn arc, may take from a length or distance.
constexpr double kMargin_mm = 1;
// Where an end of a walk steps out to is a matter of what stands so near.
constexpr double kRoundEnds_mm = 2000;

// The numbers that tell one question's places from another's.
std::vector<double> numbersOf(std::span<const Place> places, Asked asked) {
  std::vector<double> numbers{static_cast<double>(asked)};
  for (const Place& place : places) {
    numbers.push_back(static_cast<double>(place.points.size()));
    for (Point p : place.points) numbers.insert(numbers.end(), {p.x, p.y});
    numbers.push_back(static_cast<double>(place.lines.size()));
    for (const Segment& s : place.lines) numbers.insert(numbers.end(), {s.a.x, s.a.y, s.b.x, s.b.y});
  }
  return numbers;
}

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

}  // namespace

double Known::reach() const {
  if (nearest.walk.status == WalkStatus::Unmeasured) return 0;
  return nearest.index ? nearest.walk.length_mm : at_most;
}

std::optional<Nearest> Known::answer(double other) const {
  // Of two equal ways it hangs on the triangles which is given.
  if (nearest.walk.tied) return std::nullopt;
  if (other == at_most || nearest.walk.status == WalkStatus::Unmeasured) return nearest;
  if (!nearest.index) return other <= at_most ? std::optional(nearest) : std::nullopt;
  if (nearest.walk.length_mm + kMargin_mm <= std::min(at_most, other)) return nearest;
  for (const auto& [bound, was_found] : close_calls)
    if (bound == other) return was_found ? nearest : Nearest{};
  // There is none so near.
  return nearest.walk.length_mm - kMargin_mm > other ? std::optional(Nearest{}) : std::nullopt;
}

void KnownWalks::follow(KnownWalks& former, WalkFinder* former_finder, const Plan& before, const Plan& now,
                        double clearance) {
  change_ = changeBetween(before, now);
  clearance_ = clearance;
  if (!change_.comparable) return;
  parts_ = std::make_unique<PartsRound>(before, now, change_);
  for (const double c : {clearance, kBodyHalfWidth_mm})
    if (!parts_->stay(c)) return;
  former_ = &former;
  ends_ = std::move(former.ends_);
  if (former_finder) ends_.add(former_finder->takeEnds());
  ends_.forgetNear(change_, originOf(now), kRoundEnds_mm);
  doors_ = former.doors_ ? former.doors_ : std::make_shared<const DoorBounds>(now);
  for (const Polygon& outline : change_.gone)
    gone_ends_.push_back(doors_->end(geometry::boxOf(outline).grown(clearance)));
}

void KnownWalks::forgetFormer() {
  former_ = nullptr;
  for (auto& [numbers, group] : groups_) group.former = nullptr;
}

KnownWalks::Group& KnownWalks::about(std::span<const Place> places, Asked asked) {
  std::vector<double> numbers = numbersOf(places, asked);
  const auto found = groups_.find(numbers);
  if (found != groups_.end()) return found->second;
  const Group* former = nullptr;
  if (former_)
    if (const auto f = former_->groups_.find(numbers); f != former_->groups_.end()) former = &f->second;
  Group& group = groups_[std::move(numbers)];
  group.places.assign(places.begin(), places.end());
  group.former = former;
  return group;
}

std::optional<Nearest> KnownWalks::kept(Group& group, Point from, double at_most) {
  if (const auto found = group.of.find(from); found != group.of.end()) return found->second.answer(at_most);
  if (!group.former) return std::nullopt;
  const auto found = group.former->of.find(from);
  if (found == group.former->of.end()) return std::nullopt;
  const Known& known = found->second;
  std::optional<Nearest> answer = known.answer(at_most);
  if (!answer || !holds(known, group, from)) return std::nullopt;
  if (known.sought_narrow && !narrowWaysStay()) return std::nullopt;
  ++kept_;
  group.of.emplace(from, known);
  return answer;
}

void KnownWalks::note(Group& group, Point from, Known known) {
  const auto [it, fresh] = group.of.try_emplace(from, known);
  if (fresh) return;
  Known& old = it->second;
  if (old.nearest.index && old.at_most > known.at_most) {
    old.close_calls.emplace_back(known.at_most, known.nearest.index.has_value());
  } else if (known.nearest.index || old.at_most < known.at_most) {
    old = std::move(known);
  }
}

double KnownWalks::likely(const Group& group, Point from) const {
  if (group.former)
    if (const auto found = group.former->of.find(from);
        found != group.former->of.end() && found->second.nearest.index)
      return found->second.nearest.walk.length_mm;
  double straight = kInfinite;
  for (const Place& place : group.places) straight = std::min(straight, straightLineTo(from, place));
  return 1.2 * straight + 1500;
}

std::optional<bool> KnownWalks::keptOnFloor(Point p) const {
  if (!former_ || change_.away(p) < kRoundEnds_mm) return std::nullopt;
  const auto found = former_->on_floor_.find(p);
  return found == former_->on_floor_.end() ? std::nullopt : std::optional(found->second);
}

// No other way of less than the reach has opened: each would come within the clearance of something that is
// gone. The way found is still free of what has come. At the ends all is as it was.
bool KnownWalks::holds(const Known& known, Group& group, Point from) const {
  if (change_.none()) return true;
  const double reach = known.reach();
  if (reach == kInfinite || change_.away(from) < kRoundEnds_mm) return false;
  for (const Polygon& outline : change_.come)
    if (!keepsFrom(known.nearest.walk.path, outline, clearance_ + kMargin_mm)) return false;
  if (group.ends.empty()) group.ends = endsOf(group.places, *doors_);
  std::optional<DoorBounds::End> begin;
  for (const DoorBounds::End& end : group.ends) {
    if (distance(end.box, from) > reach + kMargin_mm) continue;
    if (change_.away(end.box) < kRoundEnds_mm) return false;
    for (std::size_t i = 0; i < change_.gone.size(); ++i) {
      const Box& gone = gone_ends_[i].box;
      if (distance(gone, from) + distance(gone, end.box) >= reach + kMargin_mm) continue;
      if (!begin) begin = doors_->end(from);
      if (!isLongerBy(i, reach + kMargin_mm, *begin, end)) return false;
    }
  }
  return true;
}

bool KnownWalks::narrowWaysStay() {
  if (!narrow_ways_stay_) {
    narrow_ways_stay_ = true;
    for (int c = kWidestFallback_mm; c > kBodyHalfWidth_mm && *narrow_ways_stay_; --c)
      narrow_ways_stay_ = parts_->stay(c);
  }
  return *narrow_ways_stay_;
}

// By its box, and if that says nothing by many points of its outline.
bool KnownWalks::isLongerBy(std::size_t gone, double reach, const DoorBounds::End& from,
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
