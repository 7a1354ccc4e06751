#include "core/geometry/polygon.h"

#include <algorithm>
#include <vector>

#include "core/geometry/box_tree.h"

namespace stopwalk::geometry {

namespace {

// Aside of an edge, to look which side is in: beyond whatever only touches it.
constexpr double kAside_mm = 2 * kTouch_mm;

Polygon withoutTinyEdges(const Polygon& polygon) {
  Polygon kept;
  for (Point p : polygon)
    if (kept.empty() || distance(kept.back(), p) > 2 * kAside_mm) kept.push_back(p);
  while (kept.size() > 1 && distance(kept.back(), kept.front()) <= 2 * kAside_mm) kept.pop_back();
  return kept;
}

// The edges of one outline and where they are.
class Edges {
 public:
  explicit Edges(const Polygon& polygon) : polygon_(polygon) {
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < polygon.size(); ++i) boxes.push_back(boxOf(edgeOf(polygon, i)));
    tree_ = BoxTree(boxes);
    all_ = boxOf(polygon);
  }

  // Whether two edges pass through each other in their middles. Adds what touches an edge to its `touched`
  // parameters.
  bool cross(std::vector<std::vector<double>>& touched) const {
    const std::size_t n = polygon_.size();
    for (std::size_t i = 0; i < n; ++i) {
      const Segment e = edgeOf(polygon_, i);
      const bool found = tree_.any(boxOf(e).grown(kTouch_mm), [&](std::size_t j) {
        if (j == i) return false;
        const Segment f = edgeOf(polygon_, j);
        if (crossProperly(e, f)) return true;
        const bool neighbours = j == (i + 1) % n || i == (j + 1) % n;
        const auto near = stretchWithin(e, f, kTouch_mm);
        if (near && !(neighbours && (near->to - near->from) * distance(e.a, e.b) < 2 * kAside_mm)) {
          touched[i].push_back(near->from);
          touched[i].push_back(near->to);
        }
        return false;
      });
      if (found) return true;
    }
    return false;
  }

  // How often the outline goes round `p`, counter-clockwise.
  int turnsRound(Point p) const {
    int turns = 0;
    tree_.any(Box{p, {all_.high.x, p.y}}, [&](std::size_t i) {
      const Segment e = edgeOf(polygon_, i);
      const Point a = e.a - p, b = e.b - p;
      if ((a.y > 0) == (b.y > 0)) return false;
      const double side = geometry::cross(a, b);
      if (b.y > a.y ? side > 0 : side < 0) turns += b.y > a.y ? 1 : -1;
      return false;
    });
    return turns;
  }

 private:
  const Polygon& polygon_;
  BoxTree tree_;
  Box all_;
};

}  // namespace

double signedArea(const Polygon& polygon) {
  double twice = 0;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Segment e = edgeOf(polygon, i);
    twice += cross(e.a - polygon[0], e.b - polygon[0]);
  }
  return twice / 2;
}

Polygon withoutRepeats(const Polygon& polygon) {
  Polygon kept;
  for (Point p : polygon)
    if (kept.empty() || !(kept.back() == p)) kept.push_back(p);
  while (kept.size() > 1 && kept.back() == kept.front()) kept.pop_back();
  return kept;
}

bool hasNoArea(const Polygon& polygon) {
  double around = 0;
  for (std::size_t i = 0; i < polygon.size(); ++i)
    around += length(edgeOf(polygon, i).b - edgeOf(polygon, i).a);
  return polygon.size() < 3 || std::abs(signedArea(polygon)) <= kTouch_mm * around;
}

// Where strands cross, at a corner or along a shared line too, the outline goes round some places two times
// more than round others; where they only meet, never.
bool crossesItself(const Polygon& polygon) {
  const Polygon drawn = withoutTinyEdges(polygon);
  const Edges edges(drawn);
  std::vector<std::vector<double>> touched(drawn.size());
  if (edges.cross(touched)) return true;
  int least = 0, most = 0;
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    if (touched[i].empty()) continue;
    touched[i].push_back(0);
    touched[i].push_back(1);
    std::sort(touched[i].begin(), touched[i].end());
    const Segment e = edgeOf(drawn, i);
    const Point aside = kAside_mm * leftOf(unit(e.b - e.a));
    for (std::size_t k = 0; k + 1 < touched[i].size(); ++k) {
      const Point middle = at(e, (touched[i][k] + touched[i][k + 1]) / 2);
      for (Point p : {middle + aside, middle - aside}) {
        least = std::min(least, edges.turnsRound(p));
        most = std::max(most, edges.turnsRound(p));
      }
    }
  }
  return most - least > 1;
}

}  // namespace stopwalk::geometry
