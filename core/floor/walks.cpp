#include "core/floor/walks.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/floor/known_walks.h"
#include "core/floor/layer.h"
#include "core/floor/near_places.h"
#include "core/floor/taut.h"
#include "core/geometry/lattice.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr int kWidestFallback_mm = 304;

}  // namespace

struct Walks::Inside {
  Mesh mesh;
  WallGrid grid;
  double clearance;
  Paths paths;
  std::map<double, Layer> layers;
  // What the labels of the search in hand stand for.
  struct End {
    std::size_t place = 0;
    Segment local;
    Exit exit;
    PartLanding landing;
    bool line = false;
  };
  std::vector<End> from_ends, to_ends;
  std::vector<Point> drawn;    // the last path, kept for its memory
  bool sought_narrow = false;  // whether a way at less than the clearance was sought

  Inside(const Plan& plan, double c, Paths p) : mesh(plan), grid(mesh), clearance(c), paths(p) {}

  Layer& layer(double c) {
    const auto it = layers.find(c);
    if (it != layers.end()) return it->second;
    std::function<const Region&()> body;
    if (c > kBodyHalfWidth_mm) body = [this]() -> const Region& { return layer(kBodyHalfWidth_mm).region(); };
    return layers.try_emplace(c, mesh, grid, c, body).first->second;
  }

  bool onFloor(Point local) const { return mesh.floorTriangle(local) != Mesh::kNone; }

  // The parts of a place as local segments; points are segments of no length. Points off the floor are left
  // out.
  std::vector<Segment> localParts(const Place& place) const {
    std::vector<Segment> parts;
    for (Point p : place.points) {
      const Point q = mesh.local(p);
      if (onFloor(q)) parts.push_back({q, q});
    }
    for (const Segment& s : place.lines) {
      const Segment local{mesh.local(s.a), mesh.local(s.b)};
      parts.push_back(local);
    }
    return parts;
  }

  bool joined(Layer& l, const std::vector<Segment>& from, const std::vector<Segment>& to) {
    for (const Segment& f : from)
      for (const Segment& t : to)
        if (l.ends(f).joins(l.ends(t))) return true;
    return false;
  }

  void addSources(Layer& l, RouteSearch& search, const std::vector<Segment>& parts, std::size_t place) {
    for (const Segment& part : parts) {
      for (const Exit& e : l.ends(part).exits) {
        search.addSource(e.at, e.step, static_cast<int>(from_ends.size()));
        from_ends.push_back({place, part, e, {}, false});
      }
    }
  }

  void addTargets(Layer& l, RouteSearch& search, const std::vector<Segment>& parts, std::size_t place) {
    for (const Segment& part : parts) {
      const Ends& ends = l.ends(part);
      for (const Exit& e : ends.exits) {
        search.addTarget(e.at, e.step, static_cast<int>(to_ends.size()));
        to_ends.push_back({place, part, e, {}, false});
      }
      for (const PartLanding& landing : ends.landings) {
        search.addLanding(landing.landing, static_cast<int>(to_ends.size()));
        to_ends.push_back({place, part, {}, landing, true});
      }
    }
  }

  // The route found at the region's radius, measured at the clearance asked for.
  Walk measured(const Layer& l, const Route& route) {
    const double c = l.clearance(), less = c - l.region().radius();
    const End& from = from_ends[route.source];
    const End& to = to_ends[route.target];
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
    walk.status = c == clearance ? WalkStatus::Walk : WalkStatus::Narrow;
    walk.clearance_mm = c;
    walk.tied = route.tied;
    walk.length_mm = follow(mesh, course, c, paths == Paths::Drawn ? &drawn : nullptr);
    if (paths == Paths::Drawn) walk.path.assign(drawn.begin(), drawn.end());
    return walk;
  }

  // The whole millimetres at which an end of the walk ceases to need a step; between them, a way at one
  // clearance is a way at every smaller one. (A place that lies in the region takes no step, and may be shut
  // in where a step would have led out.)
  void addStops(const std::vector<Segment>& parts, std::set<int>& stops) const {
    for (const Segment& part : parts) {
      const int pieces = static_cast<int>(distance(part.a, part.b) / 25) + 1;
      double least = kInfinite, most = 0;
      for (int i = 0; i <= pieces; ++i) {
        const double room = grid.clearance(part.a + (double(i) / pieces) * (part.b - part.a), clearance);
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

  // The widest stretch of whole millimetres below the clearance that needs the same steps throughout, and in
  // which there is a way.
  struct Stretch {
    int low, high;
  };
  std::optional<Stretch> widestStretch(const std::vector<Segment>& from, const std::vector<Segment>& to,
                                       const std::set<int>& stops) {
    const int least = static_cast<int>(kBodyHalfWidth_mm);
    int high = std::min(kWidestFallback_mm, static_cast<int>(std::ceil(clearance)) - 1);
    if (clearance < kBodyHalfWidth_mm || from.empty() || to.empty()) return std::nullopt;
    while (high >= least) {
      const auto above = stops.lower_bound(high);
      const int low = above == stops.begin() ? least : std::max(least, *std::prev(above) + 1);
      if (joined(layer(low), from, to)) return Stretch{low, high};
      high = low - 1;
    }
    return std::nullopt;
  }

  // The widest whole millimetre below the clearance at which there is a way, if any.
  std::optional<double> widestWay(const std::vector<Segment>& from, const std::vector<Segment>& to) {
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

  Walk narrow(const std::vector<Segment>& from, const std::vector<Segment>& to) {
    const auto c = widestWay(from, to);
    if (!c) return {};
    Layer& l = layer(*c);
    RouteSearch& search = l.search();
    from_ends.clear();
    to_ends.clear();
    addSources(l, search, from, 0);
    addTargets(l, search, to, 0);
    const auto route = search.nearest();
    return route ? measured(l, *route) : Walk{};
  }

  Nearest nearest(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                  double at_most);
  Nearest nearestOutwards(Point from, std::span<const Place> to, const NearPlaces& near);
  void narrowToo(Point from, std::span<const Place> to, const std::vector<std::size_t>& which, double at_most,
                 Nearest& best);
};

// Places not joined at the clearance asked for may yet be nearer, at less.
void Walks::Inside::narrowToo(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                              double at_most, Nearest& best) {
  const Point p = mesh.local(from);
  Layer& l = layer(clearance);
  for (const std::size_t i : which) {
    const double bound = straightLineTo(from, to[i]);
    if (bound > std::min(at_most, best.walk.length_mm)) continue;
    const std::vector<Segment> parts = localParts(to[i]);
    if (parts.empty() || joined(l, {{p, p}}, parts)) continue;
    sought_narrow = true;
    const Walk walk = narrow({{p, p}}, parts);
    if (!walk.found() || walk.length_mm > at_most) continue;
    const double ahead = best.walk.length_mm - walk.length_mm;
    if (best.index && (ahead < -kSameLength_mm || (ahead <= kSameLength_mm && *best.index < i))) continue;
    best = {i, walk};
  }
}

// The nearest of those listed.
Nearest Walks::Inside::nearest(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                               double at_most) {
  const Point p = mesh.local(from);
  Nearest best;
  if (!onFloor(p)) {
    best.walk.status = WalkStatus::Unmeasured;
    return best;
  }
  Layer& l = layer(clearance);
  const Ends& ends = l.ends({p, p});
  RouteSearch& search = l.search();
  from_ends.clear();
  to_ends.clear();
  addSources(l, search, {{p, p}}, 0);
  for (const std::size_t i : which) {
    const std::vector<Segment> parts = localParts(to[i]);
    for (const Segment& part : parts)
      if (ends.joins(l.ends(part))) addTargets(l, search, {part}, i);
  }
  if (!to_ends.empty()) {
    if (const auto route = search.nearest(at_most))
      best = {to_ends[route->target].place, measured(l, *route)};
  }
  narrowToo(from, to, which, at_most, best);
  return best;
}

// The nearest of many: those near in a straight line first, then twice as far, until none beyond can be
// nearer.
Nearest Walks::Inside::nearestOutwards(Point from, std::span<const Place> to, const NearPlaces& near) {
  constexpr double kFirstRadius_mm = 8000, kLastRadius_mm = 1e6;
  for (double radius = kFirstRadius_mm; radius <= kLastRadius_mm; radius *= 2) {
    const std::vector<std::size_t> which = near.within(from, radius);
    if (which.size() == to.size()) break;
    if (which.empty()) continue;
    Nearest found = nearest(from, to, which, radius);
    if (found.walk.length_mm < radius - kSameLength_mm || found.walk.status == WalkStatus::Unmeasured)
      return found;
  }
  return nearest(from, to, near.within(from, kInfinite), kInfinite);
}

// What walks are made of, and what is known of them.
struct Walks::Memory {
  Plan plan;
  double clearance;
  Paths paths;
  bool remembers = false;
  KnownWalks known;
  std::size_t found = 0;
  std::unique_ptr<Inside> inside;

  // To be asked when it has just been answered.
  Known knownNow(const Nearest& nearest, double at_most) {
    ++found;
    const bool usual = nearest.walk.status == WalkStatus::Walk && !nearest.walk.tied;
    return {nearest, at_most, !inside->sought_narrow && (usual || !nearest.index)};
  }
};

Walks::Walks(const Plan& plan, double clearance_mm, Paths paths)
    : memory_(
          std::make_unique<Memory>(Memory{plan, std::max(clearance_mm, 0.0), paths, false, {}, 0, nullptr})) {
}

Walks Walks::following(const Walks* former, const Plan& plan) {
  Walks walks(plan);
  Memory& now = *walks.memory_;
  now.remembers = true;
  if (!former) return walks;
  Memory& before = *former->memory_;
  before.known.forgetFormer();
  before.inside.reset();
  if (before.clearance == now.clearance && before.paths == now.paths)
    now.known.follow(before.known, before.plan, plan, now.clearance);
  return walks;
}

Walks::~Walks() = default;
Walks::Walks(Walks&&) noexcept = default;
Walks& Walks::operator=(Walks&&) noexcept = default;

Walks::Inside& Walks::inside() const {
  Memory& m = *memory_;
  if (!m.inside) m.inside = std::make_unique<Inside>(m.plan, m.clearance, m.paths);
  return *m.inside;
}

Walks::Count Walks::count() const {
  return {memory_->known.countKept(), memory_->found};
}

bool Walks::onFloor(Point p) const {
  Memory& m = *memory_;
  const std::optional<bool> kept = m.known.keptOnFloor(p);
  const bool on = kept ? *kept : inside().onFloor(inside().mesh.local(p));
  if (m.remembers) m.known.noteOnFloor(p, on);
  return on;
}

bool Walks::joined(Point a, Point b, double clearance_mm) const {
  const Point p = inside().mesh.local(a), q = inside().mesh.local(b);
  if (!inside().onFloor(p) || !inside().onFloor(q)) return false;
  return inside().joined(inside().layer(clearance_mm), {{p, p}}, {{q, q}});
}

std::optional<std::int32_t> Walks::partOf(Point p, double clearance_mm) const {
  const Point local = inside().mesh.local(p);
  if (!inside().onFloor(local)) return std::nullopt;
  const Region& region = inside().layer(std::max(clearance_mm, 0.0)).region();
  if (!region.holds(local)) return std::nullopt;
  const Mesh::Index part = region.partAt(local);
  return part == Mesh::kNone ? std::nullopt : std::optional<std::int32_t>(part);
}

std::vector<std::int32_t> Walks::parts(const Place& place, double clearance_mm) const {
  Layer& layer = inside().layer(std::max(clearance_mm, 0.0));
  std::vector<std::int32_t> found;
  for (const Segment& part : inside().localParts(place)) {
    const Ends& ends = layer.ends(part);
    for (const Exit& e : ends.exits) found.push_back(e.part);
    for (const PartLanding& l : ends.landings) found.push_back(l.part);
  }
  std::ranges::sort(found);
  const auto repeated = std::ranges::unique(found);
  found.erase(repeated.begin(), repeated.end());
  return found;
}

Nearest Walks::nearest(Point from, std::span<const Place> to, double at_most_mm) const {
  Memory& m = *memory_;
  KnownWalks::Group* group = m.remembers ? &m.known.about(to, Asked::Singly) : nullptr;
  if (group)
    if (const Known* known = m.known.kept(*group, from, at_most_mm)) return known->nearest;
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < to.size(); ++i)
    if (straightLineTo(from, to[i]) <= at_most_mm) which.push_back(i);
  inside().sought_narrow = false;
  Nearest nearest = inside().nearest(from, to, which, at_most_mm);
  if (group) m.known.note(*group, from, m.knownNow(nearest, at_most_mm));
  return nearest;
}

Walk Walks::between(Point from, Point to) const {
  return between(Place{{from}, {}}, Place{{to}, {}});
}

Walk Walks::between(const Place& from, const Place& to) const {
  if (!from.lines.empty() && to.lines.empty()) {
    Walk back = between(to, from);
    std::reverse(back.path.begin(), back.path.end());
    return back;
  }
  const auto offFloor = [&](const Place& place) {
    return place.lines.empty() && !place.points.empty() &&
           std::none_of(place.points.begin(), place.points.end(), [&](Point p) { return onFloor(p); });
  };
  Walk best;
  if (offFloor(from) || offFloor(to)) best.status = WalkStatus::Unmeasured;
  const auto tryFrom = [&](Point p) {
    const Walk walk = inside().nearest(p, {&to, 1}, {0}, kInfinite).walk;
    if (walk.found() && walk.length_mm < best.length_mm) best = walk;
    return walk.length_mm;
  };
  for (Point p : from.points) tryFrom(p);
  for (const Segment& s : from.lines) {
    // Between two lines the length has few valleys: sampled, then the lowest is followed down.
    constexpr int kSamples = 64;
    int lowest = 0;
    double least = kInfinite;
    for (int i = 0; i <= kSamples; ++i) {
      const double at = tryFrom(s.a + (double(i) / kSamples) * (s.b - s.a));
      if (at < least) {
        least = at;
        lowest = i;
      }
    }
    double low = std::max(0.0, (lowest - 1.0) / kSamples), high = std::min(1.0, (lowest + 1.0) / kSamples);
    for (int i = 0; i < 40; ++i) {
      const double x = low + (high - low) / 3, y = high - (high - low) / 3;
      if (tryFrom(s.a + x * (s.b - s.a)) <= tryFrom(s.a + y * (s.b - s.a))) {
        high = y;
      } else {
        low = x;
      }
    }
  }
  return best;
}

// What the samples of a floor come to; the search labels sources by place and targets by sample.
std::vector<Reach> Walks::reachForAll(std::span<const Point> from, std::span<const Place> to) const {
  Inside& in = inside();
  Layer& l = in.layer(in.clearance);
  RouteSearch& search = l.search();
  std::vector<char> reachable(static_cast<std::size_t>(l.region().parts()), 0);
  const auto reach = [&](Mesh::Index part) {
    if (part != Region::kNone) reachable[part] = 1;
  };
  std::vector<Segment> places;
  for (std::size_t i = 0; i < to.size(); ++i) {
    const int label = static_cast<int>(i);
    for (const Segment& part : in.localParts(to[i])) {
      places.push_back(part);
      for (const Exit& e : l.ends(part).exits) search.addSource(e.at, e.step, label), reach(e.part);
      for (const PartLanding& p : l.ends(part).landings) search.addSource(p.landing, label), reach(p.part);
    }
  }
  std::vector<Reach> answers(from.size());
  std::vector<std::size_t> not_reached;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const Point p = in.mesh.local(from[i]);
    if (!in.onFloor(p)) {
      answers[i].status = WalkStatus::Unmeasured;
      continue;
    }
    bool reached = false;
    for (const Exit& e : l.exits(p)) {
      if (e.part != Region::kNone && !reachable[e.part]) continue;
      search.addTarget(e.at, e.step, static_cast<int>(i));
      reached = true;
    }
    if (!reached) not_reached.push_back(i);
  }
  search.all(static_cast<int>(from.size()), [&](const Route& route) {
    answers[route.target] = {WalkStatus::Walk, route.length, static_cast<std::size_t>(route.source)};
  });
  std::set<int> stops_of_places;
  if (!not_reached.empty()) in.addStops(places, stops_of_places);
  for (const std::size_t i : not_reached) {
    const std::vector<Segment> here{{in.mesh.local(from[i]), in.mesh.local(from[i])}};
    std::set<int> stops = stops_of_places;
    in.addStops(here, stops);
    if (in.widestStretch(here, places, stops)) answers[i].status = WalkStatus::Narrow;
  }
  return answers;
}

std::vector<Nearest> Walks::nearestForAll(std::span<const Point> from, std::span<const Place> to) const {
  Memory& m = *memory_;
  std::vector<Nearest> answers(from.size());
  if (!m.remembers) {
    foundForAll(from, to, [&](std::size_t i, Nearest nearest) { answers[i] = std::move(nearest); });
    return answers;
  }
  KnownWalks::Group& group = m.known.about(to, Asked::Together);
  std::vector<Point> rest;
  std::vector<std::size_t> who;
  for (std::size_t i = 0; i < from.size(); ++i) {
    if (const Known* known = m.known.kept(group, from[i], kInfinite)) {
      answers[i] = known->nearest;
    } else {
      rest.push_back(from[i]);
      who.push_back(i);
    }
  }
  if (rest.empty()) return answers;
  foundForAll(rest, to, [&](std::size_t i, Nearest nearest) {
    m.known.note(group, rest[i], m.knownNow(nearest, kInfinite));
    answers[who[i]] = std::move(nearest);
  });
  return answers;
}

// Gives, one by one, the nearest of `to` for each of `from`.
void Walks::foundForAll(std::span<const Point> from, std::span<const Place> to,
                        const std::function<void(std::size_t, Nearest)>& give) const {
  std::vector<Nearest> answers(from.size());
  Inside& in = inside();
  const NearPlaces near(to);
  if (std::any_of(to.begin(), to.end(), [](const Place& p) { return !p.lines.empty(); })) {
    for (std::size_t i = 0; i < from.size(); ++i) {
      in.sought_narrow = false;
      give(i, in.nearestOutwards(from[i], to, near));
    }
    return;
  }
  Layer& l = in.layer(in.clearance);
  RouteSearch& search = l.search();
  in.from_ends.clear();
  in.to_ends.clear();
  // Walks are the same both ways: grown from the places, all points are reached in one pass.
  for (std::size_t i = 0; i < to.size(); ++i) in.addSources(l, search, in.localParts(to[i]), i);
  // What no source can reach is not sought: the search would go over all the floor for it.
  std::vector<char> reachable(static_cast<std::size_t>(l.region().parts()), 0);
  for (const auto& end : in.from_ends)
    if (end.exit.part != Region::kNone) reachable[end.exit.part] = 1;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const Point p = in.mesh.local(from[i]);
    if (!in.onFloor(p)) {
      answers[i].walk.status = WalkStatus::Unmeasured;
      continue;
    }
    for (const Exit& e : l.ends({p, p}).exits) {
      if (e.part != Region::kNone && !reachable[e.part]) continue;
      search.addTarget(e.at, e.step, static_cast<int>(in.to_ends.size()));
      in.to_ends.push_back({i, {p, p}, e, {}, false});
    }
  }
  search.all(static_cast<int>(in.to_ends.size()), [&](const Route& route) {
    const std::size_t i = in.to_ends[route.target].place;
    Walk walk = in.measured(l, route);
    const std::size_t place = in.from_ends[route.source].place;
    if (answers[i].index) {
      const double ahead = answers[i].walk.length_mm - walk.length_mm;
      if (ahead < -kSameLength_mm || (ahead <= kSameLength_mm && *answers[i].index <= place)) return;
    }
    std::reverse(walk.path.begin(), walk.path.end());
    answers[i] = {place, std::move(walk)};
  });
  for (std::size_t i = 0; i < from.size(); ++i) {
    in.sought_narrow = false;
    if (answers[i].walk.status != WalkStatus::Unmeasured)
      in.narrowToo(from[i], to, near.within(from[i], answers[i].walk.length_mm), kInfinite, answers[i]);
    give(i, std::move(answers[i]));
  }
}

}  // namespace stopwalk::floor
