#include "core/floor/steps.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

#include "core/floor/covered.h"
#include "core/floor/walks.h"
#include "core/geometry/lattice.h"

namespace stopwalk::floor {

using Index = Mesh::Index;

namespace {

// Steps that differ by less are equally long.
constexpr double kEquallyNear_mm = 1e-4;
// A point nearer to a line than this is on it.
constexpr double kOnLine_mm = 1e-5;
// Places this far apart along a bar are asked one by one; between two that step alike, so do all.
constexpr double kSpacing_mm = 25;
// So far apart where something stands near enough to hide or show the end of a step between them.
constexpr double kSlender_mm = 1;
// A step from half way that ends nearer to half way than this does so.
constexpr double kBent_mm = 1e-3;
// So many of them are near the same pieces, or nearly so.
constexpr int kTogether = 32;

enum Feature { kFoot, kBegin, kEnd, kShadow };

// Adds a stretch, joined to the one before it where both go straight in to one piece of the boundary.
void append(const PartLanding& l, std::vector<PartLanding>& landings) {
  const bool straight = l.landing.kind == Landing::Kind::Straight && squaredLength(l.outward) > 0;
  for (auto it = landings.rbegin(); straight && it != landings.rend(); ++it) {
    if (it->part != l.part) continue;
    if (it->piece != l.piece || it->landing.kind != l.landing.kind || it->landing.b != l.landing.a) break;
    if (squaredLength(it->outward - l.outward) > 1e-18) break;
    it->landing.b = l.landing.b;
    it->landing.to = l.landing.to;
    return;
  }
  landings.push_back(l);
}

}  // namespace

std::vector<Index> Steps::piecesNear(Point a, Point b) const {
  std::vector<Index> pieces;
  const auto addAll = [&](Region::Range r) {
    for (Index i = r.first; i < r.last; ++i) pieces.push_back(i);
  };
  grid_->wallsNear(a, b, kLongestStep_mm + region_->radius(), [&](Index w) {
    addAll(region_->alongWall(w));
    addAll(region_->roundCorner(mesh_->walls()[w].a));
    addAll(region_->roundCorner(mesh_->walls()[w].b));
  });
  std::sort(pieces.begin(), pieces.end());
  pieces.erase(std::unique(pieces.begin(), pieces.end()), pieces.end());
  return pieces;
}

Steps::Candidate Steps::nearestOn(Point p, Index index) const {
  const Region::Piece& piece = region_->pieces()[index];
  const Point begin = region_->beginOf(piece), end = region_->endOf(piece);
  if (piece.arc) {
    const Point v = mesh_->corners()[piece.corner], u = p - v;
    const double size = length(u);
    if (size > 0 && piece.faces(u))
      return {v + (region_->radius() / size) * u, std::abs(size - region_->radius()), index, kFoot};
  } else {
    const Point u = end - begin;
    const double t = dot(p - begin, u) / squaredLength(u);
    if (t > 0 && t < 1) {
      const Point foot = begin + t * u;
      return {foot, distance(p, foot), index, kFoot};
    }
  }
  const double to_begin = distance(p, begin), to_end = distance(p, end);
  if (to_begin <= to_end) return {begin, to_begin, index, kBegin};
  return {end, to_end, index, kEnd};
}

// From the very corner all points of its arc are equally near: one for each degree stands for them, which
// makes a walk longer by less than a hundredth of a millimetre.
void Steps::addAllRound(Point p, Index index, std::vector<Candidate>& candidates) const {
  const Region::Piece& piece = region_->pieces()[index];
  const Point v = mesh_->corners()[piece.corner];
  if (!piece.arc || distance(p, v) > kEquallyNear_mm) return;
  const int degrees = static_cast<int>(piece.angle * 180 / std::numbers::pi);
  const double start = std::atan2(piece.from.y, piece.from.x);
  for (int i = 1; i <= degrees; ++i) {
    const double a = start + piece.angle * i / (degrees + 1);
    candidates.push_back(
        {v + region_->radius() * Point{std::cos(a), std::sin(a)}, region_->radius(), index, kFoot, false});
  }
}

// What else of a piece may be the nearest point seen: its ends, and the edges of shadows.
void Steps::addBehind(Point p, const Candidate& hidden, std::vector<Candidate>& candidates) const {
  const Region::Piece& piece = region_->pieces()[hidden.piece];
  const auto add = [&](Point at, Feature feature) {
    const double step = distance(p, at);
    if (feature != hidden.feature && step <= kLongestStep_mm)
      candidates.push_back({at, step, hidden.piece, feature, false});
  };
  add(region_->beginOf(piece), kBegin);
  add(region_->endOf(piece), kEnd);
  addShadows(p, hidden.piece, hidden.step, candidates);
}

// Where the line of sight past a corner meets the piece: the nearest point seen of a piece may lie on the
// edge of a shadow.
void Steps::addShadows(Point p, Index index, double least, std::vector<Candidate>& candidates) const {
  const Region::Piece& piece = region_->pieces()[index];
  grid_->cornersNear(p, p, kLongestStep_mm, [&](Index c, Point w) {
    const double to_corner = distance(p, w);
    if (to_corner < kOnLine_mm || to_corner > kLongestStep_mm) return true;
    const Point d = (1 / to_corner) * (w - p);
    const auto add = [&](double s) {
      if (s > to_corner && s >= least && s <= kLongestStep_mm)
        candidates.push_back({p + s * d, s, index, kShadow + static_cast<int>(c), false});
    };
    if (piece.arc) {
      const Point v = mesh_->corners()[piece.corner];
      const double along = dot(v - p, d), off = cross(d, v - p),
                   half = region_->radius() * region_->radius() - off * off;
      if (half < 0) return true;
      for (double s : {along - std::sqrt(half), along + std::sqrt(half)}) {
        if (piece.faces(p + s * d - v)) add(s);
      }
    } else {
      const Point u = piece.to - piece.from;
      const double slant = cross(d, u);
      if (slant == 0) return true;
      const double s = cross(piece.from - p, u) / slant, t = cross(piece.from - p, d) / slant;
      if (t >= 0 && t <= 1) add(s);
    }
    return true;
  });
}

// On which sides a straight line in direction `d` can pass the corner that it goes through: those with floor
// beside it and no wall that leaves the corner to that side.
Steps::Sides Steps::passable(Index corner, Point d) const {
  const auto& pts = mesh_->corners();
  const auto onFloor = [&](Point u) {
    const Index t = mesh_->triangleToward(corner, u);
    return t != Mesh::kNone && mesh_->isFloor(t);
  };
  Sides sides{onFloor(leftOf(d)), onFloor(-leftOf(d))};
  for (Index s : mesh_->wallsAt(corner)) {
    const auto& spoke = mesh_->walls()[s];
    const double side = cross(d, pts[spoke.a == corner ? spoke.b : spoke.a] - pts[corner]);
    if (side > kOnLine_mm) sides.left = false;
    if (side < -kOnLine_mm) sides.right = false;
  }
  return sides;
}

// Whether the straight line crosses no wall; touching and running along are allowed.
bool Steps::sees(Point p, Point q) const {
  const double size = distance(p, q);
  if (size < kOnLine_mm) return true;
  const Point d = (1 / size) * (q - p);
  const auto& pts = mesh_->corners();
  bool clear = true;
  grid_->wallsNear(p, q, 1e-3, [&](Index w) {
    if (!clear) return;
    const auto& wall = mesh_->walls()[w];
    const double sa = cross(d, pts[wall.a] - p), sb = cross(d, pts[wall.b] - p);
    const double ta = dot(d, pts[wall.a] - p), tb = dot(d, pts[wall.b] - p);
    const auto inside = [&](double t) { return t > kOnLine_mm && t < size - kOnLine_mm; };
    if (std::abs(sa) > kOnLine_mm && std::abs(sb) > kOnLine_mm) {
      // What starts on the wall, by rounding a hair behind it, may cross it far along at a flat angle.
      const Segment line{pts[wall.a], pts[wall.b]};
      const auto on = [&](Point end) { return distance(line, end) < kOnLine_mm; };
      if ((sa > 0) != (sb > 0) && inside(ta + (tb - ta) * sa / (sa - sb)) && !on(p) && !on(q)) clear = false;
      return;
    }
    // Through corners: one side must be open, and along a wall the same one at both its ends.
    Sides sides{true, true};
    for (const auto& [corner, off, t] : {std::tuple{wall.a, sa, ta}, {wall.b, sb, tb}}) {
      if (std::abs(off) > kOnLine_mm || !inside(t)) continue;
      const Sides here = passable(corner, d);
      sides = {sides.left && here.left, sides.right && here.right};
    }
    clear = sides.left || sides.right;
  });
  return clear;
}

// Nobody steps through a gap that a body does not pass. Most steps keep a body's half-width all along, or
// begin where no body fits: of those no region is needed.
bool Steps::allowed(Point p, Point q) const {
  if (!body_) return true;
  const double half_width = builtAt(kBodyHalfWidth_mm);
  if (grid_->clearance(p, half_width) < half_width - kRounding_mm) return true;
  if (grid_->clearance(Segment{p, q}, half_width) >= half_width) return true;
  const Region& body = body_();
  return !body.holds(p) || body.partAt(p) == body.partAt(q);
}

Exit Steps::exitOf(const Candidate& c) const {
  const Region::Piece& piece = region_->pieces()[c.piece];
  Exit exit{c.at, c.step, piece.part, {0, 0}, c.piece, c.feature};
  if (c.feature != kFoot) return exit;
  exit.outward =
      piece.arc ? unit(c.at - mesh_->corners()[piece.corner]) : leftOf(unit(piece.to - piece.from));
  return exit;
}

std::vector<Exit> Steps::from(Point p) const {
  if (region_->holds(p)) return {{p, 0, region_->partAt(p), {0, 0}, Region::kNone, kFoot}};
  return outOf(p, piecesNear(p, p));
}

std::vector<Exit> Steps::from(Point p, std::span<const Index> near) const {
  if (region_->holds(p)) return {{p, 0, region_->partAt(p), {0, 0}, Region::kNone, kFoot}};
  return outOf(p, near);
}

std::vector<Exit> Steps::outOf(Point p, std::span<const Index> near) const {
  std::vector<Candidate> open;
  open.reserve(near.size());
  for (Index i : near) {
    const Candidate c = nearestOn(p, i);
    if (c.step <= kLongestStep_mm) open.push_back(c);
    addAllRound(p, i, open);
  }
  const auto nearer = [](const Candidate& a, const Candidate& b) {
    return std::tie(a.step, a.at.x, a.at.y, a.piece) < std::tie(b.step, b.at.x, b.at.y, b.piece);
  };
  std::sort(open.begin(), open.end(), nearer);
  std::vector<Exit> exits;
  std::vector<Index> refused;
  // Taken nearest first; a piece whose nearest point is hidden is asked for its ends and the edges of its
  // shadows.
  for (std::size_t i = 0; i < open.size(); ++i) {
    const Candidate c = open[i];
    const Index part = region_->pieces()[c.piece].part;
    const auto first =
        std::find_if(exits.begin(), exits.end(), [&](const Exit& e) { return e.part == part; });
    if (first != exits.end() && c.step > first->step + kEquallyNear_mm) continue;
    if (std::find(refused.begin(), refused.end(), part) != refused.end()) continue;
    if (sees(p, c.at) && (c.feature < kShadow || region_->holds(geometry::onLattice(c.at)))) {
      const bool known = std::any_of(exits.begin(), exits.end(), [&](const Exit& e) {
        return e.part == part && distance(e.at, c.at) < 1e-3;
      });
      if (known) continue;
      if (allowed(p, geometry::onLattice(c.at))) {
        exits.push_back(exitOf(c));
      } else {
        refused.push_back(part);
        ++refused_;
      }
      continue;
    }
    if (!c.nearest) continue;
    addBehind(p, c, open);
    std::sort(open.begin() + static_cast<std::ptrdiff_t>(i) + 1, open.end(), nearer);
  }
  return exits;
}

// Whether from half way between two places that step alike one steps half way between their ends: to the edge
// of a shadow one does not.
bool Steps::isStraight(std::span<const Exit> at_a, std::span<const Exit> at_middle,
                       std::span<const Exit> at_b) {
  for (std::size_t i = 0; i < at_a.size(); ++i) {
    if (at_a[i].feature < kShadow) continue;
    if (i >= at_middle.size() || at_middle[i].piece != at_a[i].piece ||
        at_middle[i].feature != at_a[i].feature ||
        distance(at_middle[i].at, 0.5 * (at_a[i].at + at_b[i].at)) > kBent_mm)
      return false;
  }
  return true;
}

// Whether a corner is so near that it may hide or show another end of a step between two places. Where all
// steps are within the region, or to its very edge, none is.
bool Steps::isCrowded(Point a, Point b, std::span<const Exit> at_a, std::span<const Exit> at_b) const {
  double longest = 0;
  for (const auto& exits : {at_a, at_b})
    for (const Exit& e : exits) longest = std::max(longest, e.step);
  if (longest == 0) return false;
  bool crowded = false;
  grid_->cornersNear(a, b, longest, [&](Index, Point w) {
    crowded = distance(Segment{a, b}, w) < longest;
    return !crowded;
  });
  return crowded;
}

// Between two places: one stretch for each part if both step alike, else halved until it is too short to
// matter.
void Steps::stepAlike(Point a, Point b, const std::vector<Exit>& at_a, const std::vector<Exit>& at_b,
                      int depth, std::span<const Index> near, std::vector<PartLanding>& landings) const {
  const bool alike =
      std::equal(at_a.begin(), at_a.end(), at_b.begin(), at_b.end(), [](const Exit& x, const Exit& y) {
        return x.part == y.part && x.piece == y.piece && x.feature == y.feature;
      });
  const bool crowded = alike && distance(a, b) > kSlender_mm && isCrowded(a, b, at_a, at_b);
  const bool bends = alike && std::ranges::any_of(at_a, [](const Exit& e) { return e.feature >= kShadow; });
  const Point middle = geometry::onLattice(0.5 * (a + b));
  const std::vector<Exit> at_middle =
      (alike && !bends && !crowded) || depth == 0 ? std::vector<Exit>() : from(middle, near);
  if (depth == 0 || (alike && !crowded && (!bends || isStraight(at_a, at_middle, at_b)))) {
    for (const Exit& e : at_a) {
      const auto other =
          std::find_if(at_b.begin(), at_b.end(), [&](const Exit& x) { return x.part == e.part; });
      if (other == at_b.end()) continue;
      PartLanding l;
      l.part = e.part;
      l.piece = e.piece;
      l.landing.a = a;
      l.landing.b = b;
      if (e.piece == Region::kNone || other->piece == Region::kNone) {  // the region's edge runs along here
        l.landing.from = e.at;
        l.landing.to = other->at;
        l.landing.kind = e.piece == other->piece ? Landing::Kind::Inside : Landing::Kind::Straight;
        append(l, landings);
        continue;
      }
      const Region::Piece& piece = region_->pieces()[e.piece];
      if (alike && piece.arc && e.feature == kFoot) {
        l.landing.kind = Landing::Kind::Round;
        l.landing.centre = mesh_->corners()[piece.corner];
        l.landing.radius = region_->radius();
      } else {
        l.landing.kind = Landing::Kind::Straight;
        l.landing.from = e.at;
        l.landing.to = alike ? other->at : e.at;
        l.outward = e.outward;
      }
      append(l, landings);
    }
    return;
  }
  stepAlike(a, middle, at_a, at_middle, depth - 1, near, landings);
  stepAlike(middle, b, at_middle, at_b, depth - 1, near, landings);
}

std::vector<PartLanding> Steps::fromLine(Point a, Point b) const {
  const double size = distance(a, b);
  if (size < kOnLine_mm) return {};
  const Point d = (1 / size) * (b - a);
  std::vector<Interval> covered;
  grid_->wallsNear(a, b, region_->radius(), [&](Index w) {
    const auto& wall = mesh_->walls()[w];
    const Interval near = nearSegment(a, d, mesh_->corners()[wall.a], mesh_->corners()[wall.b],
                                      region_->radius() - kRounding_mm);
    if (!near.empty() && near.to > 0 && near.from < size) covered.push_back(near);
  });
  std::vector<PartLanding> landings;
  double at = 0;
  const auto stepping = [&](double from_s, double to_s) {
    if (to_s - from_s < kOnLine_mm) return;
    const int count = std::max(1, static_cast<int>(std::ceil((to_s - from_s) / kSpacing_mm)));
    const auto place = [&](int i) {
      return geometry::onLattice(a + (from_s + (to_s - from_s) * i / count) * d);
    };
    std::vector<Index> near;
    Point last = place(0);
    std::vector<Exit> at_last = from(last);
    for (int i = 1; i <= count; ++i) {
      if (i % kTogether == 1) near = piecesNear(last, place(std::min(i + kTogether - 1, count)));
      const Point next = place(i);
      std::vector<Exit> at_next = from(next, near);
      stepAlike(last, next, at_last, at_next, 16, near, landings);
      last = next;
      at_last = std::move(at_next);
    }
  };
  std::vector<Interval> open;
  uncovered(0, size, covered, kOnLine_mm, open);
  for (const Interval& free : open) {
    stepping(at, free.from);
    const Point from_p = geometry::onLattice(a + free.from * d), to_p = geometry::onLattice(a + free.to * d);
    const Point middle = geometry::onLattice(0.5 * (from_p + to_p));
    landings.push_back({{Landing::Kind::Inside, from_p, to_p, {}, {}, {}, 0},
                        region_->partAt(middle),
                        {0, 0},
                        Region::kNone});
    at = free.to;
  }
  stepping(at, size);
  return landings;
}

}  // namespace stopwalk::floor
