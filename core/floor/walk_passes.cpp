// Walks for many points at once.
#include <algorithm>

#include "core/floor/walk_finder.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

}  // namespace

void WalkFinder::forAll(std::span<const Point> from, std::span<const Place> to,
                        const std::function<void(std::size_t, Nearest)>& give, Pass pass) {
  const NearPlaces near(to);
  if (std::any_of(to.begin(), to.end(), [](const Place& p) { return !p.lines.empty(); })) {
    for (std::size_t i = 0; i < from.size(); ++i) give(i, nearestOutwards(from[i], to, near));
    return;
  }
  std::vector<char> unsure(from.size(), 0);
  std::vector<Nearest> answers(from.size());
  if (pass == Pass::OneForAll) {
    answers = allAtTheClearance(from, to, unsure);
    // Which of equals one pass finds hangs on who else is asked for.
    for (std::size_t i = 0; i < from.size(); ++i)
      if (answers[i].walk.tied) answers[i] = oneAtTheClearance(from[i], to, unsure[i]);
  } else {
    for (std::size_t i = 0; i < from.size(); ++i) answers[i] = oneAtTheClearance(from[i], to, unsure[i]);
  }
  for (std::size_t i = 0; i < from.size(); ++i) {
    begin();
    unsure_ = unsure[i] != 0;
    if (answers[i].walk.status != WalkStatus::Unmeasured)
      narrowToo(from[i], to, near.within(from[i], answers[i].walk.length_mm), kInfinite, answers[i]);
    answers[i].sought_narrow = sought_narrow_;
    give(i, std::move(answers[i]));
  }
}

// Walks are the same both ways: grown from the places, all points are reached in one pass.
std::vector<Nearest> WalkFinder::allAtTheClearance(std::span<const Point> from, std::span<const Place> to,
                                                   std::vector<char>& unsure) {
  std::vector<Nearest> answers(from.size());
  Layer& l = layer(clearance_);
  RouteSearch& search = l.search();
  from_ends_.clear();
  to_ends_.clear();
  begin();
  for (std::size_t i = 0; i < to.size(); ++i) addSources(l, search, localParts(to[i]), i);
  const bool unsure_places = unsure_;
  // What no source can reach is not sought: the search would go over all the floor for it.
  std::vector<char> reachable(static_cast<std::size_t>(l.region().parts()), 0);
  if (!extent_.known)
    for (const auto& end : from_ends_)
      if (end.exit.part != Region::kNone) reachable[end.exit.part] = 1;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const Point p = local(from[i]);
    if (!onFloor(p)) {
      answers[i].walk.status = WalkStatus::Unmeasured;
      continue;
    }
    unsure_ = unsure_places;
    const Ends& ends = endsOf(l, {p, p});
    unsure[i] = unsure_;
    for (const Exit& e : ends.exits) {
      if (!extent_.known && e.part != Region::kNone && !reachable[e.part]) continue;
      search.addTarget(e.at, e.step, static_cast<int>(to_ends_.size()));
      to_ends_.push_back({i, {p, p}, e, {}, false});
    }
  }
  search.all(static_cast<int>(to_ends_.size()), [&](const Route& route) {
    const std::size_t i = to_ends_[route.target].place;
    Walk walk = measured(l, route, Sought::Back);
    const std::size_t place = from_ends_[route.source].place;
    if (answers[i].index) {
      const double ahead = answers[i].walk.length_mm - walk.length_mm;
      if (ahead < -kSameLength_mm || (ahead <= kSameLength_mm && *answers[i].index <= place)) return;
    }
    answers[i] = {place, std::move(walk)};
  });
  return answers;
}

// The same for one point, sought straight ahead.
Nearest WalkFinder::oneAtTheClearance(Point from, std::span<const Place> to, char& unsure) {
  const auto inOnePass = [&] {
    std::vector<char> one_unsure(1, 0);
    Nearest found = allAtTheClearance({&from, 1}, to, one_unsure).front();
    unsure = one_unsure.front();
    return found;
  };
  const Point p = local(from);
  Layer& l = layer(clearance_);
  begin();
  if (!onFloor(p) || endsOf(l, {p, p}).exits.size() != 1) return inOnePass();
  RouteSearch& search = l.search();
  from_ends_.clear();
  to_ends_.clear();
  const Ends& ends = endsOf(l, {p, p});
  for (std::size_t i = 0; i < to.size(); ++i)
    for (const Segment& part : localParts(to[i]))
      if (extent_.known || ends.joins(endsOf(l, part))) addSources(l, search, {part}, i);
  addTargets(l, search, {{p, p}}, 0);
  unsure = unsure_;
  Nearest found;
  if (from_ends_.empty()) return found;
  const auto route = search.nearest();
  if (!route) return found;
  found = {from_ends_[route->source].place, measured(l, *route, Sought::Back)};
  return found;
}

// The search labels sources by place and targets by sample.
std::vector<Reach> WalkFinder::reach(std::span<const Point> from, std::span<const Place> to) {
  Layer& l = layer(clearance_);
  RouteSearch& search = l.search();
  std::vector<char> reachable(static_cast<std::size_t>(l.region().parts()), 0);
  const auto note = [&](Mesh::Index part) {
    if (part != Region::kNone) reachable[part] = 1;
  };
  std::vector<Segment> places;
  for (std::size_t i = 0; i < to.size(); ++i) {
    const int label = static_cast<int>(i);
    for (const Segment& part : localParts(to[i])) {
      places.push_back(part);
      for (const Exit& e : l.ends(part).exits) search.addSource(e.at, e.step, label), note(e.part);
      for (const PartLanding& p : l.ends(part).landings) search.addSource(p.landing, label), note(p.part);
    }
  }
  std::vector<Reach> answers(from.size());
  std::vector<std::size_t> not_reached;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const Point p = local(from[i]);
    if (!onFloor(p)) {
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
  if (!not_reached.empty()) addStops(places, stops_of_places);
  for (const std::size_t i : not_reached) {
    const std::vector<Segment> here{{local(from[i]), local(from[i])}};
    std::set<int> stops = stops_of_places;
    addStops(here, stops);
    if (widestStretch(here, places, stops)) answers[i].status = WalkStatus::Narrow;
  }
  return answers;
}

}  // namespace stopwalk::floor
