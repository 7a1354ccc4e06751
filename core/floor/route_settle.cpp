// What of a route found must not be left to the order of the search, which hangs on triangles far away:
// corners that are only touched, the place on a line where it ends, and whether another route is as short.
#include <algorithm>
#include <cmath>

#include "core/floor/route_search.h"

namespace stopwalk::floor {

namespace {

// A way from a place to the same turns at nothing.
constexpr double kSamePlace_mm = 1e-4;

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

}  // namespace

double nearestOn(const Landing& landing, const Disk& disk, Point arriving, double length) {
  return leastOn01([&](double s) {
    const auto t = tangent(disk, {landing.entry(s), 0}, 2 * kRounding_mm);
    if (!t) return disk.radius == 0 ? length + landing.step(s) : 1e300;
    double turn = 0;
    if (disk.radius != 0) turn = turnBetween(arriving, t->direction) * (disk.radius > 0 ? 1 : -1);
    return length + std::abs(disk.radius) * turn + t->run + landing.step(s);
  });
}

Disk RouteSearch::diskOf(const Turn& turn) const {
  return {mesh_->corners()[turn.corner], turn.sense * radius_};
}

// Leaves out the corners that are only touched: of a row of them, now these are in the way found, now those.
void RouteSearch::straighten(Route& route, bool may_touch) const {
  if (distance(route.start, route.end) < kSamePlace_mm) route.turns.clear();
  if (!may_touch) return;
  const auto disk = [&](std::ptrdiff_t i) {
    if (i < 0) return Disk{route.start, 0};
    return i < std::ssize(route.turns) ? diskOf(route.turns[i]) : Disk{route.end, 0};
  };
  for (std::ptrdiff_t i = 0; i < std::ssize(route.turns);) {
    const Disk before = disk(i - 1), here = disk(i), after = disk(i + 1);
    const auto in = tangent(before, here, 2 * kRounding_mm), out = tangent(here, after, 2 * kRounding_mm);
    if (!in || !out || !isHardlyTurned(in->direction, out->direction)) {
      ++i;
      continue;
    }
    const auto past = tangent(before, after, 2 * kRounding_mm);
    if (!past || !keepsClear(touch(before, past->direction), touch(after, past->direction))) {
      ++i;
      continue;
    }
    route.turns.erase(route.turns.begin() + i);
    i = std::max<std::ptrdiff_t>(i - 1, 0);
  }
}

// Where it ends on a line, from the last turn on alone: the length before, as it was summed, would move it.
void RouteSearch::settle(const Landing& landing, Route& route) const {
  Disk last{route.start, 0};
  Point arriving{1, 0};
  for (const Turn& turn : route.turns) {
    const Disk next = diskOf(turn);
    if (const auto t = tangent(last, next, 2 * kRounding_mm)) arriving = t->direction;
    last = next;
  }
  route.landing_at = nearestOn(landing, last, arriving, 0);
  route.end = landing.entry(route.landing_at);
}

// Whether two walks that go on in these directions turned last at the same corner.
bool RouteSearch::comesFrom(Index one, Point one_direction, Index other, Point other_direction) const {
  const auto last = [&](Index i, Point d) {
    while (i >= 0 && isHardlyTurned(states_[i].direction, d)) i = states_[i].parent;
    return i;
  };
  one = last(one, one_direction);
  other = last(other, other_direction);
  if (one < 0 || other < 0) return one == other;
  return states_[one].arc == states_[other].arc && states_[one].sense == states_[other].sense;
}

// Marks the walks to the same arc that are as long as the leg's and go elsewhere; whether there are any.
bool RouteSearch::noteTies(const Leg& leg) {
  bool tied = false;
  const int sense = leg.to % 2 ? 1 : -1, label = labelOf(leg.from);
  for (Index i = state_first_[leg.to]; i != Mesh::kNone; i = states_[i].same) {
    State& other = states_[i];
    const double turn = sense * turnBetween(other.direction, leg.direction);
    if (other.label != label || std::abs(leg.length - (other.length + radius_ * turn)) > kSameLength_mm)
      continue;
    if (comesFrom(leg.from, leg.direction, other.parent, other.direction)) continue;
    if (!tied && !free(leg)) return false;
    tied = other.tied = true;
  }
  return tied;
}

}  // namespace stopwalk::floor
