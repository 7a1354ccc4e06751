// Walks that start from a whole stretch of places: its ends are sources like others, and what lies between
// sends out a beam of straight lines side by side. A walk from within the stretch to a target or to its first
// arc is one of these lines.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/floor/route_search.h"

namespace stopwalk::floor {

using geometry::after;
using geometry::before;

namespace {

constexpr double kFlat_mm = 1e-3;    // a stretch of entries shorter than this is a point
constexpr double kLinear_mm = 1e-6;  // a step that bends less than this grows evenly
constexpr double kBeside_mm = 1e-5;  // what lies beside a beam by less is in it
constexpr double kSpacing_mm = 1;    // of points that stand for a stretch that sends no beam
constexpr double kQuarterDegree = std::numbers::pi / 720;

bool growsEvenly(const Landing& l) {
  return std::abs(l.step(0.5) - (l.step(0) + l.step(1)) / 2) < kLinear_mm;
}

}  // namespace

void RouteSearch::addSource(const Landing& landing, int label) {
  const Point begin = landing.entry(0), end = landing.entry(1);
  const double size = distance(begin, end);
  if (size < kFlat_mm) return addSource(begin, distance(Segment{landing.a, landing.b}, begin), label);
  if (landing.kind == Landing::Kind::Round || !growsEvenly(landing)) return addPoints(landing, label);
  addSource(begin, landing.step(0), label);
  addSource(end, landing.step(1), label);
  const Point along = (1 / size) * (end - begin);
  const double growth = (landing.step(1) - landing.step(0)) / size;
  const double aside = 1 - growth * growth;
  if (aside < kLinear_mm) return;  // an end is nearest
  for (const double side : {1.0, -1.0}) {
    const Point direction = growth * along + side * std::sqrt(aside) * leftOf(along);
    beams_.push_back({begin, along, direction, size, landing.step(0), growth, label, trianglesOf(landing)});
  }
}

// So dense that a walk from the nearest of them is longer by less than a hundredth of a millimetre.
void RouteSearch::addPoints(const Landing& landing, int label) {
  double count = distance(landing.entry(0), landing.entry(1)) / kSpacing_mm;
  if (landing.kind == Landing::Kind::Round)
    count = std::abs(turnBetween(landing.a - landing.centre, landing.b - landing.centre)) / kQuarterDegree;
  const int pieces = static_cast<int>(count) + 1;
  for (int i = 0; i <= pieces; ++i) {
    const double s = double(i) / pieces;
    addSource(landing.entry(s), landing.step(s), label);
  }
}

// Follows the beam through the triangles until walls have taken all of it.
void RouteSearch::shine(const Beam& beam) {
  std::vector<Strip> strips;
  for (const Index triangle : beam.triangles)
    if (const auto strip = stripIn(beam, triangle)) strips.push_back(*strip);
  while (!strips.empty()) {
    const Strip strip = strips.back();
    strips.pop_back();
    see(beam, strip);
    Strip next;
    const auto [first, last] = turns_->gatesOf(strip.triangle);
    for (Index out = first; out < last; ++out)
      if (goOn(beam, strip, out, next)) strips.push_back(next);
  }
}

// The part of the stretch that lies in the triangle.
std::optional<RouteSearch::Strip> RouteSearch::stripIn(const Beam& beam, Index triangle) const {
  const auto& tri = mesh_->triangles()[triangle];
  double low = 0, high = beam.size;
  for (int e = 0; e < 3; ++e) {
    const Point a = mesh_->corners()[tri.corner[after(e)]], b = mesh_->corners()[tri.corner[before(e)]];
    const Point edge = (1 / distance(a, b)) * (b - a);
    // Inside where `at + x * rise` is not negative.
    const double at = cross(edge, beam.from - a) + kBeside_mm, rise = cross(edge, beam.along);
    if (std::abs(rise) < 1e-12) {
      if (at < 0) return std::nullopt;
    } else if (rise > 0) {
      low = std::max(low, -at / rise);
    } else {
      high = std::min(high, -at / rise);
    }
  }
  if (low > high) return std::nullopt;
  return Strip{triangle, Mesh::kNone, low, high};
}

// What of the strip passes the gate outwards.
bool RouteSearch::goOn(const Beam& beam, const Strip& strip, Index out, Strip& next) const {
  if (out == strip.entered) return false;
  const Turns::Gate& gate = turns_->gates()[out];
  if (dot(beam.direction, -leftOf(gate.along)) <= 0) return false;
  const double x = beam.lateral(gate.right), y = beam.lateral(gate.left);
  next = {gate.beyond, gate.back, std::max(strip.low, std::min(x, y)), std::min(strip.high, std::max(x, y))};
  return next.low <= next.high + kBeside_mm;
}

// Makes the place along the stretch the one that legs leave from; the length of the step to it.
double RouteSearch::leave(const Beam& beam, double at) {
  at = std::clamp(at, 0.0, beam.size);
  const double step = beam.step + at * beam.growth;
  sources_.push_back({beam.from + at * beam.along, step, beam.label, Mesh::kNone});
  takeUp(~static_cast<Index>(sources_.size() - 1));
  return step;
}

void RouteSearch::see(const Beam& beam, const Strip& strip) {
  const auto inside = [&](Point p) {
    const double x = beam.lateral(p);
    return x >= strip.low - kBeside_mm && x <= strip.high + kBeside_mm && beam.run(p) >= -kBeside_mm;
  };
  for (Index i = target_first_[strip.triangle]; i != Mesh::kNone; i = target_next_[i]) {
    const Index target = target_of_[i];
    const Point p = targets_[target].at;
    if (targets_[target].line || !inside(p)) continue;
    const double step = leave(beam, beam.lateral(p));
    push(step + std::max(beam.run(p), 0.0) + targets_[target].offset, 0, beam.direction, 0, ~target);
  }
  for (const Turns::Span& span : turns_->inTriangle(strip.triangle)) {
    const Region::Piece& piece = region_->pieces()[span.arc];
    for (const int sense : {1, -1}) {
      const Point normal = -sense * leftOf(beam.direction), p = span.centre + radius_ * normal;
      if (!between(span.from, normal, span.to, 1e-9) || !inside(p)) continue;
      const Point last = sense > 0 ? piece.to : piece.from;
      if (sense * cross(normal, last) < 1e-11 && dot(normal, last) > 0) continue;  // nothing left to turn
      const double step = leave(beam, beam.lateral(p));
      push(step + std::max(beam.run(p), 0.0), 0, beam.direction, 0, 2 * span.arc + (sense > 0));
    }
  }
}

}  // namespace stopwalk::floor
