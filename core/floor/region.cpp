#include "core/floor/region.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

#include "core/floor/covered.h"

namespace stopwalk::floor {

namespace {

using std::numbers::pi;

// Ends of pieces nearer than this are one place of the boundary.
constexpr double kSame_mm = 0.01;
// What comes nearer than the radius by less only touches: more than the lattice's rounding.
constexpr double kTouch_mm = 2e-6;
constexpr double kLeastPiece_mm = 1e-6;
// Where a line meets another, rounding bends it by a hair; the arc that makes good for it must not be lost,
// unless it is so small that directions are not told apart by it (kAngle).
constexpr double kLeastArc_rad = 1e-10;

Point unitAt(double angle) {
  return {std::cos(angle), std::sin(angle)};
}

// Into [0, 2 pi).
double wholeTurnsOff(double angle) {
  if (std::abs(angle) >= 2 * pi) angle = std::fmod(angle, 2 * pi);
  angle += 2 * pi;
  return angle >= 2 * pi ? angle - 2 * pi : angle;
}

struct Sets {
  std::vector<Mesh::Index> parent;
  explicit Sets(std::size_t n) : parent(n) { std::iota(parent.begin(), parent.end(), 0); }
  Mesh::Index find(Mesh::Index i) {
    while (parent[i] != i) i = parent[i] = parent[parent[i]];
    return i;
  }
  void unite(Mesh::Index i, Mesh::Index j) {
    i = find(i);
    j = find(j);
    if (i != j) parent[std::max(i, j)] = std::min(i, j);
  }
};

}  // namespace

double builtAt(double clearance) {
  return std::max(clearance - kBuildLess_mm, kBuildLess_mm);
}

Region::Region(const Mesh& mesh, const WallGrid& grid, double clearance)
    : mesh_(&mesh), grid_(&grid), radius_(builtAt(clearance)) {
  const auto& walls = mesh.walls();
  pieces_.reserve(walls.size() + mesh.corners().size());  // about as many
  wall_first_.reserve(walls.size() + 1);
  for (std::size_t i = 0; i < walls.size(); ++i) {
    wall_first_.push_back(static_cast<Index>(pieces_.size()));
    if (walls[i].left) addAlong(static_cast<Index>(i), walls[i].a, walls[i].b);
    if (walls[i].right) addAlong(static_cast<Index>(i), walls[i].b, walls[i].a);
  }
  wall_first_.push_back(static_cast<Index>(pieces_.size()));
  corner_first_.reserve(mesh.corners().size() + 1);
  for (std::size_t i = 0; i < mesh.corners().size(); ++i) {
    corner_first_.push_back(static_cast<Index>(pieces_.size()));
    addRound(static_cast<Index>(i));
  }
  corner_first_.push_back(static_cast<Index>(pieces_.size()));
  link();
  join();
}

// The line at the region's radius to the left of the wall from a to b, less what other walls come near to.
void Region::addAlong(Index wall, Index a, Index b) {
  const auto& pts = mesh_->corners();
  const double size = distance(pts[a], pts[b]);
  if (size == 0) return;
  const Point d = (1 / size) * (pts[b] - pts[a]);
  const Point o = pts[a] + radius_ * leftOf(d);
  covered_.clear();
  const Segment line{o, o + size * d};
  const geometry::Box near_line = boxOf(line).grown(radius_);
  grid_->wallsNear(line.a, line.b, radius_, [&](Index w) {
    if (w == wall) return;
    const auto& other = mesh_->walls()[w];
    if (!overlap(near_line, boxOf(Segment{pts[other.a], pts[other.b]}))) return;
    const Interval near = nearSegment(o, d, pts[other.a], pts[other.b], radius_ - kTouch_mm);
    if (!near.empty() && near.to > 0 && near.from < size) covered_.push_back(near);
  });
  uncovered(0, size, covered_, kLeastPiece_mm, free_);
  for (const Interval& free : free_) {
    Piece piece;
    piece.corner = a;
    piece.other = b;
    piece.from = o + free.from * d;
    piece.to = o + free.to * d;
    pieces_.push_back(piece);
  }
}

// Puts into gaps_ the gaps between the covered angles round the corner that are on the floor; whether there
// are any. Unrolled over two turns, so that a gap across the seam is whole.
bool Region::gapsRound(Index corner) {
  const double start = covered_.front().to;
  unrolled_.clear();
  for (const Interval& c : covered_) {
    const double from = start + wholeTurnsOff(c.from - start);
    unrolled_.push_back({from, from + (c.to - c.from)});
    unrolled_.push_back({from - 2 * pi, from - 2 * pi + (c.to - c.from)});
  }
  uncovered(start, start + 2 * pi, unrolled_, kLeastArc_rad, free_);
  gaps_.clear();
  for (const Interval& free : free_) {
    const Gap gap{free, unitAt(free.from), unitAt(free.to)};
    const Point within = free.to - free.from > pi / 2 ? leftOf(gap.from) : gap.from + gap.to;
    const Index t = mesh_->triangleToward(corner, within);
    if (t != kNone && mesh_->isFloor(t)) gaps_.push_back(gap);
  }
  return !gaps_.empty();
}

// Of the gaps found last, as arcs round `v`.
geometry::Box Region::boxOfGaps(Point v) const {
  geometry::Box box;
  for (const Gap& gap : gaps_) {
    for (const Point end : {gap.from, gap.to}) box.add(v + radius_ * end);
    for (const Point axis : {Point{1, 0}, Point{0, 1}, Point{-1, 0}, Point{0, -1}})
      if (between(gap.from, axis, gap.to, 1e-9)) box.add(v + radius_ * axis);
  }
  return box;
}

// The circle of the region's radius about a corner, less what the corner's own and other walls come near to.
void Region::addRound(Index corner) {
  if (!mesh_->isObstacle(corner)) return;
  const auto& pts = mesh_->corners();
  const Point v = pts[corner];
  covered_.clear();
  for (Index spoke : mesh_->wallsAt(corner)) {
    const auto& w = mesh_->walls()[spoke];
    const Point far = pts[w.a == corner ? w.b : w.a] - v;
    const double at = std::atan2(far.y, far.x);
    covered_.push_back({at - pi / 2, at + pi / 2});
  }
  std::ranges::sort(covered_, {}, &Interval::from);  // the triangles' order is of no matter
  if (!gapsRound(corner)) return;
  const std::size_t own = covered_.size();
  const geometry::Box near_gaps = boxOfGaps(v).grown(radius_);
  grid_->wallsIn(near_gaps, [&](Index w) {
    const auto& other = mesh_->walls()[w];
    if (other.a == corner || other.b == corner) return;
    if (!overlap(near_gaps, boxOf(Segment{pts[other.a], pts[other.b]}))) return;
    const Interval near = nearSegmentRound(v, radius_, pts[other.a], pts[other.b], radius_ - kTouch_mm);
    if (!near.empty()) covered_.push_back(near);
  });
  if (covered_.size() > own && !gapsRound(corner)) return;
  for (const Gap& gap : gaps_) {
    Piece piece;
    piece.arc = true;
    piece.corner = corner;
    piece.from = gap.from;
    piece.to = gap.to;
    piece.angle = gap.angles.to - gap.angles.from;
    pieces_.push_back(piece);
  }
}

Point Region::beginOf(const Piece& p) const {
  return p.arc ? mesh_->corners()[p.corner] + radius_ * p.to : p.from;
}
Point Region::endOf(const Piece& p) const {
  return p.arc ? mesh_->corners()[p.corner] + radius_ * p.from : p.to;
}

// Joins each end to the nearest beginning of another piece, for none is a loop by itself, though the shortest
// arcs begin nearer to their end than what follows them. Both are sorted along a slanting line, on which few
// walls stand in one place, so that only neighbours are compared.
void Region::link() {
  struct End {
    Index piece;
    double place;
  };
  const Point slant = unitAt(1);
  const auto sorted = [&](auto at) {
    std::vector<End> ends(pieces_.size());
    for (std::size_t i = 0; i < ends.size(); ++i)
      ends[i] = {static_cast<Index>(i), dot(slant, at(pieces_[i]))};
    std::sort(ends.begin(), ends.end(), [](const End& a, const End& b) { return a.place < b.place; });
    return ends;
  };
  const std::vector<End> begins = sorted([&](const Piece& p) { return beginOf(p); });
  std::size_t first = 0;
  for (const End& end : sorted([&](const Piece& p) { return endOf(p); })) {
    while (first < begins.size() && begins[first].place < end.place - kSame_mm) ++first;
    double nearest = kSame_mm * kSame_mm;
    const Point at = endOf(pieces_[end.piece]);
    Index& next = pieces_[end.piece].next;
    for (std::size_t i = first; i < begins.size() && begins[i].place <= end.place + kSame_mm; ++i) {
      if (begins[i].piece == end.piece) continue;
      const double d = squaredLength(beginOf(pieces_[begins[i].piece]) - at);
      if (d < nearest || (d == nearest && begins[i].piece < next)) {
        nearest = d;
        next = begins[i].piece;
      }
    }
  }
}

// Numbers the connected parts. Each loop round a solid has a lowest point on an arc that faces down; the
// boundary straight below it belongs to the same part.
void Region::join() {
  Sets sets(pieces_.size());
  for (std::size_t i = 0; i < pieces_.size(); ++i)
    if (pieces_[i].next != kNone) sets.unite(static_cast<Index>(i), pieces_[i].next);
  const Point down{0, -1};
  // Not the lowest alone: where rounding leaves a loop open, each of its lengths has to be joined.
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    const Piece& p = pieces_[i];
    if (!p.arc || cross(p.from, down) < -1e-9 || cross(down, p.to) < -1e-9) continue;
    if (dot(p.from, down) < 0 && dot(p.to, down) < 0) continue;
    const Index below = pieceBelow(mesh_->corners()[p.corner] + radius_ * down);
    if (below != kNone) sets.unite(static_cast<Index>(i), below);
  }
  std::vector<Index> number(pieces_.size(), kNone);
  for (std::size_t i = 0; i < pieces_.size(); ++i) {
    Index& n = number[sets.find(static_cast<Index>(i))];
    if (n == kNone) n = parts_++;
    pieces_[i].part = n;
  }
}

// The piece of boundary that a ray from `p` straight down meets first.
Region::Index Region::pieceBelow(Point p) const {
  const auto& pts = mesh_->corners();
  const Point down{0, -1};
  double hit = 1e300;
  Index met = kNone;
  for (int row = grid_->rowAt(p.y + radius_); row >= 0; --row) {
    if (p.y - grid_->topOfRow(row) > hit + radius_) break;
    grid_->wallsInRow(row, p.x - radius_, p.x + radius_, [&](Index w) {
      const auto& wall = mesh_->walls()[w];
      const Interval near = nearSegment(p, down, pts[wall.a], pts[wall.b], radius_);
      // What only touches at the start is left behind.
      if (near.empty() || near.to < 1e-4 || near.to - near.from < 1e-4) return;
      if (const double at = std::max(near.from, 0.0); at < hit) hit = at, met = w;
    });
  }
  return met == kNone ? kNone : pieceAt(met, p + hit * down);
}

// Of the pieces along a wall and round its ends the nearest to a place: of those alone, for where the walls
// of a gap all but touch at the radius, others are as near.
Region::Index Region::pieceAt(Index wall, Point place) const {
  const auto& pts = mesh_->corners();
  const auto off = [&](const Piece& p) {
    if (!p.arc) return distance(Segment{p.from, p.to}, place);
    const Point u = place - pts[p.corner];
    return p.faces(u) ? std::abs(length(u) - radius_)
                      : std::min(distance(place, beginOf(p)), distance(place, endOf(p)));
  };
  Index best = kNone;
  double nearest = 1e300;
  const auto& [a, b, left, right] = mesh_->walls()[wall];
  for (const Range r : {alongWall(wall), roundCorner(a), roundCorner(b)}) {
    for (Index i = r.first; i < r.last; ++i) {
      if (const double d = off(pieces_[i]); d < nearest) nearest = d, best = i;
    }
  }
  return best;
}

bool Region::holds(Point p) const {
  return mesh_->floorTriangle(p) != kNone && grid_->clearance(p, radius_) >= radius_ - kRounding_mm;
}

Region::Index Region::partAt(Point p) const {
  const Index piece = pieceBelow(p);
  return piece == kNone ? kNone : pieces_[piece].part;
}

}  // namespace stopwalk::floor
