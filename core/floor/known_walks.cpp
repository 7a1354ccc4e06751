#include "core/floor/known_walks.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>

#include "core/floor/near_places.h"
#include "core/floor/steps.h"

namespace stopwalk::floor {

namespace {

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

// A place, or a little more.
struct Disc {
  Point middle;
  double radius;
};

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

// A lower bound of the straight way from one point to the other by any point of the outline.
double leastBy(const Polygon& outline, Point from, Point to) {
  constexpr int kPieces = 6;
  const geometry::Box box = geometry::boxOf(outline);
  const double apart = distance(box, from) + distance(box, to);
  double least = kInfinite, longest = 0;
  for (std::size_t k = 0; k < outline.size(); ++k) {
    const Point a = outline[k], b = outline[(k + 1) % outline.size()];
    for (int i = 0; i < kPieces; ++i) {
      const Point middle = a + ((i + 0.5) / kPieces) * (b - a);
      least = std::min(least, distance(from, middle) + distance(middle, to));
    }
    longest = std::max(longest, distance(a, b) / kPieces);
  }
  // From the middle of a piece to elsewhere on it, the way grows shorter by no more than the piece's length.
  return std::max(apart, least - longest);
}

}  // namespace

double Known::reach() const {
  if (nearest.walk.status == WalkStatus::Unmeasured) return 0;
  return nearest.index ? nearest.walk.length_mm : at_most;
}

bool Known::answers(double other) const {
  if (other == at_most || nearest.walk.status == WalkStatus::Unmeasured) return true;
  return nearest.index ? nearest.walk.length_mm + kMargin_mm <= std::min(at_most, other) : other <= at_most;
}

std::size_t KnownWalks::PlacesHash::operator()(const std::vector<double>& numbers) const {
  std::size_t h = numbers.size();
  for (const double v : numbers) {
    std::uint64_t bits = 0;
    std::memcpy(&bits, &v, sizeof bits);
    h = (h ^ bits) * 0x9e3779b97f4a7c15ULL;
    h ^= h >> 29;
  }
  return h;
}

void KnownWalks::follow(const KnownWalks& former, const Plan& before, const Plan& now, double clearance) {
  change_ = changeBetween(before, now);
  clearance_ = clearance;
  if (!change_.comparable) return;
  for (const double c : {clearance, kBodyHalfWidth_mm})
    if (!partsStay(before, now, change_, c)) return;
  former_ = &former;
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

const Known* KnownWalks::kept(Group& group, Point from, double at_most) {
  if (!group.former) return nullptr;
  const auto found = group.former->of.find(from);
  if (found == group.former->of.end()) return nullptr;
  const Known& known = found->second;
  if (!known.firm || !known.answers(at_most) || !holds(known, group, from)) return nullptr;
  ++kept_;
  return &note(group, from, known);
}

const Known& KnownWalks::note(Group& group, Point from, Known known) {
  return group.of[from] = std::move(known);
}

std::optional<bool> KnownWalks::keptOnFloor(Point p) const {
  if (!former_ || change_.away(p) < kRoundEnds_mm) return std::nullopt;
  const auto found = former_->on_floor_.find(p);
  return found == former_->on_floor_.end() ? std::nullopt : std::optional(found->second);
}

// No other way of less than the reach has opened: each would come within the clearance of something that is
// gone. The way found is still free of what has come. At the ends all is as it was.
bool KnownWalks::holds(const Known& known, const Group& group, Point from) const {
  if (change_.none()) return true;
  const double reach = known.reach();
  if (reach == kInfinite || change_.away(from) < kRoundEnds_mm) return false;
  std::vector<Disc> ends;  // of the ways that count
  const auto add = [&](Point middle, double radius) {
    if (distance(from, middle) - radius <= reach + kMargin_mm) ends.push_back({middle, radius});
  };
  for (const Place& place : group.places) {
    for (Point p : place.points) add(p, 0);
    for (const Segment& s : place.lines) add(0.5 * (s.a + s.b), 0.5 * distance(s.a, s.b));
  }
  for (const Disc& end : ends)
    if (change_.away(end.middle) - end.radius < kRoundEnds_mm) return false;
  for (const Polygon& outline : change_.come)
    if (!keepsFrom(known.nearest.walk.path, outline, clearance_ + kMargin_mm)) return false;
  for (const Polygon& outline : change_.gone)
    for (const Disc& end : ends)
      if (leastBy(outline, from, end.middle) - end.radius - 2 * clearance_ - kMargin_mm < reach) return false;
  return true;
}

}  // namespace stopwalk::floor
