#include "core/floor/obstacles.h"

#include <algorithm>
#include <tuple>

namespace stopwalk::floor {

namespace {

using namespace geometry;

// A stretch of the line that is closed on one side; on neither: a wall runs along it.
struct Closed {
  Stretch stretch;
  bool left = false, right = false;
  Obstacles::Obstacle by;
};

void addSolid(Segment line, const IndexedPolygon& polygon, Obstacles::Obstacle by,
              std::vector<Closed>& closed) {
  for (const Stretch& s : insideAlong(line, kTouch_mm, polygon)) closed.push_back({s, true, false, by});
  for (const Stretch& s : insideAlong(line, -kTouch_mm, polygon)) closed.push_back({s, false, true, by});
}

// What a wall closes of the line between `low` and `high` along it, of the wall's coordinates in the line's
// frame.
std::optional<Closed> closedByWall(Segment wall, double low, double high) {
  Closed closed{{}, std::max(wall.a.y, wall.b.y) > kTouch_mm, std::min(wall.a.y, wall.b.y) < -kTouch_mm, {}};
  if (closed.left && closed.right) {
    const double x = wall.a.x + wall.a.y / (wall.a.y - wall.b.y) * (wall.b.x - wall.a.x);
    if (x < low || x > high) return std::nullopt;
    closed.stretch = {x, x};
    return closed;
  }
  const auto beside = clippedByY(wall, -kTouch_mm, kTouch_mm);
  if (!beside) return std::nullopt;
  const auto there = clippedByX(*beside, low, high);
  if (!there) return std::nullopt;
  closed.stretch = {there->a.x, there->b.x};
  return closed;
}

// The first of what, touching one another, closes both sides.
std::optional<Obstacles::Obstacle> closedOnBothSides(std::vector<Closed>& closed) {
  // Whatever the order in which they were found.
  const auto place = [](const Closed& c) {
    return std::tuple(c.stretch.from, c.stretch.to, c.by.solid, c.left, c.right);
  };
  std::sort(closed.begin(), closed.end(),
            [&](const Closed& a, const Closed& b) { return place(a) < place(b); });
  double reached = -1e300;
  bool left = false, right = false;
  for (const Closed& c : closed) {
    if (c.stretch.from > reached + kTouch_mm) left = right = false;
    left = left || c.left;
    right = right || c.right;
    if (left && right) return c.by;
    reached = std::max(reached, c.stretch.to);
  }
  return std::nullopt;
}

}  // namespace

Obstacles::Obstacles(const Plan& plan) : walls_(plan.walls) {
  std::vector<Box> boxes;
  boxes.reserve(walls_.size());
  for (const Segment& w : walls_) boxes.push_back(boxOf(w));
  wall_boxes_ = BoxTree(boxes);
}

std::optional<Obstacles::Obstacle> Obstacles::on(Segment line, double free_end, const FloorIndex& index,
                                                 const Spared& spared) const {
  const Frame frame = frameOf(line);
  const double size = distance(line.a, line.b);
  const double low = kTouch_mm, high = size - free_end - kTouch_mm;
  std::vector<Closed> closed;
  wall_boxes_.any(line, kTouch_mm, [&](std::size_t i) {
    const Segment wall{frame.in(walls_[i].a), frame.in(walls_[i].b)};
    if (high > low)
      if (const auto c = closedByWall(wall, low, high)) closed.push_back(*c);
    return false;
  });
  std::optional<std::size_t> around;  // a solid inside which the line is but a point
  index.solids().boxes().any(line, kTouch_mm, [&](std::size_t i) {
    if (spared(i)) return false;
    if (size > kTouch_mm) addSolid(line, index.solids()[i], {i}, closed);
    if (size <= kTouch_mm && index.solids()[i].sideOf(line.a, kTouch_mm) == Side::Inside)
      around = std::min(around.value_or(i), i);
    return false;
  });
  if (around) return Obstacle{around};
  return closedOnBothSides(closed);
}

std::vector<Stretch> insideAlong(Segment line, double aside, const IndexedPolygon& polygon) {
  const Frame frame = frameOf(line);
  const double size = distance(line.a, line.b);
  // From before the polygon, so that ins and outs alternate; all in one frame, so that they agree.
  const double before = distance(polygon.box().low, polygon.box().high) + distance(polygon.box(), line.a) + 1;
  std::vector<double> meets;
  polygon.anyEdge(Segment{frame.out({-before, 0}), line.b}, 2 * kTouch_mm, [&](std::size_t i) {
    const Segment e = edgeOf(polygon.corners(), i);
    const Point a = frame.in(e.a), b = frame.in(e.b);
    if ((a.y > aside) != (b.y > aside)) meets.push_back(a.x + (aside - a.y) / (b.y - a.y) * (b.x - a.x));
    return false;
  });
  std::sort(meets.begin(), meets.end());
  meets.push_back(size);
  std::vector<Stretch> inside;
  for (std::size_t i = 0; i + 1 < meets.size(); i += 2) {
    const Stretch s{std::max(meets[i], 0.0), std::min(meets[i + 1], size)};
    if (s.to - s.from > kTouch_mm) inside.push_back(s);
  }
  return inside;
}

bool crosses(Segment line, const IndexedPolygon& polygon) {
  if (distance(line.a, line.b) <= kTouch_mm) return polygon.sideOf(line.a, kTouch_mm) == Side::Inside;
  std::vector<Closed> closed;
  addSolid(line, polygon, {}, closed);
  return closedOnBothSides(closed).has_value();
}

}  // namespace stopwalk::floor
