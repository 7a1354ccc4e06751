// Ways at less than the clearance asked for.
#include <algorithm>
#include <cmath>

#include "core/floor/walk_finder.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

}  // namespace

void WalkFinder::addStops(const std::vector<Segment>& parts, std::set<int>& stops) const {
  for (const Segment& part : parts) {
    const int pieces = static_cast<int>(distance(part.a, part.b) / 25) + 1;
    double least = kInfinite, most = 0;
    for (int i = 0; i <= pieces; ++i) {
      const double room = grid_.clearance(part.a + (double(i) / pieces) * (part.b - part.a), clearance_);
      least = std::min(least, room);
      most = std::max(most, room);
    }
    if (part.a != part.b) {  // between the places asked, the room may be that much less or more
      least -= 12.5;
      most += 12.5;
    }
    for (int c = static_cast<int>(least + kBuildLess_mm); c <= static_cast<int>(most + kBuildLess_mm); ++c)
      stops.insert(c);
  }
}

std::optional<WalkFinder::Stretch> WalkFinder::widestStretch(const std::vector<Segment>& from,
                                                             const std::vector<Segment>& to,
                                                             const std::set<int>& stops) {
  const int least = static_cast<int>(kBodyHalfWidth_mm);
  int high = std::min(kWidestFallback_mm, static_cast<int>(std::ceil(clearance_)) - 1);
  if (clearance_ < kBodyHalfWidth_mm || from.empty() || to.empty()) return std::nullopt;
  while (high >= least) {
    const auto above = stops.lower_bound(high);
    const int low = above == stops.begin() ? least : std::max(least, *std::prev(above) + 1);
    if (joined(layer(low), from, to)) return Stretch{low, high};
    high = low - 1;
  }
  return std::nullopt;
}

std::optional<double> WalkFinder::widestWay(const std::vector<Segment>& from,
                                            const std::vector<Segment>& to) {
  std::set<int> stops;
  addStops(from, stops);
  addStops(to, stops);
  const auto stretch = widestStretch(from, to, stops);
  if (!stretch) return std::nullopt;
  auto [low, high] = *stretch;
  while (low < high) {
    const int middle = (low + high + 1) / 2;
    if (joined(layer(middle), from, to)) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

Walk WalkFinder::narrow(const std::vector<Segment>& from, const std::vector<Segment>& to) {
  const auto c = widestWay(from, to);
  if (!c) return {};
  Layer& l = layer(*c);
  RouteSearch& search = l.search();
  from_ends_.clear();
  to_ends_.clear();
  addSources(l, search, from, 0);
  addTargets(l, search, to, 0);
  const auto route = search.nearest();
  return route ? measured(l, *route, Sought::There) : Walk{};
}

// On a piece: whether there may be no way at the clearance. The best that was found is joined to where the
// walk begins, and so is what is joined to the best, if that leads to one part only.
bool WalkFinder::mayBeParted(const Segment& from, const std::vector<Segment>& parts, const Nearest& best,
                             std::span<const Place> to) {
  Layer& l = layer(clearance_);
  if (!extent_.known) return !joined(l, {from}, parts);
  const std::vector<Segment> found = best.index ? localParts(to[*best.index]) : std::vector<Segment>{};
  const Ends* own = extent_.known->find(from);
  return std::ranges::none_of(parts, [&](const Segment& part) {
    const Ends* ends = extent_.known->find(part);
    if (!ends) return false;
    if (own) return own->joins(*ends);
    return std::ranges::any_of(found, [&](const Segment& other) {
      const Ends* best_ends = extent_.known->find(other);
      return found.size() == 1 && best_ends && best_ends->ofOnePart() && best_ends->joins(*ends);
    });
  });
}

// Places not joined at the clearance asked for may yet be nearer, at less.
void WalkFinder::narrowToo(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                           double at_most, Nearest& best) {
  const Point p = local(from);
  Layer& l = layer(clearance_);
  for (const std::size_t i : which) {
    const double bound = straightLineTo(from, to[i]);
    if (bound > std::min(at_most, best.walk.length_mm)) continue;
    const std::vector<Segment> parts = localParts(to[i]);
    if (parts.empty()) continue;
    if (!extent_.whole()) {
      unsure_ = unsure_ || mayBeParted({p, p}, parts, best, to);
      continue;
    }
    if (joined(l, {{p, p}}, parts)) continue;
    sought_narrow_ = true;
    const Walk walk = narrow({{p, p}}, parts);
    if (!walk.found() || walk.length_mm > at_most) continue;
    const double ahead = best.walk.length_mm - walk.length_mm;
    if (best.index && (ahead < -kSameLength_mm || (ahead <= kSameLength_mm && *best.index < i))) continue;
    best = {i, walk};
  }
}

}  // namespace stopwalk::floor
