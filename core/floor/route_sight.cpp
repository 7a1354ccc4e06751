// What a cone shows: arcs and targets in one triangle, and the legs to them.
#include <algorithm>
#include <cmath>

#include "core/floor/route_search.h"

namespace stopwalk::floor {

using geometry::after;
using geometry::before;

namespace {

// Where between `from` and `to`, at which `side` has other signs, it changes its sign.
template <class Side>
double between01(Side side, double from, double to) {
  const bool begins = side(from) > 0;
  for (int i = 0; i < 60; ++i) {
    const double middle = (from + to) / 2;
    ((side(middle) > 0) == begins ? from : to) = middle;
  }
  return (from + to) / 2;
}

}  // namespace

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
bool RouteSearch::dominated(Index arc, int sense, double length, Point direction, int label) {
  close_ = false;
  for (Index i = state_first_[2 * arc + (sense > 0)]; i != Mesh::kNone; i = states_[i].same) {
    // A turn is at most half a one: by more than four radii sooner, it is neither behind nor as long.
    if (length - states_[i].length < -4 * radius_) continue;
    const double turn = sense * turnBetween(states_[i].direction, direction);
    const double behind = length - (states_[i].length + radius_ * turn);
    close_ |= std::abs(behind) <= kSameLength_mm && states_[i].label == label;
    if (turn < -1e-9) continue;
    if (behind > kSameLength_mm || (behind >= -kSameLength_mm && states_[i].label <= label)) return true;
  }
  // Round the other way to the same point: what is longer there is no shortest walk.
  const Point normal = -sense * leftOf(direction);
  for (Index i = state_first_[2 * arc + (sense < 0)]; i != Mesh::kNone; i = states_[i].same) {
    if (states_[i].length >= length) continue;
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
  heap_.push_back({length + ahead, legs_.put({length, direction, at, from_, to})});
  std::push_heap(heap_.begin(), heap_.end(), std::greater<>());
}

void RouteSearch::seeArc(const Turns::Span& span, const Cone& cone) {
  if (span.corner == from_corner_) return;
  // Turning left, a walk comes in at right angles to a place of the span: its direction, a quarter turn on
  // from there, must be one of the cone. Turning right, a quarter turn back.
  const double of_left = dot(span.from, cone.left), of_right = dot(span.to, cone.right);
  const bool may_turn_left = of_left < kWidestDoubt && of_right > -kWidestDoubt,
             may_turn_right = of_left > -kWidestDoubt && of_right < kWidestDoubt;
  if (!may_turn_left && !may_turn_right) return;
  const Point w = span.centre, to = w - disk_.centre;
  // While the corner lies ahead of both sides of a narrow cone, its offset falls from the right side to the
  // left.
  const bool falls = dot(cone.right, cone.left) > 0.5 && dot(to, cone.right) > 0 && dot(to, cone.left) > 0;
  const double most = falls ? cross(cone.right, to) + disk_.radius + kDrift_mm : 1e300;
  const double least = falls ? cross(cone.left, to) + disk_.radius - kDrift_mm : -1e300;
  for (int sense : {1, -1}) {
    if (!(sense > 0 ? may_turn_left : may_turn_right)) continue;
    if (sense * radius_ > most || sense * radius_ < least) continue;
    const auto t = tangent(disk_, {w, sense * radius_}, kRounding_mm);
    if (!t || !within(cone, *t)) continue;
    const Point d = t->direction, normal = -sense * leftOf(d);
    if (!between(span.from, normal, span.to, 1e-9 + doubt(t->run))) continue;
    const Region::Piece& piece = region_->pieces()[span.arc];
    const Point last = sense > 0 ? piece.to : piece.from;
    if (sense * cross(normal, last) < 1e-11 && dot(normal, last) > 0) continue;  // nothing left to turn
    const double length = lengthAlong(d) + t->run;
    const Index arrival = 2 * span.arc + (sense > 0);
    if (dominated(span.arc, sense, length, d, labelOf(from_))) {
      if (close_) noteTies({length, d, 0, from_, arrival});
      continue;
    }
    push(length, estimate(w + radius_ * normal), d, 0, arrival);
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

// The shortest way on to a stretch of places, or the nearest to it that the cone shows: the very edge of the
// cone may be the shortest, as where the way runs along a wall and meets a bar at right angles.
void RouteSearch::seeLanding(Index target, const Cone& cone) {
  const Landing& landing = targets_[target].landing;
  const double best = nearestOn(landing, disk_, from_direction_, from_length_);
  seeEntry(target, cone, best);
  for (const Point edge : {cone.right, cone.left}) {
    const Point origin = touch(disk_, edge);
    const auto side = [&](double s) { return cross(edge, landing.entry(s) - origin); };
    const bool is_beyond = edge == cone.right ? side(best) < 0 : side(best) > 0;
    if (!is_beyond) continue;
    for (const double end : {0.0, 1.0})
      if (side(end) * side(best) < 0) seeEntry(target, cone, between01(side, best, end));
  }
}

void RouteSearch::seeEntry(Index target, const Cone& cone, double at) {
  const Landing& landing = targets_[target].landing;
  const Point p = landing.entry(at);
  const auto& tri = mesh_->triangles()[cone.triangle];
  for (int e = 0; e < 3; ++e) {
    const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
    if (cross(b - a, p - a) < -1e-3 * distance(a, b)) return;
  }
  if (disk_.radius == 0 && squaredLength(p - disk_.centre) < 1e-12) {
    push(from_length_ + landing.step(at), 0, cone.right, at, ~target);
    return;
  }
  const auto t = tangent(disk_, {p, 0}, 2 * kRounding_mm);
  if (t && within(cone, *t))
    push(lengthAlong(t->direction) + t->run + landing.step(at), 0, t->direction, at, ~target);
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

}  // namespace stopwalk::floor
