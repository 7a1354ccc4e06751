// Cones followed through the triangles, from a source or from an arc that was reached.
#include <algorithm>
#include <cmath>

#include "core/floor/route_search.h"

namespace stopwalk::floor {

namespace {

// A walk later than another by more is later, whatever rounding did.
constexpr double kSureLater_mm = 0.01;
// What is reached sooner otherwise is cut off a cone where it is wider than this.
constexpr double kWorthCutting_mm = 10;

// A lower bound of the distance from a gate to a stretch of places.
double lineToLine(const Landing& landing, const Turns::Gate& gate) {
  const Point a = landing.a, b = landing.b;
  if (cross(gate.along, a - gate.right) * cross(gate.along, b - gate.right) <= 0) return 0;
  return std::min({distance(Segment{gate.right, gate.left}, a), distance(Segment{gate.right, gate.left}, b),
                   distance(Segment{a, b}, gate.right), distance(Segment{a, b}, gate.left)});
}

}  // namespace

// Follows a cone through the triangles; what lies beyond the horizon is kept for later.
void RouteSearch::sweep(Cone begin) {
  stack_.clear();
  stack_.push_back(begin);
  while (!stack_.empty()) {
    const Cone cone = stack_.back();
    stack_.pop_back();
    see(cone);
    const auto [first, last] = turns_->gatesOf(cone.triangle);
    for (Index out = first; out < last; ++out) {
      if (out == cone.entered) continue;
      const Turns::Gate& gate = turns_->gates()[out];
      Cone next;
      if (!narrow(cone, disk_, gate, next)) continue;
      if (informed_ ? defer(next, gate) : far(next, out)) continue;
      stack_.push_back(next);
    }
  }
}

void RouteSearch::keep(const Cone& cone, double key) {
  if (key > at_most_ || key == std::numeric_limits<double>::infinity()) return;
  kept_.put(key, {cone, from_});
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

// How far from an end of a gate, reached at `reached`, along it every point is reached sooner by way of that
// end than from where the cones in hand come from: the walk there grows no faster than the place moves along.
double RouteSearch::soonerUpTo(Point end, Point along, double reached) const {
  const double ahead = reached + kSureLater_mm - from_length_;
  if (ahead == std::numeric_limits<double>::infinity()) return -ahead;
  const Point to = from_point_ - end;
  const double grows = ahead + dot(to, along);
  if (grows <= 0) return std::numeric_limits<double>::infinity();
  return (squaredLength(to) - ahead * ahead) / (2 * grows);
}

// Without few targets: drops a cone that comes too late to its gate, and keeps it for later if it is beyond
// the horizon.
bool RouteSearch::far(Cone& cone, Index out) {
  const Turns::Gate& gate = turns_->gates()[out];
  const double size = dot(gate.left - gate.right, gate.along);
  // Where the sides of the cone meet the gate.
  const auto meet = [&](Point direction) {
    const double slant = cross(gate.along, direction);
    if (std::abs(slant) < 1e-9) return -1.0;
    return std::clamp(cross(touch(disk_, direction) - gate.right, direction) / slant, 0.0, size);
  };
  double low = meet(cone.right), high = meet(cone.left);
  if (low < 0) low = 0;
  if (high < 0) high = size;
  if (everywhere_) {
    const double sooner_right = soonerUpTo(gate.right, gate.along, reached_[GateEnds::rightSlot(out)]),
                 sooner_left = size - soonerUpTo(gate.left, -gate.along, reached_[GateEnds::leftSlot(out)]);
    if (std::max(low, sooner_right) > std::min(high, sooner_left)) return true;
    if (sooner_right > low + kWorthCutting_mm) {
      low = sooner_right;
      if (const auto t = tangent(disk_, {gate.right + low * gate.along, 0}, 0)) cone.right = t->direction;
    }
    if (sooner_left < high - kWorthCutting_mm) {
      high = sooner_left;
      if (const auto t = tangent(disk_, {gate.right + high * gate.along, 0}, 0)) cone.left = t->direction;
    }
  }
  const Point from = from_point_ - gate.right;
  const double at = dot(from, gate.along), aside = std::max({low - at, at - high, 0.0});
  const double key = from_length_ + length(Point{aside, cross(from, gate.along)});
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
    for (const Index slot : end.slots) {
      if (reached_[slot] == std::numeric_limits<double>::infinity()) touched_slots_.push_back(slot);
      reached_[slot] = std::min(reached_[slot], state.length + radius_ * turn);
    }
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
    from_corner_ = states_[from].corner;
    from_length_ = states_[from].length;
    from_direction_ = states_[from].direction;
  }
  from_point_ = touch(disk_, from_direction_);
}

// Takes up a cone that was kept, unless its gate has been reached sooner meanwhile.
void RouteSearch::follow(Cone cone) {
  if (!informed_ && far(cone, turns_->gates()[cone.entered].back)) return;
  sweep(cone);
}

void RouteSearch::launch(const Source& source, Index index) {
  takeUp(~index);
  // Quarter turns all round: each a cone narrow enough for its sides to be told apart.
  for (int q = 0; q < 4; ++q) {
    const Point right = q == 0 ? Point{1, 0} : q == 1 ? Point{0, 1} : q == 2 ? Point{-1, 0} : Point{0, -1};
    sweep({source.triangle, Mesh::kNone, right, leftOf(right)});
  }
}

void RouteSearch::expand(Index index) {
  const State state = states_[index];
  const Region::Piece& piece = region_->pieces()[state.arc];
  takeUp(index);
  Point normal = -state.sense * leftOf(state.direction);
  // What arrives at the very beginning of the arc may lie a hair before it: then half a turn would be more
  // than half.
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
  turns_->ofArc(state.arc, [&](const Turns::Span& span) {
    // The common part of [low, high] and the span. All lie within half a turn, whose two ends are opposite:
    // neither side.
    if (cross(span.to, low) > 1e-9 || cross(high, span.from) > 1e-9) return;
    const Point from = cross(span.from, low) > 0 ? low : span.from,
                to = cross(high, span.to) > 0 ? high : span.to;
    if (state.sense > 0) {
      sweep({span.triangle, Mesh::kNone, leftOf(from), leftOf(to)});
    } else {
      sweep({span.triangle, Mesh::kNone, -leftOf(from), -leftOf(to)});
    }
  });
}

}  // namespace stopwalk::floor
