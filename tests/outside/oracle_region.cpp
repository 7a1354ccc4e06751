#include "tests/outside/oracle_region.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stopwalk::outside {
namespace {

using namespace geometry;

// W(c) is built this much smaller than c (docs/measuring.md), so that a gap of exactly 2c is open.
constexpr double kBuildLess_mm = 0.0005;
constexpr double kLongestStep_mm = 1000;
// Nearer than this, a place is taken to lie on an edge, not beside it.
constexpr double kOnEdge_mm = 1e-6;
// Steps that differ by less are equally long; by less than a hair, the chords cannot tell which is shorter.
constexpr double kEqual_mm = 1e-6;
constexpr double kHair_mm = 0.05;
// The points of a part that are nearest to within the first lie in a patch narrower than the second, or the
// nearest is in doubt.
constexpr double kAboutAsNear_mm = 0.1;
constexpr double kNarrowChoice_mm = 60;

Point nearestOn(const Segment& s, Point p) {
  const Point along = s.b - s.a;
  const double t =
      squaredLength(along) > 0 ? std::clamp(dot(p - s.a, along) / squaredLength(along), 0.0, 1.0) : 0;
  return s.a + t * along;
}

double distanceTo(const Segment& s, Point p) {
  return distance(nearestOn(s, p), p);
}

void addEdges(const Polygon& outline, std::vector<Segment>& edges) {
  for (std::size_t i = 0; i < outline.size(); ++i)
    edges.push_back({outline[i], outline[(i + 1) % outline.size()]});
}

// By counting crossings; what lies on the outline may be told either way.
bool inside(const Polygon& outline, Point p) {
  bool in = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const Point a = outline[i], b = outline[j];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)) in = !in;
  }
  return in;
}

bool onOutline(const Polygon& outline, Point p) {
  std::vector<Segment> edges;
  addEdges(outline, edges);
  return std::ranges::any_of(edges, [&](const Segment& e) { return distanceTo(e, p) <= kOnEdge_mm; });
}

Polygon passageOutline(const floor::Passage& passage) {
  return {passage.first.a, passage.first.b, passage.second.b, passage.second.a};
}

bool inRoomOrPassage(const floor::Plan& plan, Point p) {
  const auto holds = [&](const Polygon& outline) {
    return !outline.empty() && (inside(outline, p) || onOutline(outline, p));
  };
  return std::ranges::any_of(plan.rooms, holds) ||
         std::ranges::any_of(plan.passages,
                             [&](const floor::Passage& passage) { return holds(passageOutline(passage)); });
}

Polygon boxAround(const std::vector<Segment>& edges, double margin) {
  constexpr double kFar = std::numeric_limits<double>::infinity();
  Point low{kFar, kFar}, high{-kFar, -kFar};
  for (const Segment& e : edges)
    for (const Point p : {e.a, e.b}) {
      low = {std::min(low.x, p.x), std::min(low.y, p.y)};
      high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
  low = low - Point{margin, margin};
  high = high + Point{margin, margin};
  return {low, {high.x, low.y}, high, {low.x, high.y}};
}

// What cannot be seen from `eye` behind the edge, out to beyond the longest step.
std::optional<Shape> shadowOf(const Segment& edge, Point eye) {
  const double reach = distanceTo(edge, eye);
  if (reach <= kOnEdge_mm || reach > kLongestStep_mm) return std::nullopt;
  if (std::abs(cross(edge.a - eye, edge.b - eye)) < 1e-6 * distance(edge.a, edge.b)) return std::nullopt;
  const auto beyond = [&](Point p) { return eye + (8 * kLongestStep_mm / distance(p, eye)) * (p - eye); };
  // A long edge seen edge-on fans out by almost half a turn: one more corner keeps the quadrilateral beyond
  // reach.
  const Point between = unit(unit(edge.a - eye) + unit(edge.b - eye));
  return polygonShape({edge.a, edge.b, edge.b + (beyond(edge.b) - eye), eye + 1e6 * between,
                       edge.a + (beyond(edge.a) - eye)});
}

// What a landing keeps its clearance from: the nearest point of a wall or solid, a corner of it or not.
struct Feature {
  Point at;
  bool corner;
};

std::vector<Feature> featuresOf(const floor::Plan& plan, Point landing, double clearance) {
  std::vector<Feature> found;
  for (const Segment& edge : everyEdge(plan)) {
    if (std::abs(distanceTo(edge, landing) - clearance) > kHair_mm) continue;
    const Point at = nearestOn(edge, landing);
    if (std::ranges::any_of(found, [&](const Feature& f) { return distance(f.at, at) < kOnEdge_mm; }))
      continue;
    found.push_back({at, distance(at, edge.a) < kOnEdge_mm || distance(at, edge.b) < kOnEdge_mm});
  }
  return found;
}

// Where exactly `clearance` is kept from both, near `landing`.
Point notchOf(Feature f, Feature g, Point landing, double clearance) {
  Point p = landing;
  for (int i = 0; i < 10; ++i) {
    const Point u = unit(p - f.at), v = unit(p - g.at);
    if (std::abs(cross(u, v)) < 0.05) return landing;
    const double a = clearance - (f.corner ? distance(p, f.at) : dot(p - f.at, unit(landing - f.at)));
    const double b = clearance - (g.corner ? distance(p, g.at) : dot(p - g.at, unit(landing - g.at)));
    p = p + (1 / cross(u, v)) * (a * Point{v.y, -v.x} - b * Point{u.y, -u.x});
  }
  return p;
}

// The landing on chords taken onto the true arc: straight from the corner, into the notch between two, or
// along the view. In doubt where it slides along a chord to the end of what is seen, for the arc's own
// nearest point lies elsewhere.
Step ontoTrueArc(const floor::Plan& plan, Point from, const Shape& near, double clearance,
                 const Shape& seen) {
  const Point landing = nearestPointOf(near, from);
  const auto step = [&](Point to, bool doubtful) { return Step{to, distance(from, to), doubtful}; };
  const std::vector<Feature> features = featuresOf(plan, landing, clearance);
  for (const Feature& f : features) {
    if (!f.corner || distance(f.at, from) < kOnEdge_mm) continue;
    const Point on_arc = f.at + (clearance / distance(f.at, from)) * (from - f.at);
    const double half_chord = clearance * std::numbers::pi / 4 / kChordsAQuarter;
    if (distance(on_arc, landing) > 1.1 * half_chord || distanceToAll(plan, on_arc) < clearance - 0.001)
      continue;
    if (outside::distanceTo(seen, on_arc) < 0.05) return step(on_arc, false);
  }
  if (std::ranges::none_of(features, &Feature::corner)) return step(landing, false);
  if (features.size() > 1)
    return step(notchOf(features[0], features[1], landing, clearance), features.size() > 2);
  const auto [low, high] =
      bounds(intersection(near, diskShape(from, distance(from, landing) + kHair_mm, 4 * kChordsAQuarter)));
  return step(landing, distance(low, high) > 0.5);
}

// The part of `part` within a step's length that is seen from `from`.
Shape seenOf(const floor::Plan& plan, Point from, const Shape& part) {
  std::vector<Shape> hidden;
  for (const Segment& edge : everyEdge(plan))
    if (auto shadow = shadowOf(edge, from)) hidden.push_back(std::move(*shadow));
  const Shape near = intersection(part, diskShape(from, 1.01 * kLongestStep_mm, 16));
  return difference(near, unionOf(std::move(hidden)));
}

// The nearest, and those as near to rounding; a rival that is nearer or farther by a hair only makes the
// choice doubtful.
std::vector<Step> nearestOf(std::vector<Step> steps) {
  std::erase_if(steps, [](const Step& s) { return s.length > kLongestStep_mm; });
  if (steps.empty()) return steps;
  const double least = std::ranges::min(steps, {}, &Step::length).length;
  const bool rival = std::ranges::any_of(
      steps, [&](const Step& s) { return s.length > least + kEqual_mm && s.length < least + kHair_mm; });
  std::erase_if(steps, [&](const Step& s) { return s.length > least + kEqual_mm; });
  for (Step& s : steps) s.doubtful = s.doubtful || rival;
  return steps;
}

}  // namespace

std::vector<Segment> everyEdge(const floor::Plan& plan) {
  std::vector<Segment> edges = plan.walls;
  for (const floor::Solid& solid : plan.solids) addEdges(solid.outline, edges);
  return edges;
}

bool onFloor(const floor::Plan& plan, Point p) {
  const auto holds = [&](const floor::Solid& solid) {
    return inside(solid.outline, p) && !onOutline(solid.outline, p);
  };
  return inRoomOrPassage(plan, p) && std::ranges::none_of(plan.solids, holds);
}

double distanceToAll(const floor::Plan& plan, Point p) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const Segment& edge : everyEdge(plan)) nearest = std::min(nearest, distanceTo(edge, p));
  return nearest;
}

OracleRegion::OracleRegion(const floor::Plan& plan, double clearance, Chords chords, int chords_a_quarter) {
  double radius = clearance - kBuildLess_mm;
  if (chords == Chords::OutsideArc) radius /= std::cos(std::numbers::pi / 4 / chords_a_quarter);
  const std::vector<Segment> edges = everyEdge(plan);
  std::vector<Shape> near;
  for (const Segment& edge : edges) near.push_back(capsuleShape(edge, radius, chords_a_quarter));
  const Polygon box = boxAround(edges, 3 * radius);
  for (Piece& piece : piecesOf(difference(polygonShape(box), unionOf(std::move(near))))) {
    Shape shape = pieceShape(piece);
    const bool open_end = std::ranges::find(piece.outer, box[0]) != piece.outer.end();
    const Point p = somePointOf(shape);
    if (!onFloor(plan, p)) continue;
    leaks_ = leaks_ || open_end;
    parts_.push_back(std::move(piece));
    shapes_.push_back(std::move(shape));
  }
}

Shape OracleRegion::whole() const {
  std::vector<Shape> copies;
  for (const Piece& part : parts_) copies.push_back(pieceShape(part));
  return unionOf(std::move(copies));
}

std::optional<std::size_t> OracleRegion::partAt(Point p) const {
  for (std::size_t i = 0; i < shapes_.size(); ++i)
    if (covers(shapes_[i], p)) return i;
  return std::nullopt;
}

std::vector<Step> stepsTo(const floor::Plan& plan, Point from, const Shape& part, double clearance) {
  if (outside::distanceTo(part, from) > kLongestStep_mm) return {};
  const Shape seen = seenOf(plan, from, part);
  if (area(seen) < 1e-6) return {};
  const double about = distance(from, nearestPointOf(seen, from));
  std::vector<Step> steps;
  for (const Piece& near :
       piecesOf(intersection(seen, diskShape(from, about + kAboutAsNear_mm, kChordsAQuarter)))) {
    const Shape shape = pieceShape(near);
    Step step = ontoTrueArc(plan, from, shape, clearance, seen);
    const auto [low, high] = bounds(shape);
    step.doubtful = step.doubtful || distance(low, high) > kNarrowChoice_mm;
    steps.push_back(step);
  }
  return nearestOf(std::move(steps));
}

}  // namespace stopwalk::outside
