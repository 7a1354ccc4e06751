#include "core/geometry/triangulation.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "core/geometry/hilbert.h"
#include "core/geometry/lattice.h"

namespace stopwalk::geometry {

namespace {

// Corners nearer than this are one, and a line passing so near a corner goes through it.
constexpr double kMerge_mm = 1e-5;

}  // namespace

Triangulation::Triangulation(const std::vector<Line>& lines) {
  Point low{0, 0}, high{0, 0};
  std::vector<Point> ends;
  ends.reserve(2 * lines.size());
  for (const Line& l : lines) {
    for (Point p : {l.a, l.b}) ends.push_back(onLattice(p));
  }
  if (!ends.empty()) low = high = ends.front();
  for (Point p : ends) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  const double margin = 1000 + std::max(high.x - low.x, high.y - low.y);
  low = onLattice({low.x - margin, low.y - margin});
  high = onLattice({high.x + margin, high.y + margin});
  corners_ = {low, {high.x, low.y}, high, {low.x, high.y}};
  triangles_ = {{{0, 1, 2}, {kNone, 1, kNone}, {0, 0, 0}}, {{0, 2, 3}, {kNone, kNone, 0}, {0, 0, 0}}};
  at_ = {0, 0, 0, 1};
  corners_.reserve(ends.size() + 4);
  triangles_.reserve(2 * ends.size() + 8);

  std::vector<Index> corner_of(ends.size());
  Index hint = 0;
  std::size_t last = ends.size();
  for (std::size_t i : hilbertOrder(ends)) {
    // The corners of an outline come twice.
    corner_of[i] = last < ends.size() && ends[i] == ends[last] ? corner_of[last] : insert(ends[i], hint);
    hint = at_[corner_of[i]];
    last = i;
  }
  for (std::size_t i = 0; i < lines.size(); ++i) draw(corner_of[2 * i], corner_of[2 * i + 1], lines[i].mark);
}

Triangulation::Index Triangulation::locate(Point p, Index hint) const {
  Index t = hint, from = kNone;
  int first = 0;
  for (std::size_t steps = 0; steps <= 4 * triangles_.size() + 16; ++steps) {
    const Triangle& tri = triangles_[t];
    int leave = -1;
    // Starting with another edge each time keeps the walk from circling.
    for (int k = 0, e = first; k < 3 && leave < 0; ++k, e = after(e)) {
      if (tri.neighbour[e] == from && from != kNone) continue;  // it came in there
      if (orientation(corners_[tri.corner[after(e)]], corners_[tri.corner[before(e)]], p) < 0) leave = e;
    }
    if (leave < 0) return t;
    from = t;
    t = tri.neighbour[leave];
    if (t == kNone) return kNone;
    first = after(first);
  }
  return kNone;
}

Triangulation::Index Triangulation::insert(Point p, Index hint) {
  const Index t = locate(p, hint);
  assert(t != kNone);
  const Triangle& tri = triangles_[t];
  for (Index c : tri.corner) {
    if (squaredLength(corners_[c] - p) < kMerge_mm * kMerge_mm) return c;
  }
  for (int e = 0; e < 3; ++e) {
    if (orientation(corners_[tri.corner[after(e)]], corners_[tri.corner[before(e)]], p) == 0)
      return insertOnEdge(p, t, e);
  }
  return insertInTriangle(p, t);
}

void Triangulation::setNeighbour(Index t, Index old, Index now) {
  if (t == kNone) return;
  for (Index& n : triangles_[t].neighbour) {
    if (n == old) {
      n = now;
      return;
    }
  }
}

Triangulation::Index Triangulation::insertInTriangle(Point p, Index t) {
  const auto v = static_cast<Index>(corners_.size());
  corners_.push_back(p);
  const Triangle old = triangles_[t];
  const auto t1 = static_cast<Index>(triangles_.size()), t2 = t1 + 1;
  const auto [a, b, c] = old.corner;
  triangles_[t] = {{a, b, v}, {t1, t2, old.neighbour[2]}, {0, 0, old.mark[2]}};
  triangles_.push_back({{b, c, v}, {t2, t, old.neighbour[0]}, {0, 0, old.mark[0]}});
  triangles_.push_back({{c, a, v}, {t, t1, old.neighbour[1]}, {0, 0, old.mark[1]}});
  setNeighbour(old.neighbour[0], t, t1);
  setNeighbour(old.neighbour[1], t, t2);
  at_.push_back(t);
  at_[a] = t;
  at_[b] = t;
  at_[c] = t1;
  suspects_ = {{t, 2}, {t1, 2}, {t2, 2}};
  legalize(Doubt::OppositeTheCorner);
  return v;
}

Triangulation::Index Triangulation::insertOnEdge(Point p, Index t, int edge) {
  const auto v = static_cast<Index>(corners_.size());
  corners_.push_back(p);
  const Triangle one = triangles_[t];
  const Index u = one.neighbour[edge];
  assert(u != kNone);
  const Triangle two = triangles_[u];
  int back = 0;
  while (two.neighbour[back] != t) ++back;
  const std::uint8_t mark = one.mark[edge];
  const Index c = one.corner[edge], a = one.corner[after(edge)], b = one.corner[before(edge)],
              d = two.corner[back];
  const Index ca = one.neighbour[before(edge)], bc = one.neighbour[after(edge)];
  const Index db = two.neighbour[before(back)], ad = two.neighbour[after(back)];
  const std::uint8_t mca = one.mark[before(edge)], mbc = one.mark[after(edge)];
  const std::uint8_t mdb = two.mark[before(back)], mad = two.mark[after(back)];
  const auto t1 = static_cast<Index>(triangles_.size()), u1 = t1 + 1;
  triangles_[t] = {{c, a, v}, {u, t1, ca}, {mark, 0, mca}};
  triangles_.push_back({{b, c, v}, {t, u1, bc}, {0, mark, mbc}});
  triangles_[u] = {{a, d, v}, {u1, t, ad}, {0, mark, mad}};
  triangles_.push_back({{d, b, v}, {t1, u, db}, {mark, 0, mdb}});
  setNeighbour(bc, t, t1);
  setNeighbour(db, u, u1);
  at_.push_back(t);
  at_[a] = t;
  at_[c] = t;
  at_[b] = t1;
  at_[d] = u;
  suspects_ = {{t, 2}, {t1, 2}, {u, 2}, {u1, 2}};
  legalize(Doubt::OppositeTheCorner);
  return v;
}

Triangulation::Index Triangulation::splitEdge(Point p, Index t, int edge) {
  const Triangle& one = triangles_[t];
  const Triangle& two = triangles_[one.neighbour[edge]];
  int back = 0;
  while (two.neighbour[back] != t) ++back;
  const Index c = one.corner[edge], a = one.corner[after(edge)], b = one.corner[before(edge)],
              d = two.corner[back];
  const auto turnsLeft = [&](Index i, Index j) { return orientation(corners_[i], corners_[j], p) > 0; };
  if (turnsLeft(c, a) && turnsLeft(b, c) && turnsLeft(a, d) && turnsLeft(d, b))
    return insertOnEdge(p, t, edge);
  // A triangle thinner than the lattice: the nearest corner serves.
  return std::min({a, b, c, d}, [&](Index i, Index j) {
    return squaredLength(corners_[i] - p) < squaredLength(corners_[j] - p);
  });
}

void Triangulation::flip(Index t, int edge) {
  const Triangle one = triangles_[t];
  const Index u = one.neighbour[edge];
  const Triangle two = triangles_[u];
  int back = 0;
  while (two.neighbour[back] != t) ++back;
  const Index c = one.corner[edge], a = one.corner[after(edge)], b = one.corner[before(edge)],
              d = two.corner[back];
  const int one_ca = before(edge), one_bc = after(edge), two_db = before(back), two_ad = after(back);
  triangles_[t] = {
      {c, a, d}, {two.neighbour[two_ad], u, one.neighbour[one_ca]}, {two.mark[two_ad], 0, one.mark[one_ca]}};
  triangles_[u] = {
      {d, b, c}, {one.neighbour[one_bc], t, two.neighbour[two_db]}, {one.mark[one_bc], 0, two.mark[two_db]}};
  setNeighbour(two.neighbour[two_ad], u, t);
  setNeighbour(one.neighbour[one_bc], t, u);
  at_[a] = t;
  at_[b] = u;
  at_[c] = t;
  at_[d] = t;
}

void Triangulation::legalize(Doubt doubt) {
  while (!suspects_.empty()) {
    const auto [t, edge] = suspects_.back();
    suspects_.pop_back();
    const Triangle& tri = triangles_[t];
    const Index u = tri.neighbour[edge];
    if (u == kNone || tri.mark[edge] != kFree) continue;
    int back = 0;
    while (triangles_[u].neighbour[back] != t) ++back;
    const Point c = corners_[tri.corner[edge]], a = corners_[tri.corner[after(edge)]],
                b = corners_[tri.corner[before(edge)]];
    const Point d = corners_[triangles_[u].corner[back]];
    if (!surelyInCircle(c, a, b, d)) continue;
    if (orientation(c, a, d) <= 0 || orientation(d, b, c) <= 0) continue;
    flip(t, edge);
    suspects_.emplace_back(t, 0);
    if (doubt == Doubt::All) {
      suspects_.emplace_back(t, 2);
      suspects_.emplace_back(u, 0);
    }
    suspects_.emplace_back(u, 2);
  }
}

bool Triangulation::findEdge(Index a, Index b, Index& t, int& edge) const {
  const Index start = at_[a];
  t = start;
  do {
    const Triangle& tri = triangles_[t];
    const int i = tri.corner[0] == a ? 0 : tri.corner[1] == a ? 1 : 2;
    if (tri.corner[after(i)] == b) {
      edge = before(i);
      return true;
    }
    if (tri.corner[before(i)] == b) {
      edge = after(i);
      return true;
    }
    t = tri.neighbour[after(i)];  // counter-clockwise about a
  } while (t != kNone && t != start);
  if (t == start) return false;
  // At a corner of the hull: the other way round.
  t = start;
  while (t != kNone) {
    const Triangle& tri = triangles_[t];
    const int i = tri.corner[0] == a ? 0 : tri.corner[1] == a ? 1 : 2;
    if (tri.corner[after(i)] == b) {
      edge = before(i);
      return true;
    }
    t = tri.neighbour[before(i)];
  }
  return false;
}

bool Triangulation::markEdge(Index a, Index b, Mark mark) {
  Index t = kNone;
  int edge = 0;
  if (!findEdge(a, b, t, edge)) return false;
  const Index u = triangles_[t].neighbour[edge];
  triangles_[t].mark[edge] |= mark | kDrawn;
  if (u != kNone) {
    for (int i = 0; i < 3; ++i) {
      if (triangles_[u].neighbour[i] == t) triangles_[u].mark[i] |= mark | kDrawn;
    }
  }
  return true;
}

bool Triangulation::nearLine(Index a, Index b, Index c) const {
  const Point u = corners_[b] - corners_[a], v = corners_[c] - corners_[a];
  const double along = dot(u, v), size = squaredLength(u);
  if (along <= 0 || along >= size) return false;
  const double off = cross(u, v);
  return off * off < kMerge_mm * kMerge_mm * size;
}

void Triangulation::draw(Index a, Index b, Mark mark) {
  while (a != b) a = drawStep(a, b, mark);
}

// The edge through which the line from `a` to `b` leaves the triangles about `a`; or, in `along`, a corner
// that it runs along an edge to.
Triangulation::Gap Triangulation::leave(Index a, Index b, Index& along) const {
  const Point pa = corners_[a], pb = corners_[b];
  const Index start = at_[a];
  Gap gap{start, kNone, kNone};
  do {
    const Triangle& tri = triangles_[gap.triangle];
    const int i = tri.corner[0] == a ? 0 : tri.corner[1] == a ? 1 : 2;
    gap.right = tri.corner[after(i)];
    gap.left = tri.corner[before(i)];
    for (Index c : {gap.right, gap.left}) {
      if (!nearLine(a, b, c)) continue;
      along = c;
      return gap;
    }
    if (orientation(pa, pb, corners_[gap.right]) < 0 && orientation(pa, pb, corners_[gap.left]) > 0 &&
        orientation(pa, corners_[gap.right], pb) > 0)
      return gap;
    gap.triangle = tri.neighbour[after(i)];
    assert(gap.triangle != kNone);
  } while (gap.triangle != start);
  return gap;
}

// The corner at which the line from `a` to `b` crosses a drawn edge: on the lattice, so that the edge bends
// there by less than the lattice's step.
Triangulation::Index Triangulation::meet(Index a, Index b, const Gap& gap, int edge) {
  const Point pa = corners_[a], pb = corners_[b], r = corners_[gap.right], l = corners_[gap.left];
  const double dr = std::abs(cross(pb - pa, r - pa)), dl = std::abs(cross(pb - pa, l - pa));
  const Point x = onLattice(r + (dr / (dr + dl)) * (l - r));
  for (Index c : {gap.right, gap.left})
    if (squaredLength(corners_[c] - x) < kMerge_mm * kMerge_mm) return c;
  return splitEdge(x, gap.triangle, edge);
}

Triangulation::Index Triangulation::drawStep(Index a, Index b, Mark mark) {
  if (markEdge(a, b, mark)) return b;
  Index along = kNone;
  Gap gap = leave(a, b, along);
  if (along != kNone && markEdge(a, along, mark)) return along;
  // Walk along the line; stop at the first corner on it or the first drawn edge that it crosses.
  std::vector<std::pair<Index, Index>> crossed;
  Index goal = kNone;
  while (goal == kNone) {
    const Triangle& tri = triangles_[gap.triangle];
    int e = 0;
    while (!(tri.corner[after(e)] == gap.right && tri.corner[before(e)] == gap.left)) ++e;
    if (tri.mark[e] != kFree) {
      const Index met = meet(a, b, gap, e);
      draw(a, met, mark);  // from anew: the split has turned edges
      return met;
    }
    crossed.emplace_back(gap.right, gap.left);
    const Index u = tri.neighbour[e];
    int back = 0;
    while (triangles_[u].neighbour[back] != gap.triangle) ++back;
    const Index c = triangles_[u].corner[back];
    const int side = orientation(corners_[a], corners_[b], corners_[c]);
    if (c == b || side == 0 || nearLine(a, b, c)) goal = c;
    (side > 0 ? gap.left : gap.right) = c;
    gap.triangle = u;
  }
  clearWay(a, goal, std::move(crossed));
  const bool marked = markEdge(a, goal, mark);
  assert(marked);
  (void)marked;
  return goal;
}

void Triangulation::clearWay(Index a, Index b, std::vector<std::pair<Index, Index>> crossed) {
  std::vector<std::pair<Index, Index>> made;
  std::size_t next = 0;
  while (next < crossed.size()) {
    const auto [r, l] = crossed[next++];
    Index t = kNone;
    int e = 0;
    if (!findEdge(r, l, t, e)) continue;
    const Index u = triangles_[t].neighbour[e];
    int back = 0;
    while (triangles_[u].neighbour[back] != t) ++back;
    const Index c = triangles_[t].corner[e], d = triangles_[u].corner[back];
    const Index p = triangles_[t].corner[after(e)], q = triangles_[t].corner[before(e)];
    const bool convex = orientation(corners_[c], corners_[p], corners_[d]) > 0 &&
                        orientation(corners_[d], corners_[q], corners_[c]) > 0;
    if (!convex) {
      crossed.emplace_back(r, l);  // it will be, once its neighbours are flipped
      continue;
    }
    flip(t, e);
    const auto side = [&](Index v) {
      return v == a || v == b ? 0 : orientation(corners_[a], corners_[b], corners_[v]);
    };
    if (side(c) * side(d) < 0) {
      crossed.emplace_back(c, d);
    } else {
      made.emplace_back(c, d);
    }
  }
  suspects_.clear();
  for (const auto& [c, d] : made) {
    if ((c == a && d == b) || (c == b && d == a)) continue;
    Index t = kNone;
    int e = 0;
    if (findEdge(c, d, t, e)) suspects_.emplace_back(t, e);
  }
  // The line itself must stay: mark it before its neighbours are improved.
  Index t = kNone;
  int e = 0;
  if (findEdge(a, b, t, e)) {
    markEdge(a, b, kDrawn);
    legalize(Doubt::All);
  }
}

}  // namespace stopwalk::geometry
