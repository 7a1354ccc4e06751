#include "core/floor/walk_finder.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

}  // namespace

Layer& WalkFinder::layer(double c) {
  const auto it = layers_.find(c);
  if (it != layers_.end()) return it->second;
  std::function<const Region&()> body;
  if (c > kBodyHalfWidth_mm) body = [this]() -> const Region& { return layer(kBodyHalfWidth_mm).region(); };
  return layers_.try_emplace(c, mesh_, grid_, c, body).first->second;
}

bool WalkFinder::keeps(Point p, double c) {
  return onFloor(local(p)) && layer(c).region().holds(local(p));
}

std::optional<Mesh::Index> WalkFinder::onePartOf(Point p, double c) {
  const Point place = local(p);
  if (!onFloor(place)) return std::nullopt;
  const Ends& ends = layer(c).ends({place, place});
  if (ends.exits.empty() || !ends.ofOnePart() || ends.exits.front().part == Region::kNone)
    return std::nullopt;
  return ends.exits.front().part;
}

std::vector<Segment> WalkFinder::localParts(const Place& place) const {
  std::vector<Segment> parts;
  for (Point p : place.points) {
    const Point q = local(p);
    if (onFloor(q)) parts.push_back({q, q});
  }
  for (const Segment& s : place.lines) parts.push_back({local(s.a), local(s.b)});
  return parts;
}

const Ends& WalkFinder::endsOf(Layer& l, const Segment& part) {
  if (extent_.known)
    if (const Ends* known = extent_.known->find(part)) return *known;
  Ends& ends = l.ends(part);
  if (extent_.whole()) return ends;
  if (!ends.sure) ends.sure = isSure(ends, part);
  unsure_ = unsure_ || !*ends.sure;
  return ends;
}

// Whether the steps are those of the whole floor. Two parts of a piece may be one part of the floor, and then
// only the nearer is stepped to; a line that the edge cuts has a corner there, off the line by rounding.
bool WalkFinder::isSure(const Ends& ends, const Segment& part) const {
  if (ends.takesNoStep()) return true;
  if (extent_.known || !ends.ofOnePart()) return false;
  const Segment place{mesh_.plan(part.a), mesh_.plan(part.b)};
  const auto isNear = [&](const Segment& line) {
    return distance(line, place) < kLongestStep_mm + clearance_;
  };
  return std::ranges::none_of(extent_.cut, isNear);
}

bool WalkFinder::joined(Layer& l, const std::vector<Segment>& from, const std::vector<Segment>& to) {
  for (const Segment& f : from)
    for (const Segment& t : to)
      if (endsOf(l, f).joins(endsOf(l, t))) return true;
  return false;
}

void WalkFinder::addSources(Layer& l, RouteSearch& search, const std::vector<Segment>& parts,
                            std::size_t place) {
  for (const Segment& part : parts) {
    for (const Exit& e : endsOf(l, part).exits) {
      search.addSource(e.at, e.step, static_cast<int>(from_ends_.size()));
      from_ends_.push_back({place, part, e, {}, false});
    }
  }
}

void WalkFinder::addTargets(Layer& l, RouteSearch& search, const std::vector<Segment>& parts,
                            std::size_t place) {
  for (const Segment& part : parts) {
    const Ends& ends = endsOf(l, part);
    for (const Exit& e : ends.exits) {
      search.addTarget(e.at, e.step, static_cast<int>(to_ends_.size()));
      to_ends_.push_back({place, part, e, {}, false});
    }
    for (const PartLanding& landing : ends.landings) {
      search.addLanding(landing.landing, static_cast<int>(to_ends_.size()));
      to_ends_.push_back({place, part, {}, landing, true});
    }
  }
}

Walk WalkFinder::measured(const Layer& l, const Route& route, Sought sought) {
  const double c = l.clearance(), less = c - l.region().radius();
  const End& from = from_ends_[route.source];
  const End& to = to_ends_[route.target];
  Course course{from.local.a, from.exit.at + less * from.exit.outward, route.turns, {}, {}};
  if (to.line) {
    course.to = to.landing.landing.place(route.landing_at);
    course.end = route.end;
    if (to.landing.landing.kind == Landing::Kind::Round)
      course.end = route.end + less * unit(route.end - to.landing.landing.centre);
    if (to.landing.landing.kind == Landing::Kind::Straight)
      course.end = route.end + less * to.landing.outward;
  } else {
    course.to = to.local.a;
    course.end = to.exit.at + less * to.exit.outward;
  }
  Walk walk;
  walk.status = c == clearance_ ? WalkStatus::Walk : WalkStatus::Narrow;
  walk.clearance_mm = c;
  walk.tied = route.tied;
  walk.stepped =
      from.exit.step > 0 || (to.line ? to.landing.landing.kind != Landing::Kind::Inside : to.exit.step > 0);
  walk.length_mm = drawing_.follow(course, c);
  const std::vector<Point>& path = drawing_.path();
  if (sought == Sought::There) {
    walk.path.assign(path.begin(), path.end());
  } else {
    walk.path.assign(path.rbegin(), path.rend());
  }
  return walk;
}

Nearest WalkFinder::nearest(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                            double at_most) {
  begin();
  return nearestOf(from, to, which, at_most);
}

Nearest WalkFinder::nearestOf(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                              double at_most) {
  const Point p = local(from);
  Nearest best;
  if (!onFloor(p)) {
    best.walk.status = WalkStatus::Unmeasured;
    return best;
  }
  Layer& l = layer(clearance_);
  const Ends& ends = endsOf(l, {p, p});
  RouteSearch& search = l.search();
  from_ends_.clear();
  to_ends_.clear();
  addSources(l, search, {{p, p}}, 0);
  for (const std::size_t i : which) {
    const std::vector<Segment> parts = localParts(to[i]);
    for (const Segment& part : parts)
      if (extent_.known || ends.joins(endsOf(l, part))) addTargets(l, search, {part}, i);
  }
  if (!to_ends_.empty()) {
    if (const auto route = search.nearest(at_most))
      best = {to_ends_[route->target].place, measured(l, *route, Sought::There)};
  }
  narrowToo(from, to, which, at_most, best);
  best.sought_narrow = sought_narrow_;
  return best;
}

Nearest WalkFinder::nearestOutwards(Point from, std::span<const Place> to, const NearPlaces& near) {
  constexpr double kFirstRadius_mm = 8000, kLastRadius_mm = 1e6;
  begin();
  for (double radius = kFirstRadius_mm; radius <= kLastRadius_mm; radius *= 2) {
    const std::vector<std::size_t> which = near.within(from, radius);
    if (which.size() == to.size()) break;
    if (which.empty()) continue;
    Nearest found = nearestOf(from, to, which, radius);
    if (found.walk.length_mm < radius - kSameLength_mm || found.walk.status == WalkStatus::Unmeasured)
      return found;
  }
  return nearestOf(from, to, near.within(from, kInfinite), kInfinite);
}

}  // namespace stopwalk::floor
