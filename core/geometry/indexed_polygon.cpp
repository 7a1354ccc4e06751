#include "core/geometry/indexed_polygon.h"

#include <limits>

namespace stopwalk::geometry {

IndexedPolygon::IndexedPolygon(Polygon corners) : corners_(std::move(corners)), box_(boxOf(corners_)) {
  if (!indexed()) return;
  std::vector<Box> boxes;
  boxes.reserve(corners_.size());
  for (std::size_t i = 0; i < corners_.size(); ++i) boxes.push_back(boxOf(edgeOf(corners_, i)));
  edges_ = BoxTree(boxes);
}

Side IndexedPolygon::sideOf(Point p, double near) const {
  if (empty() || distance(box_, p) > near) return Side::Outside;
  if (anyEdge(boxOf(p).grown(near), [&](std::size_t i) { return distance(edgeOf(corners_, i), p) <= near; }))
    return Side::On;
  bool inside = false;
  anyEdge(Box{p, {box_.high.x, p.y}}, [&](std::size_t i) {
    const Segment e = edgeOf(corners_, i);
    const Point a = e.a - p, b = e.b - p;
    if ((a.y > 0) == (b.y > 0)) return false;
    const double side = cross(a, b);
    if (b.y > a.y ? side > 0 : side < 0) inside = !inside;
    return false;
  });
  return inside ? Side::Inside : Side::Outside;
}

double IndexedPolygon::distanceToOutline(Point p) const {
  const auto toEdge = [&](std::size_t i) { return distance(edgeOf(corners_, i), p); };
  double least = std::numeric_limits<double>::infinity();
  if (indexed()) return edges_.least(p, toEdge).value_or(least);
  for (std::size_t i = 0; i < corners_.size(); ++i) least = std::min(least, toEdge(i));
  return least;
}

double IndexedPolygon::distanceTo(Point p) const {
  return holds(p) ? 0 : distanceToOutline(p);
}

bool IndexedPolygon::isWithin(double reach, Segment s) const {
  if (!overlap(boxOf(s).grown(reach), box_)) return false;
  return holds(s.a) || anyEdge(boxOf(s).grown(reach),
                               [&](std::size_t i) { return distance(edgeOf(corners_, i), s) <= reach; });
}

namespace {

// Whether a stretch of the edge lies in `in`, farther than `depth` from its outline: what no edge of `in`
// comes near to.
bool edgeRunsDeep(Segment edge, const IndexedPolygon& in, double depth) {
  if (!overlap(boxOf(edge), in.box())) return false;
  std::vector<Stretch> near;
  in.anyEdge(boxOf(edge).grown(depth), [&](std::size_t i) {
    if (const auto s = stretchWithin(edge, edgeOf(in.corners(), i), depth)) near.push_back(*s);
    return false;
  });
  std::sort(near.begin(), near.end(), [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
  near.push_back({1, 1});
  double reached = 0;
  for (const Stretch& s : near) {
    if (s.from > reached && in.sideOf(at(edge, (reached + s.from) / 2)) == Side::Inside) return true;
    reached = std::max(reached, s.to);
  }
  return false;
}

// Whether a place just deeper than `depth` inside `a`, before the middle of one of its edges, lies in `b`.
// Finds an overlap of which no edge tells, such as that of two equal polygons.
bool placeLiesDeep(const IndexedPolygon& a, const IndexedPolygon& b, double depth) {
  const double inward = signedArea(a.corners()) > 0 ? 1 : -1;
  return a.anyEdge(b.box().grown(2 * depth), [&](std::size_t i) {
    const Segment e = edgeOf(a.corners(), i);
    if (e.a == e.b) return false;
    const Point p = at(e, 0.5) + inward * (1.001 * depth) * leftOf(unit(e.b - e.a));
    return a.sideOf(p, depth) == Side::Inside && b.sideOf(p) == Side::Inside;
  });
}

}  // namespace

bool overlapDeeper(const IndexedPolygon& a, const IndexedPolygon& b, double depth) {
  if (a.empty() || b.empty() || !overlap(a.box(), b.box())) return false;
  const auto runsDeep = [depth](const IndexedPolygon& of, const IndexedPolygon& in) {
    return of.anyEdge(in.box(),
                      [&](std::size_t i) { return edgeRunsDeep(edgeOf(of.corners(), i), in, depth); });
  };
  return runsDeep(a, b) || runsDeep(b, a) || placeLiesDeep(a, b, depth) || placeLiesDeep(b, a, depth);
}

IndexedPolygons::IndexedPolygons(std::vector<IndexedPolygon> polygons) : polygons_(std::move(polygons)) {
  std::vector<Box> boxes;
  boxes.reserve(polygons_.size());
  for (const IndexedPolygon& p : polygons_) boxes.push_back(p.box());
  boxes_ = BoxTree(boxes);
}

std::optional<std::size_t> IndexedPolygons::firstHolding(Point p) const {
  std::optional<std::size_t> first;
  boxes_.any(boxOf(p).grown(kOnOutline_mm), [&](std::size_t i) {
    if ((!first || i < *first) && polygons_[i].holds(p)) first = i;
    return false;
  });
  return first;
}

bool IndexedPolygons::anyInside(Point p) const {
  return boxes_.any(boxOf(p), [&](std::size_t i) { return polygons_[i].sideOf(p) == Side::Inside; });
}

}  // namespace stopwalk::geometry
