// How a context finds the ways of stations, and what they hang on.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/audit/context.h"

namespace stopwalk::audit {
namespace {

using geometry::Box;

constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr double kMm = 1000;
// Round a walk: the steps at its ends, and what they keep clear of.
constexpr double kRoundWalk_mm = 2100;

Way wayOf(const floor::Walk& walk, std::size_t index) {
  if (!walk.found()) return {};
  Way way;
  way.status = walk.status == floor::WalkStatus::Narrow ? Status::Narrow : Status::Walk;
  way.index = index;
  way.walk_m = walk.length_mm / kMm;
  way.clear_width_m = 2 * walk.clearance_mm / kMm;
  way.stepped = walk.stepped;
  way.path = walk.path;
  return way;
}

// Of those that can be walked to: where they stand in the list, and their standing places.
struct Walkable {
  std::vector<std::size_t> index;
  std::vector<Place> places;
};

Walkable walkableOf(const std::vector<PlacedEntry>& all, std::span<const std::size_t> wanted) {
  Walkable w;
  for (const std::size_t i : wanted) {
    if (all[i].standing.place.empty()) continue;
    w.index.push_back(i);
    w.places.push_back(all[i].standing.place);
  }
  return w;
}

// The box of what a walk from one point to a disc, no longer than so, may come near.
Box ellipseAbout(Point from, Point to, double radius, double length) {
  const double half = (length + radius) / 2, apart = geometry::distance(from, to) / 2;
  const double across = std::sqrt(std::max(half * half - apart * apart, 0.0));
  const Point along = apart > 0 ? geometry::unit(to - from) : Point{1, 0}, middle = 0.5 * (from + to);
  const Point reach{std::hypot(half * along.x, across * along.y),
                    std::hypot(half * along.y, across * along.x)};
  Box box = geometry::boxOf(middle - reach);
  box.add(middle + reach);
  return box.grown(kRoundWalk_mm);
}

// What an answer hangs on: all that a walk to any of the places, no longer than the one found, may come near.
void addWalk(Trace& trace, Point from, std::span<const Place> to, const floor::Nearest& nearest,
             double at_most_mm) {
  const double reach = nearest.index ? nearest.walk.length_mm + 1 : at_most_mm + 1;
  if (reach == kInfinite || nearest.walk.tied || nearest.sought_narrow) {
    trace.all = true;
    return;
  }
  trace.add(geometry::boxOf(from).grown(kRoundWalk_mm));
  const auto add = [&](Point middle, double radius) {
    if (geometry::distance(from, middle) - radius <= reach)
      trace.add(ellipseAbout(from, middle, radius, reach).grown(radius));
  };
  for (const Place& place : to) {
    for (const Point p : place.points) add(p, 0);
    for (const geometry::Segment& s : place.lines) add(0.5 * (s.a + s.b), 0.5 * geometry::distance(s.a, s.b));
  }
}

}  // namespace

Way Context::atHandOf(std::size_t station, std::span<const std::size_t> wanted) const {
  Way way;
  note(geometry::boxOf(stations[station].at));
  if (!stations[station].on_floor) {
    way.status = Status::Unmeasured;
    return way;
  }
  double nearest = std::numeric_limits<double>::infinity();
  for (const std::size_t d : wanted) {
    if (!mayUse(station, d)) continue;
    if (way.status == Status::None) way.status = Status::Unreachable;  // until a way is found
    const auto straight = atHand_m(station, d);
    if (!straight || *straight >= nearest) continue;
    nearest = *straight;
    way.status = Status::AtHand;
    way.index = d;
  }
  return way;
}

Way Context::nearestOf(std::size_t station, std::span<const std::size_t> wanted, double at_most_m) const {
  const Way at_hand = atHandOf(station, wanted);
  if (at_hand.status != Status::Unreachable) return at_hand;
  std::vector<std::size_t> usable(wanted.begin(), wanted.end());
  std::erase_if(usable, [&](std::size_t d) { return devices[d].kind->held; });
  const Walkable w = walkableOf(placed, usable);
  if (w.places.empty()) return at_hand;
  const floor::Nearest nearest = walks.nearest(stations[station].at, w.places, at_most_m * kMm);
  if (trace_) addWalk(*trace_, stations[station].at, w.places, nearest, at_most_m * kMm);
  return nearest.index && nearest.walk.found() ? wayOf(nearest.walk, w.index[*nearest.index]) : at_hand;
}

std::vector<Way> Context::nearestOf(std::span<const std::size_t> who, std::span<const std::size_t> wanted,
                                    std::span<Trace> traces) const {
  std::vector<Way> ways;
  std::vector<Point> from;
  std::vector<std::size_t> walking;
  for (std::size_t i = 0; i < who.size(); ++i) {
    if (!traces.empty()) traceIn(&traces[i]);
    ways.push_back(atHandOf(who[i], wanted));
    if (ways.back().status == Status::Unreachable) walking.push_back(i), from.push_back(stations[who[i]].at);
  }
  if (!traces.empty()) traceIn(nullptr);
  std::vector<std::size_t> usable(wanted.begin(), wanted.end());
  std::erase_if(usable, [&](std::size_t d) { return devices[d].kind->held; });
  const Walkable w = walkableOf(placed, usable);
  if (w.places.empty() || from.empty()) return ways;
  std::vector<std::size_t> whose;
  for (const std::size_t i : walking) whose.push_back(who[i]);
  const std::vector<floor::Nearest> nearest = walks.nearestForAll(from, w.places, areOnWhatMoved(whose));
  for (std::size_t i = 0; i < walking.size(); ++i) {
    Trace* const trace = traces.empty() ? trace_ : &traces[walking[i]];
    if (trace) addWalk(*trace, from[i], w.places, nearest[i], kInfinite);
    if (nearest[i].index && nearest[i].walk.found())
      ways[walking[i]] = wayOf(nearest[i].walk, w.index[*nearest[i].index]);
  }
  return ways;
}

void Context::seekStops(std::span<const std::size_t> who) {
  stops.of.resize(stations.size());
  stops.traces.resize(stations.size());
  for (const std::size_t s : who) {
    stops.traces[s] = {};
    traceIn(&stops.traces[s]);
    stops.of[s] = nearestOf(s, candidates(stations[s].machine));
  }
  traceIn(nullptr);
}

void Context::seekPhones(const floor::Walks& on, const std::vector<PlacedEntry>& there,
                         std::span<const std::size_t> who, Ways& ways) const {
  ways.of.resize(stations.size());
  ways.traces.resize(stations.size());
  std::vector<std::size_t> all(there.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  const Walkable w = walkableOf(there, all);
  std::vector<Point> from;
  std::vector<std::size_t> walking;
  for (const std::size_t s : who) {
    // On the floor of these hours: a station may stand in a doorway.
    const bool on_floor = on.onFloor(stations[s].at);
    ways.traces[s] = {};
    ways.traces[s].add(geometry::boxOf(stations[s].at).grown(kRoundWalk_mm));
    ways.of[s] = {};
    ways.of[s].status = !on_floor ? Status::Unmeasured : there.empty() ? Status::None : Status::Unreachable;
    if (on_floor) from.push_back(stations[s].at), walking.push_back(s);
  }
  if (w.places.empty() || from.empty()) return;
  const std::vector<floor::Nearest> nearest = on.nearestForAll(from, w.places, areOnWhatMoved(walking));
  for (std::size_t i = 0; i < walking.size(); ++i) {
    addWalk(ways.traces[walking[i]], from[i], w.places, nearest[i], kInfinite);
    if (nearest[i].index && nearest[i].walk.found())
      ways.of[walking[i]] = wayOf(nearest[i].walk, w.index[*nearest[i].index]);
  }
}

void Context::seekCutOffs(std::span<const std::size_t> who, Ways& ways) const {
  ways.of.resize(stations.size());
  ways.traces.resize(stations.size());
  std::map<std::size_t, std::vector<std::size_t>> in_room;
  for (const std::size_t s : who)
    if (stations[s].room) {
      in_room[*stations[s].room].push_back(s);
    } else {
      ways.of[s] = {};
      ways.traces[s] = {};
      ways.traces[s].add(geometry::boxOf(stations[s].at));
    }
  for (const auto& [room, there] : in_room) {
    std::vector<Trace> traces(there.size());
    std::vector<Way> found = nearestOf(there, cutOffs(room), traces);
    for (std::size_t i = 0; i < there.size(); ++i) {
      ways.of[there[i]] = std::move(found[i]);
      ways.traces[there[i]] = std::move(traces[i]);
    }
  }
}

}  // namespace stopwalk::audit
