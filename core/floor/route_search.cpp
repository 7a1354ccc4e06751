#include "core/floor/route_search.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/lattice.h"

namespace stopwalk::floor {

using geometry::after;
using geometry::before;

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();
// With more targets than this and the straight distance to the nearest of them costs more than it saves.
constexpr std::size_t kFewTargets = 4;

// How far beyond the nearest candidate cones are followed at once.
constexpr double kHorizon_mm = 1000;
// A walk later than another by more is later, whatever rounding did.
constexpr double kSureLater_mm = 0.01;

constexpr auto later = [](const auto& a, const auto& b) { return a.key > b.key; };

// A lower bound of the distance from a gate to a stretch of places.
double lineToLine(const Landing& landing, const Turns::Gate& gate) {
  const Point a = landing.a, b = landing.b;
  if (cross(gate.along, a - gate.right) * cross(gate.along, b - gate.right) <= 0) return 0;
  return std::min({distance(Segment{gate.right, gate.left}, a), distance(Segment{gate.right, gate.left}, b),
                   distance(Segment{a, b}, gate.right), distance(Segment{a, b}, gate.left)});
}

// Where in [0, 1] a function with one valley is least, by golden section; an end where that is as low.
template <class Cost>
double leastOn01(Cost cost) {
  constexpr double kGolden = 0.6180339887498949;
  double x0 = 0, x3 = 1, x1 = 1 - kGolden, x2 = kGolden;
  double f1 = cost(x1), f2 = cost(x2);
  for (int i = 0; i < 48; ++i) {
    if (f1 <= f2) {
      x3 = x2;
      x2 = x1;
      f2 = f1;
      x1 = x3 - kGolden * (x3 - x0);
      f1 = cost(x1);
    } else {
      x0 = x1;
      x1 = x2;
      f1 = f2;
      x2 = x0 + kGolden * (x3 - x0);
      f2 = cost(x2);
    }
  }
  double best = (x0 + x3) / 2;
  for (double end : {0.0, 1.0})
    if (cost(end) <= cost(best)) best = end;
  return best;
}

double turnBetween(Point from, Point to) {
  return std::atan2(cross(from, to), dot(from, to));
}

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
  targets_.clear();
  target_next_.clear();
  target_of_.clear();
  states_.clear();
  heap_.clear();
  legs_.clear();
  kept_.clear();
}

void RouteSearch::addSource(Point p, double offset, int label) {
  p = geometry::onLattice(p);
  const Index t = mesh_->floorTriangle(p);
  if (t == Mesh::kNone) return;
  const auto& tri = mesh_->triangles()[t];
  const Point centre = (1.0 / 3) * (mesh_->corners()[tri.corner[0]] + mesh_->corners()[tri.corner[1]] +
                                    mesh_->corners()[tri.corner[2]]);
  // Where openings meet, a corner stands free: start beside it.
  for (Index c : tri.corner)
    if (distance(mesh_->corners()[c], p) < 1e-4) p = geometry::onLattice(p + 1e-3 * unit(centre - p));
  sources_.push_back({p, offset, label, t});
}

void RouteSearch::addTarget(Point p, double offset, int label) {
  p = geometry::onLattice(p);
  const Index t = mesh_->floorTriangle(p);
  if (t == Mesh::kNone) return;
  const auto index = static_cast<Index>(targets_.size());
  targets_.push_back({p, offset, label, false, {}});
  const auto note = [&](Index triangle) {
    target_next_.push_back(target_first_[triangle]);
    target_of_.push_back(index);
    target_first_[triangle] = static_cast<Index>(target_of_.size()) - 1;
    touched_triangles_.push_back(triangle);
  };
  note(t);
  // On an edge it belongs to both sides.
  const auto& tri = mesh_->triangles()[t];
  for (int e = 0; e < 3; ++e) {
    const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
    if (tri.neighbour[e] != Mesh::kNone && std::abs(cross(b - a, p - a)) <= 1e-5 * distance(a, b))
      note(tri.neighbour[e]);
  }
}

void RouteSearch::addLanding(const Landing& landing, int label) {
  // Cut by the triangles that the points of entry lie in: walked through from one end to the other.
  const Point p = geometry::onLattice(landing.entry(0)), q = geometry::onLattice(landing.entry(1));
  const auto index = static_cast<Index>(targets_.size());
  targets_.push_back({p, 0, label, true, landing});
  std::vector<Index> seen;
  const int steps = std::max(1, static_cast<int>(std::ceil(distance(p, q) / 50)));
  const auto note = [&](Index triangle) {
    if (triangle == Mesh::kNone || std::find(seen.begin(), seen.end(), triangle) != seen.end()) return;
    seen.push_back(triangle);
    target_next_.push_back(target_first_[triangle]);
    target_of_.push_back(index);
    target_first_[triangle] = static_cast<Index>(target_of_.size()) - 1;
    touched_triangles_.push_back(triangle);
  };
  // Spread over triangles that touch the line of entries.
  for (int i = 0; i <= steps; ++i)
    note(mesh_->floorTriangle(geometry::onLattice(landing.entry(double(i) / steps))));
  for (std::size_t next = 0; next < seen.size(); ++next) {
    const auto& tri = mesh_->triangles()[seen[next]];
    for (int e = 0; e < 3; ++e) {
      if (tri.neighbour[e] == Mesh::kNone) continue;
      const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
      bool meets = false;
      for (int i = 0; i < steps && !meets; ++i) {
        const Point c = landing.entry(double(i) / steps), d = landing.entry(double(i + 1) / steps);
        const double tolerance = 1e-3 * distance(a, b);
        meets = std::min(cross(b - a, c - a), cross(b - a, d - a)) <= tolerance &&
                std::max(cross(b - a, c - a), cross(b - a, d - a)) >= -tolerance &&
                std::min(cross(d - c, a - c), cross(d - c, b - c)) <= 1e-3 * distance(c, d) &&
                std::max(cross(d - c, a - c), cross(d - c, b - c)) >= -1e-3 * distance(c, d);
      }
      if (meets) note(tri.neighbour[e]);
    }
  }
}

double RouteSearch::estimate(Point p) const {
  if (!informed_) return 0;
  double least = std::numeric_limits<double>::infinity();
  for (const Target& t : targets_) {
    const double d = t.line ? distance(Segment{t.landing.a, t.landing.b}, p) : distance(p, t.at) + t.offset;
    least = std::min(least, d);
  }
  return least;
}

Disk RouteSearch::diskOf(Index from) const {
  if (from < 0) return {sources_[~from].at, 0};
  const State& s = states_[from];
  return {s.centre, s.sense * radius_};
}

// The walk so far, turned along the source's arc into `direction`.
double RouteSearch::lengthAlong(Point direction) const {
  if (disk_.radius == 0) return from_length_;
  return from_length_ + radius_ * turnRound(disk_.radius, from_direction_, direction);
}

// Whether a walk known already is there sooner, or as soon from a source that goes first.
bool RouteSearch::dominated(Index arc, int sense, double length, Point direction, int label) const {
  for (Index i = state_first_[2 * arc + (sense > 0)]; i != Mesh::kNone; i = states_[i].same) {
    const double turn = sense * turnBetween(states_[i].direction, direction);
    if (turn < -1e-9) continue;
    const double behind = length - (states_[i].length + radius_ * turn);
    if (behind > kSameLength_mm || (behind >= -kSameLength_mm && states_[i].label <= label)) return true;
  }
  // Round the other way to the same point: what is longer there is no shortest walk.
  const Point normal = -sense * leftOf(direction);
  for (Index i = state_first_[2 * arc + (sense < 0)]; i != Mesh::kNone; i = states_[i].same) {
    const double turn = -sense * turnBetween(sense * leftOf(states_[i].direction), normal);
    if (turn >= 0 && states_[i].length + radius_ * turn < length - kSameLength_mm) return true;
  }
  return false;
}

int RouteSearch::labelOf(Index from) const {
  return from < 0 ? sources_[~from].label : states_[from].label;
}

void RouteSearch::push(double length, double ahead, Point direction, double at, Index to) {
  if (length + ahead > at_most_) return;
  heap_.push_back({length + ahead, legs_.put({length, direction, at, from_, to}), false});
  std::push_heap(heap_.begin(), heap_.end(), later);
}

void RouteSearch::seeArc(const Turns::Span& span, const Cone& cone) {
  if (span.corner == from_corner_) return;
  const Point w = span.centre, to = w - disk_.centre;
  // While the corner lies ahead of both sides of a narrow cone, its offset falls from the right side to the
  // left.
  const bool falls = dot(cone.right, cone.left) > 0.5 && dot(to, cone.right) > 0 && dot(to, cone.left) > 0;
  const double most = falls ? cross(cone.right, to) + disk_.radius + kDrift_mm : 1e300;
  const double least = falls ? cross(cone.left, to) + disk_.radius - kDrift_mm : -1e300;
  for (int sense : {1, -1}) {
    if (sense * radius_ > most || sense * radius_ < least) continue;
    const auto t = tangent(disk_, {w, sense * radius_}, kRounding_mm);
    if (!t || !within(cone, *t)) continue;
    const Point d = t->direction, normal = -sense * leftOf(d);
    if (!between(span.from, normal, span.to, 1e-9 + doubt(t->run))) continue;
    const Region::Piece& piece = region_->pieces()[span.arc];
    const Point last = sense > 0 ? piece.to : piece.from;
    if (sense * cross(normal, last) < 1e-11 && dot(normal, last) > 0) continue;  // nothing left to turn
    const double length = lengthAlong(d) + t->run;
    if (dominated(span.arc, sense, length, d, labelOf(from_))) continue;
    push(length, estimate(w + radius_ * normal), d, 0, 2 * span.arc + (sense > 0));
  }
}

void RouteSearch::seePoint(Index target, const Cone& cone) {
  const Target& goal = targets_[target];
  if (disk_.radius == 0 && squaredLength(goal.at - disk_.centre) < 1e-12) {
    push(from_length_ + goal.offset, 0, cone.right, 0, ~target);
    return;
  }
  const auto t = tangent(disk_, {goal.at, 0}, 2 * kRounding_mm);
  if (t && within(cone, *t))
    push(lengthAlong(t->direction) + t->run + goal.offset, 0, t->direction, 0, ~target);
}

// The shortest way on from the source to a stretch of places: one minimum, found by golden section. If the
// cone does not show it, another source or cone does.
void RouteSearch::seeLanding(Index target, const Cone& cone) {
  const Landing& landing = targets_[target].landing;
  const auto cost = [&](double s) {
    const auto t = tangent(disk_, {landing.entry(s), 0}, 2 * kRounding_mm);
    if (!t) return disk_.radius == 0 ? from_length_ + landing.step(s) : 1e300;
    double turn = 0;
    if (disk_.radius != 0) turn = turnBetween(from_direction_, t->direction) * (disk_.radius > 0 ? 1 : -1);
    return from_length_ + radius_ * turn + t->run + landing.step(s);
  };
  const double best = leastOn01(cost);
  const Point p = landing.entry(best);
  const auto& tri = mesh_->triangles()[cone.triangle];
  for (int e = 0; e < 3; ++e) {
    const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
    if (cross(b - a, p - a) < -1e-3 * distance(a, b)) return;
  }
  if (disk_.radius == 0 && squaredLength(p - disk_.centre) < 1e-12) {
    push(from_length_ + landing.step(best), 0, cone.right, best, ~target);
    return;
  }
  const auto t = tangent(disk_, {p, 0}, 2 * kRounding_mm);
  if (t && within(cone, *t))
    push(lengthAlong(t->direction) + t->run + landing.step(best), 0, t->direction, best, ~target);
}

void RouteSearch::see(const Cone& cone) {
  for (const Turns::Span& span : turns_->inTriangle(cone.triangle)) seeArc(span, cone);
  for (Index i = target_first_[cone.triangle]; i != Mesh::kNone; i = target_next_[i]) {
    if (targets_[target_of_[i]].line) {
      seeLanding(target_of_[i], cone);
    } else {
      seePoint(target_of_[i], cone);
    }
  }
}

// Follows a cone through the triangles; what lies beyond the horizon is kept for later.
void RouteSearch::sweep(Cone first) {
  stack_.clear();
  stack_.push_back(first);
  while (!stack_.empty()) {
    const Cone cone = stack_.back();
    stack_.pop_back();
    see(cone);
    for (int e = 0; e < 3; ++e) {
      if (e == cone.entered) continue;
      const Turns::Gate& gate = turns_->gate(cone.triangle, e);
      if (gate.beyond == Mesh::kNone) continue;
      Cone next;
      if (!narrow(cone, disk_, gate, next)) continue;
      if (informed_ ? defer(next, gate) : far(next, gate, GateEnds::slotOf(cone.triangle, e))) continue;
      stack_.push_back(next);
    }
  }
}

void RouteSearch::keep(const Cone& cone, double key) {
  if (key > at_most_) return;
  heap_.push_back({key, kept_.put({cone, from_}), true});
  std::push_heap(heap_.begin(), heap_.end(), later);
}

// Keeps a cone for later if no target behind its gate can be reached within the horizon.
bool RouteSearch::defer(const Cone& cone, const Turns::Gate& gate) {
  double ahead = std::numeric_limits<double>::infinity();
  for (const Target& t : targets_) {
    const double to =
        t.line ? lineToLine(t.landing, gate) : distance(Segment{gate.right, gate.left}, t.at) + t.offset;
    ahead = std::min(ahead, to);
  }
  const double run = distance(Segment{gate.right, gate.left}, from_point_);
  const double key = from_length_ + run + ahead;
  if (key <= horizon_) return false;
  keep(cone, key);
  return true;
}

// Without few targets: drops a cone that comes too late to its gate, and keeps it for later if it is beyond
// the horizon.
bool RouteSearch::far(const Cone& cone, const Turns::Gate& gate, Index slot) {
  // Where the sides of the cone meet the gate.
  const auto meet = [&](Point direction) {
    const double slant = cross(gate.along, direction);
    const double size = dot(gate.left - gate.right, gate.along);
    if (std::abs(slant) < 1e-9) return -1.0;
    return std::clamp(cross(touch(disk_, direction) - gate.right, direction) / slant, 0.0, size);
  };
  double low = meet(cone.right), high = meet(cone.left);
  const double size = dot(gate.left - gate.right, gate.along);
  if (low < 0) low = 0;
  if (high < 0) high = size;
  const Point right = gate.right + low * gate.along, left = gate.right + high * gate.along;
  if (everywhere_) {
    // The walk to a point of the gate grows no faster from here than from the end of the gate, so the far
    // side decides.
    if (from_length_ + distance(from_point_, left) > reached_[slot] + high + kSureLater_mm) return true;
    if (from_length_ + distance(from_point_, right) > reached_[slot + 1] + (size - low) + kSureLater_mm)
      return true;
  }
  const double key = from_length_ + distance(Segment{right, left}, from_point_);
  if (key <= horizon_) return false;
  keep(cone, key);
  return true;
}

// Notes how soon the ends of gates on the state's arc are reached.
void RouteSearch::noteReached(const State& state) {
  const Region::Piece& piece = region_->pieces()[state.arc];
  const double at = turnBetween(piece.from, -state.sense * leftOf(state.direction));
  for (const GateEnds::OnArc& end : ends_->ofArc(state.arc)) {
    const double turn = state.sense * (end.angle - at);
    if (turn < 0) continue;
    double& reached = reached_[end.slot];
    if (reached == kInfinite) touched_slots_.push_back(end.slot);
    reached = std::min(reached, state.length + radius_ * turn);
  }
}

// Makes the walk that arrived at `from` the one whose cones are followed.
void RouteSearch::takeUp(Index from) {
  from_ = from;
  disk_ = diskOf(from);
  if (from < 0) {
    from_corner_ = Mesh::kNone;
    from_length_ = sources_[~from].offset;
    from_direction_ = {1, 0};
  } else {
    from_corner_ = region_->pieces()[states_[from].arc].corner;
    from_length_ = states_[from].length;
    from_direction_ = states_[from].direction;
  }
  from_point_ = touch(disk_, from_direction_);
}

// Takes up a cone that was kept, unless its gate has been reached sooner meanwhile.
void RouteSearch::follow(const Cone& cone) {
  if (!informed_) {
    const Turns::Gate& back = turns_->gate(cone.triangle, cone.entered);
    const Turns::Gate& gate = turns_->gate(back.beyond, back.entered);
    if (far(cone, gate, GateEnds::slotOf(back.beyond, back.entered))) return;
  }
  sweep(cone);
}

void RouteSearch::launch(const Source& source, Index index) {
  takeUp(~index);
  // Quarter turns all round: each a cone narrow enough for its sides to be told apart.
  for (int q = 0; q < 4; ++q) {
    const Point right = q == 0 ? Point{1, 0} : q == 1 ? Point{0, 1} : q == 2 ? Point{-1, 0} : Point{0, -1};
    sweep({source.triangle, -1, right, leftOf(right)});
  }
}

void RouteSearch::expand(Index index) {
  const State state = states_[index];
  const Region::Piece& piece = region_->pieces()[state.arc];
  takeUp(index);
  Point normal = -state.sense * leftOf(state.direction);
  // What arrives at the very beginning of the arc may lie a hair before it: then half a turn would be more than half.
  const Point first = state.sense > 0 ? piece.from : piece.to;
  if (state.sense * cross(normal, first) > 0 && dot(normal, first) > 0) normal = first;
  // A walk that arrived later round the arc, but sooner, serves the rest of it.
  Point low = state.sense > 0 ? normal : piece.from, high = state.sense > 0 ? piece.to : normal;
  for (Index i = state.same; i != Mesh::kNone; i = states_[i].same) {
    const Point other = -state.sense * leftOf(states_[i].direction);
    const double turn = state.sense * turnBetween(normal, other);
    if (turn <= 0 || state.length + radius_ * turn < states_[i].length) continue;
    if (state.sense > 0 ? cross(other, high) > 0 : cross(low, other) > 0)
      (state.sense > 0 ? high : low) = other;
  }
  for (const Turns::Span& span : turns_->ofArc(state.arc)) {
    // The common part of [low, high] and the span. All lie within half a turn, whose two ends are opposite:
    // neither side.
    if (cross(span.to, low) > 1e-9 || cross(high, span.from) > 1e-9) continue;
    const Point from = cross(span.from, low) > 0 ? low : span.from,
                to = cross(high, span.to) > 0 ? high : span.to;
    if (state.sense > 0) {
      sweep({span.triangle, -1, leftOf(from), leftOf(to)});
    } else {
      sweep({span.triangle, -1, -leftOf(from), -leftOf(to)});
    }
  }
}

// Whether the leg keeps the radius from every corner near it. That it crosses no wall, the triangles have
// shown.
bool RouteSearch::free(const Leg& leg) const {
  const Point p = touch(diskOf(leg.from), leg.direction);
  Point q;
  if (leg.to < 0) {
    const Target& t = targets_[~leg.to];
    q = t.line ? t.landing.entry(leg.at) : t.at;
  } else {
    const double r = (leg.to % 2 ? 1 : -1) * radius_;
    q = touch({mesh_->corners()[region_->pieces()[leg.to / 2].corner], r}, leg.direction);
  }
  const double least = (radius_ - kRounding_mm) * (radius_ - kRounding_mm);
  const Point u = q - p;
  const double size = squaredLength(u);
  return grid_->cornersNear(p, q, radius_, [&](Index c) {
    const Point v = mesh_->corners()[c] - p;
    const double t = size > 0 ? std::clamp(dot(v, u) / size, 0.0, 1.0) : 0.0;
    return squaredLength(v - t * u) >= least;
  });
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
    reached_.resize(6 * mesh_->triangles().size(), kInfinite);
  }
  for (std::size_t i = 0; i < sources_.size(); ++i) launch(sources_[i], static_cast<Index>(i));
}

template <class Found>
void RouteSearch::run(double at_most, Found found) {
  at_most_ = at_most;
  horizon_ = 0;
  start();
  while (!heap_.empty()) {
    std::pop_heap(heap_.begin(), heap_.end(), later);
    const Next next = heap_.back();
    heap_.pop_back();
    if (next.key > at_most_) return;
    horizon_ = std::max(horizon_, next.key + kHorizon_mm);
    if (next.kept) {
      const Kept kept = kept_.take(next.slot);
      takeUp(kept.from);
      follow(kept.cone);
      continue;
    }
    const Leg leg = legs_.take(next.slot);
    if (leg.to >= 0) {
      arrive(leg);
    } else if (free(leg)) {
      found(leg);
    }
  }
}

// Goes on from the arc that the leg leads to, if the leg is allowed and no walk was there sooner.
void RouteSearch::arrive(const Leg& leg) {
  const Index arc = leg.to / 2;
  const int sense = leg.to % 2 ? 1 : -1, label = labelOf(leg.from);
  if (dominated(arc, sense, leg.length, leg.direction, label) || !free(leg)) return;
  const auto index = static_cast<Index>(states_.size());
  if (state_first_[leg.to] == Mesh::kNone) touched_states_.push_back(leg.to);
  const Point centre = mesh_->corners()[region_->pieces()[arc].corner];
  states_.push_back({arc, sense, leg.length, leg.direction, centre, leg.from, state_first_[leg.to], label});
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
  Index i = leg.from;
  for (; i >= 0; i = states_[i].parent)
    route.turns.push_back({region_->pieces()[states_[i].arc].corner, states_[i].sense});
  std::reverse(route.turns.begin(), route.turns.end());
  route.source = sources_[~i].label;
  route.start = sources_[~i].at;
}

std::optional<Route> RouteSearch::nearest(double at_most) {
  std::optional<Leg> best;
  everywhere_ = false;
  run(at_most, [&](const Leg& leg) {
    if (!best || targets_[~leg.to].label < targets_[~best->to].label) best = leg;
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
  run(std::numeric_limits<double>::infinity(), [&](const Leg& leg) {
    auto& best = last[targets_[~leg.to].label];
    if (!best) {
      if (--open == 0) at_most_ = leg.length + kSameLength_mm;
    } else if (leg.length > best->length + kSameLength_mm || labelOf(leg.from) >= labelOf(best->from)) {
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
