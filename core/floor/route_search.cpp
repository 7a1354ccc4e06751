#include "core/floor/route_search.h"

#include <algorithm>
#include <cmath>

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();
// With more targets than this and the straight distance to the nearest of them costs more than it saves.
constexpr std::size_t kFewTargets = 4;

// How far beyond the nearest candidate cones are followed at once.
constexpr double kHorizon_mm = 1000;

}  // namespace

RouteSearch::RouteSearch(const Mesh& mesh, const WallGrid& grid, const Region& region, const Turns& turns)
    : mesh_(&mesh), grid_(&grid), region_(&region), turns_(&turns), radius_(region.radius()) {
  target_first_.assign(mesh.triangles().size(), Mesh::kNone);
  state_first_.assign(2 * region.pieces().size(), Mesh::kNone);
}

void RouteSearch::clear() {
  for (Index t : touched_triangles_) target_first_[t] = Mesh::kNone;
  for (Index s : touched_states_) state_first_[s] = Mesh::kNone;
  touched_triangles_.clear();
  touched_states_.clear();
  sources_.clear();
  launched_ = 0;
  beams_.clear();
  targets_.clear();
  target_next_.clear();
  target_of_.clear();
  states_.clear();
  heap_.clear();
  legs_.clear();
  kept_.clear();
}

// Whether the leg keeps the radius from every corner near it. That it crosses no wall, the triangles have
// shown.
bool RouteSearch::free(const Leg& leg) const {
  const Point p = touch(diskOf(leg.from), leg.direction);
  if (leg.to < 0) {
    const Target& t = targets_[~leg.to];
    return keepsClear(p, t.line ? t.landing.entry(leg.at) : t.at);
  }
  const double r = (leg.to % 2 ? 1 : -1) * radius_;
  return keepsClear(p, touch({mesh_->corners()[region_->pieces()[leg.to / 2].corner], r}, leg.direction));
}

bool RouteSearch::keepsClear(Point p, Point q) const {
  return grid_->cornersKeepFrom({p, q}, radius_ - kRounding_mm);
}

void RouteSearch::start() {
  for (Index s : touched_states_) state_first_[s] = Mesh::kNone;
  touched_states_.clear();
  states_.clear();
  heap_.clear();
  legs_.clear();
  kept_.clear();
  informed_ = !everywhere_ && targets_.size() <= kFewTargets;
  if (everywhere_) {
    if (!ends_) ends_.emplace(*mesh_, *grid_, *region_, *turns_);
    for (Index slot : touched_slots_) reached_[slot] = kInfinite;
    touched_slots_.clear();
    reached_.resize(2 * turns_->gates().size(), kInfinite);
  }
  if (launched_ == 0) launched_ = sources_.size();
  sources_.resize(launched_, Source{});
  for (std::size_t i = 0; i < launched_; ++i) launch(sources_[i], static_cast<Index>(i));
  for (const Beam& beam : beams_) shine(beam);
}

template <class Found>
void RouteSearch::run(double at_most, Found found) {
  at_most_ = at_most;
  horizon_ = 0;
  start();
  while (true) {
    const double least_leg = heap_.empty() ? kInfinite : heap_.front().key;
    const double least_cone = kept_.least(), least = std::min(least_leg, least_cone);
    if (least > at_most_ || least == kInfinite) return;
    horizon_ = std::max(horizon_, least + kHorizon_mm);
    // Whatever a cone shows is no shorter than where it lies.
    if (least_cone <= least_leg) {
      const Kept kept = kept_.take();
      takeUp(kept.from);
      follow(kept.cone);
      continue;
    }
    std::pop_heap(heap_.begin(), heap_.end(), std::greater<>());
    const Leg leg = legs_.take(heap_.back().slot);
    heap_.pop_back();
    if (leg.to >= 0) {
      arrive(leg);
    } else {
      found(leg);
    }
  }
}

// Goes on from the arc that the leg leads to, if the leg is allowed and no walk was there sooner.
void RouteSearch::arrive(const Leg& leg) {
  const Index arc = leg.to / 2;
  const std::int8_t sense = leg.to % 2 ? 1 : -1;
  const int label = labelOf(leg.from);
  const bool late = dominated(arc, sense, leg.length, leg.direction, label);
  const bool tied = close_ && noteTies(leg);
  if (late || !free(leg)) return;
  const auto index = static_cast<Index>(states_.size());
  if (state_first_[leg.to] == Mesh::kNone) touched_states_.push_back(leg.to);
  const Index corner = region_->pieces()[arc].corner;
  states_.push_back({arc, corner, leg.length, leg.direction, mesh_->corners()[corner], leg.from,
                     state_first_[leg.to], label, sense, tied});
  state_first_[leg.to] = index;
  if (everywhere_) noteReached(states_[index]);
  expand(index);
}

// The route that ends with the leg.
void RouteSearch::trace(const Leg& leg, Route& route) const {
  const Target& t = targets_[~leg.to];
  route.target = t.label;
  route.length = leg.length;
  route.end = t.line ? t.landing.entry(leg.at) : t.at;
  route.landing_at = leg.at;
  route.turns.clear();
  route.tied = leg.tied;
  bool touches = false;
  Point next = leg.direction;
  Index i = leg.from;
  for (; i >= 0; i = states_[i].parent) {
    route.turns.push_back({states_[i].corner, states_[i].sense});
    route.tied |= states_[i].tied;
    touches |= isHardlyTurned(states_[i].direction, next);
    next = states_[i].direction;
  }
  std::reverse(route.turns.begin(), route.turns.end());
  route.source = sources_[~i].label;
  route.start = sources_[~i].at;
  const bool is_known =
      !t.line && ~i < static_cast<Index>(launched_);  // the directions are those of the route
  straighten(route, touches || !is_known);
  if (t.line) settle(t.landing, route);
}

std::optional<Route> RouteSearch::nearest(double at_most) {
  std::optional<Leg> best;
  everywhere_ = false;
  run(at_most, [&](const Leg& leg) {
    if (!free(leg)) return;
    if (!best || targets_[~leg.to].label < targets_[~best->to].label) {
      best = leg;
    } else if (leg.to == best->to) {
      const bool tied = best->tied || !comesFrom(leg.from, leg.direction, best->from, best->direction);
      if (labelOf(leg.from) < labelOf(best->from)) best = leg;
      best->tied = tied;
    }
    at_most_ = std::min(at_most_, leg.length + kSameLength_mm);  // only equals may follow
  });
  if (!best) return std::nullopt;
  Route route;
  trace(*best, route);
  return route;
}

void RouteSearch::all(int labels, const std::function<void(const Route&)>& found) {
  std::vector<std::optional<Leg>> last(labels);
  std::vector<char> wanted(labels, 0);
  for (const Target& t : targets_) wanted[t.label] = 1;
  auto open = std::ranges::count(wanted, 1);
  everywhere_ = true;
  run(kInfinite, [&](const Leg& leg) {
    auto& best = last[targets_[~leg.to].label];
    if (best && leg.length > best->length + kSameLength_mm) return;
    if (!free(leg)) return;
    if (!best) {
      if (--open == 0) at_most_ = leg.length + kSameLength_mm;
    } else if (labelOf(leg.from) >= labelOf(best->from)) {
      if (leg.to == best->to && labelOf(leg.from) == labelOf(best->from))
        best->tied |= !comesFrom(leg.from, leg.direction, best->from, best->direction);
      return;
    }
    best = leg;
  });
  Route route;
  for (const auto& leg : last) {
    if (!leg) continue;
    trace(*leg, route);
    found(route);
  }
}

}  // namespace stopwalk::floor
