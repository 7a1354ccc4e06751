#include "tests/support/slow_walks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace stopwalk::support {

namespace {

using geometry::Point;
using geometry::Segment;

constexpr double kTolerance_mm = 1e-4;

double toSegment(Point p, const Segment& s) {
  const Point u = s.b - s.a;
  const double t = squaredLength(u) > 0 ? std::clamp(dot(p - s.a, u) / squaredLength(u), 0.0, 1.0) : 0.0;
  return distance(p, s.a + t * u);
}

bool crossing(const Segment& s, const Segment& t) {
  const auto side = [](Point a, Point b, Point c) { return cross(b - a, c - a); };
  return side(s.a, s.b, t.a) * side(s.a, s.b, t.b) < 0 && side(t.a, t.b, s.a) * side(t.a, t.b, s.b) < 0;
}

double between(const Segment& s, const Segment& t) {
  if (crossing(s, t)) return 0;
  return std::min({toSegment(s.a, t), toSegment(s.b, t), toSegment(t.a, s), toSegment(t.b, s)});
}

bool inside(const geometry::Polygon& polygon, Point p) {
  bool in = false;
  for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
    const Point a = polygon[i], b = polygon[j];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
  }
  return in;
}

std::vector<Segment> blocking(const floor::Plan& plan) {
  std::vector<Segment> walls = plan.walls;
  for (const floor::Solid& s : plan.solids)
    for (std::size_t i = 0; i < s.outline.size(); ++i)
      walls.push_back({s.outline[i], s.outline[(i + 1) % s.outline.size()]});
  return walls;
}

struct Knot {
  Point at, direction;
  int corner = -1, sense = 0;
  std::vector<std::pair<int, double>> next;
};

class Search {
 public:
  Search(const floor::Plan& plan, double clearance)
      : plan_(plan), walls_(blocking(plan)), c_(std::max(clearance - 0.0005, 0.0005)) {
    for (const Segment& s : walls_)
      for (Point p : {s.a, s.b})
        if (std::none_of(corners_.begin(), corners_.end(), [&](Point q) { return distance(p, q) < 1e-7; })) corners_.push_back(p);
  }

  double run(Point from, Point to) {
    knots_ = {{from, {}, -1, 0, {}}, {to, {}, -2, 0, {}}};
    leg(from, 0, -1, to, 0, -2);
    for (int i = 0; i < static_cast<int>(corners_.size()); ++i) {
      for (int s : {1, -1}) {
        leg(from, 0, -1, corners_[i], s, i);
        leg(corners_[i], s, i, to, 0, -2);
        for (int j = 0; j < static_cast<int>(corners_.size()); ++j)
          for (int t : {1, -1})
            if (i != j) leg(corners_[i], s, i, corners_[j], t, j);
      }
    }
    turns();
    return shortest();
  }

 private:
  void leg(Point v, int s, int i, Point w, int t, int j) {
    const Point d = w - v;
    const double k = (t - s) * c_, size = squaredLength(d), square = size - k * k;
    if (square < 0) return;
    const double run = std::sqrt(square);
    const Point u = (1 / size) * (run * d - k * leftOf(d));
    const Point p = v - s * c_ * leftOf(u), q = w - t * c_ * leftOf(u);
    if (!free({p, q})) return;
    const int a = i == -1 ? 0 : knot(p, u, i, s), b = j == -2 ? 1 : knot(q, u, j, t);
    knots_[a].next.push_back({b, run});
  }

  int knot(Point at, Point direction, int corner, int sense) {
    knots_.push_back({at, direction, corner, sense, {}});
    return static_cast<int>(knots_.size()) - 1;
  }

  bool free(const Segment& s) const {
    const Point middle = 0.5 * (s.a + s.b);
    if (slowClearance(plan_, middle) < 0) return false;
    return std::all_of(walls_.begin(), walls_.end(), [&](const Segment& w) { return between(s, w) >= c_ - kTolerance_mm; });
  }

  bool freeArc(Point v, Point normal, double sense, double angle) const {
    const int steps = 1 + static_cast<int>(angle / 0.005);
    for (int i = 0; i <= steps; ++i) {
      const double a = sense * angle * i / steps;
      const Point p = v + c_ * Point{normal.x * std::cos(a) - normal.y * std::sin(a), normal.x * std::sin(a) + normal.y * std::cos(a)};
      if (slowClearance(plan_, p) < c_ - kTolerance_mm) return false;
    }
    return true;
  }

  void turns() {
    for (std::size_t a = 2; a < knots_.size(); ++a) {
      if (!knots_[a].next.empty()) continue;  // an end, not a start, of a leg
      for (std::size_t b = 2; b < knots_.size(); ++b) {
        if (knots_[b].next.empty() || knots_[b].corner != knots_[a].corner || knots_[b].sense != knots_[a].sense) continue;
        const int s = knots_[a].sense;
        double angle = s * std::atan2(cross(knots_[a].direction, knots_[b].direction), dot(knots_[a].direction, knots_[b].direction));
        if (angle < -1e-7) continue;
        angle = std::max(angle, 0.0);
        if (freeArc(corners_[knots_[a].corner], -s * leftOf(knots_[a].direction), s, angle))
          knots_[a].next.push_back({static_cast<int>(b), c_ * angle});
      }
    }
  }

  double shortest() {
    const double none = std::numeric_limits<double>::infinity();
    std::vector<double> length(knots_.size(), none);
    std::vector<bool> done(knots_.size());
    length[0] = 0;
    while (true) {
      int at = -1;
      for (std::size_t i = 0; i < knots_.size(); ++i)
        if (!done[i] && length[i] < none && (at < 0 || length[i] < length[at])) at = static_cast<int>(i);
      if (at < 0) return none;
      if (at == 1) return length[1];
      done[at] = true;
      for (const auto& [n, l] : knots_[at].next) length[n] = std::min(length[n], length[at] + l);
    }
  }

  const floor::Plan& plan_;
  std::vector<Segment> walls_;
  std::vector<Point> corners_;
  double c_;
  std::vector<Knot> knots_;
};

}  // namespace

double slowClearance(const floor::Plan& plan, Point p) {
  bool open = std::any_of(plan.rooms.begin(), plan.rooms.end(), [&](const auto& r) { return inside(r, p); });
  for (const floor::Passage& w : plan.passages) open = open || inside({w.first.a, w.first.b, w.second.b, w.second.a}, p);
  for (const floor::Solid& s : plan.solids) open = open && !inside(s.outline, p);
  if (!open) return -1;
  double least = std::numeric_limits<double>::infinity();
  for (const Segment& s : blocking(plan)) least = std::min(least, toSegment(p, s));
  return least;
}

double slowWalk(const floor::Plan& plan, double clearance_mm, Point from, Point to) {
  return Search(plan, clearance_mm).run(from, to);
}

}  // namespace stopwalk::support
