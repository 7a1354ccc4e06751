#include "core/floor/floor_pieces.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <set>

#include "core/floor/corridor.h"
#include "core/floor/near_places.h"
#include "core/floor/thinned.h"
#include "core/floor/walk_change.h"
#include "core/geometry/polygon.h"

namespace stopwalk::floor {

namespace {

using geometry::Box;

constexpr double kInfinite = std::numeric_limits<double>::infinity();
constexpr double kMore_mm = 100;
// The guess is tried with so much more, and then with that many times more.
constexpr double kFirstMore_mm = 1000, kSecondMore = 1.5;
// A piece of more than this share of the floor is not worth it.
constexpr double kMostOfFloor = 0.5;

Polygon hullOf(std::vector<Point> points) {
  std::ranges::sort(points, [](Point a, Point b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
  Polygon hull;
  const auto side = [&](std::size_t least, Point p) {
    while (hull.size() > least && cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0)
      hull.pop_back();
    hull.push_back(p);
  };
  for (const Point p : points) side(1, p);
  const std::size_t lower = hull.size();
  for (std::size_t i = points.size() - 1; i-- > 0;) side(lower, points[i]);
  hull.pop_back();
  return hull;
}

void addRound(Point p, double by, std::vector<Point>& points) {
  for (const double dx : {-by, by})
    for (const double dy : {-by, by}) points.push_back({std::round(p.x + dx), std::round(p.y + dy)});
}

// The corners of eight tangents of the ellipse about two points.
void addEllipse(Point a, Point b, double sum, double more, std::vector<Point>& points) {
  const double half = sum / 2, apart = distance(a, b) / 2;
  const double across = std::sqrt(std::max(half * half - apart * apart, 0.0));
  const Point along = apart > 0 ? unit(b - a) : Point{1, 0}, middle = 0.5 * (a + b);
  constexpr double kEighth = 0.41421356237309503;  // the tangent of an eighth of half a turn
  for (const double x : {-half, half})
    for (const double y : {-across, across}) {
      addRound(middle + x * along + (kEighth * y) * leftOf(along), more, points);
      addRound(middle + (kEighth * x) * along + y * leftOf(along), more, points);
    }
}

double areaOf(const Box& box) {
  return box.empty() ? 0 : (box.high.x - box.low.x) * (box.high.y - box.low.y);
}

bool holds(const Polygon& convex, Point p) {
  for (std::size_t i = 0; i < convex.size(); ++i) {
    const Segment e = geometry::edgeOf(convex, i);
    if (cross(e.b - e.a, p - e.a) < 0) return false;
  }
  return true;
}

// Whether the box may meet the shape: it may not if it lies beyond one of its edges.
bool meets(const Polygon& convex, const Box& box) {
  for (std::size_t i = 0; i < convex.size(); ++i) {
    const Segment e = geometry::edgeOf(convex, i);
    const Point d = e.b - e.a, inwards = leftOf(d);
    const Point furthest{inwards.x > 0 ? box.high.x : box.low.x, inwards.y > 0 ? box.high.y : box.low.y};
    if (dot(inwards, furthest - e.a) < 0) return false;
  }
  return true;
}

// Lines of the piece that its edge cuts. An upright or level one stays where it is, for all of it has the one
// coordinate.
std::vector<Segment> linesCut(const Plan& piece, const Polygon& shape) {
  constexpr double kOnEdge_mm = 1e-3;
  std::vector<Segment> cut;
  const auto add = [&](const Segment& line) {
    if (line.a.x == line.b.x || line.a.y == line.b.y) return;
    for (std::size_t i = 0; i < shape.size(); ++i)
      if (distance(geometry::edgeOf(shape, i), line) < kOnEdge_mm) return cut.push_back(line);
  };
  const std::size_t walls = piece.walls.size() - shape.size();  // the rest is the edge itself
  std::for_each(piece.walls.begin(), piece.walls.begin() + static_cast<std::ptrdiff_t>(walls), add);
  for (const Passage& p : piece.passages) add(p.first), add(p.second);
  for (const Solid& s : piece.solids)
    for (std::size_t i = 0; i < s.outline.size(); ++i) add(geometry::edgeOf(s.outline, i));
  return cut;
}

}  // namespace

Polygon shapeAbout(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                   double length, double clearance) {
  std::vector<Point> points;
  addRound(from, kRoundEnds_mm, points);
  const auto add = [&](Point middle, double radius) {
    if (distance(from, middle) - radius > length) return;
    addRound(middle, radius + kRoundEnds_mm, points);
    addEllipse(from, middle, length + radius, clearance + kMore_mm, points);
  };
  for (const std::size_t i : which) {
    for (const Point p : to[i].points) add(p, 0);
    for (const Segment& s : to[i].lines) add(0.5 * (s.a + s.b), 0.5 * distance(s.a, s.b));
  }
  return hullOf(std::move(points));
}

Plan pieceOf(const Plan& plan, const Polygon& shape) {
  Plan part;
  const Box box = geometry::boxOf(shape);
  const auto near = [&](const auto& thing) {
    const Box own = geometry::boxOf(thing);
    return geometry::overlap(own, box) && meets(shape, own);
  };
  for (const Polygon& room : plan.rooms)
    if (near(room)) part.rooms.push_back(room);
  for (const Passage& p : plan.passages)
    if (near(outlineOf(p))) part.passages.push_back(p);
  for (const Solid& s : plan.solids)
    if (near(s.outline)) part.solids.push_back(s);
  for (const Segment& w : plan.walls)
    if (near(w)) part.walls.push_back(w);
  for (std::size_t i = 0; i < shape.size(); ++i) part.walls.push_back(geometry::edgeOf(shape, i));
  return part;
}

Guess guessBy(const Walk& like, Point from) {
  return {like.length_mm + (like.path.empty() ? 0 : distance(like.path.front(), from)), like.path};
}

FloorPieces::FloorPieces(const Plan& plan, double clearance, Paths paths, const DoorBounds& doors,
                         EndsAfter ends)
    : plan_(plan), doors_(doors), ends_(ends), origin_(originOf(plan)), clearance_(clearance), paths_(paths) {
  for (const Polygon& room : plan.rooms) whole_.add(geometry::boxOf(room));
}

WalkFinder* FloorPieces::about(const Polygon& shape) {
  for (Piece& piece : pieces_)
    if (std::ranges::all_of(shape, [&](Point p) { return floor::holds(piece.shape, p); }))
      return piece.finder.get();
  if (areaOf(geometry::boxOf(shape)) > kMostOfFloor * areaOf(whole_)) return nullptr;
  const Plan piece = pieceOf(plan_, shape);
  pieces_.push_back({shape, std::make_unique<WalkFinder>(piece, origin_, clearance_, paths_,
                                                         Extent{shape, nullptr, linesCut(piece, shape)})});
  return pieces_.back().finder.get();
}

// The nearest if it is at most that long; if the bound asked for is no more, also that there is none.
std::optional<Nearest> FloorPieces::within(double most, Point from, std::span<const Place> to,
                                           double at_most) {
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < to.size(); ++i)
    if (straightLineTo(from, to[i]) <= most) which.push_back(i);
  WalkFinder* finder = about(shapeAbout(from, to, which, most, clearance_));
  if (!finder) return std::nullopt;
  Nearest found = finder->nearest(from, to, which, most);
  if (finder->unsure()) return std::nullopt;
  if (found.walk.status == WalkStatus::Unmeasured) return found;
  // Which of two that are equally long is found hangs on the triangles.
  if (found.walk.tied) return std::nullopt;
  const bool told = most == at_most || (found.index && found.walk.length_mm < most - kLengthMargin_mm);
  return told ? std::optional(std::move(found)) : std::nullopt;
}

// Those of a corridor's solids that stand by the guessed paths or the ends are tried first. A walk found so
// that keeps clear of the others is the shortest, for these only take floor away; those that it meets are put
// back, and it is sought again.
std::vector<std::size_t> FloorPieces::tell(const std::vector<std::size_t>& who, std::span<const Point> from,
                                           std::span<const Place> to, std::span<const Guess> most,
                                           const Give& give) {
  const NearPlaces near(to);
  std::vector<Span> spans;
  std::set<std::size_t> wanted;
  for (const std::size_t i : who) {
    const DoorBounds::End begin = doors_.end(from[i]);
    for (const std::size_t k : near.within(from[i], most[i].length))
      for (DoorBounds::End& end : endsOf({&to[k], 1}, doors_))
        if (doors_.between(begin, end) <= most[i].length) {
          spans.push_back({begin, std::move(end), most[i].length});
          wanted.insert(k);
        }
  }
  std::vector<Place> places;
  for (const std::size_t k : wanted) places.push_back(to[k]);
  const std::vector<std::size_t> index(wanted.begin(), wanted.end());
  Thinned corridor(corridorOf(plan_, doors_, spans, clearance_ + kMore_mm), clearance_);
  for (const Span& span : spans) corridor.putBackAt(span.from.box), corridor.putBackAt(span.to.box);
  for (const std::size_t i : who) corridor.putBackAlong(most[i].path);

  std::vector<std::size_t> open = who, untold;
  while (!open.empty()) {
    std::vector<Point> points;
    for (const std::size_t i : open) points.push_back(from[i]);
    WalkFinder finder(corridor.plan(), origin_, clearance_, paths_, Extent{{}, &ends_, {}});
    std::vector<std::size_t> again;
    std::vector<std::vector<Point>> meeting;
    finder.forAll(
        points, places,
        [&](std::size_t n, Nearest nearest) {
          const std::size_t i = open[n];
          const bool found =
              nearest.index && !finder.unsure() && nearest.walk.length_mm < most[i].length - kLengthMargin_mm;
          // One of two may be in the way of what is left out.
          if (found && !corridor.keepsClear(nearest.walk.path)) {
            meeting.push_back(std::move(nearest.walk.path));
            return again.push_back(i);
          }
          if (nearest.index) nearest.index = index[*nearest.index];
          found && !nearest.walk.tied ? give(i, std::move(nearest)) : untold.push_back(i);
        },
        open.size() <= kFewWalks ? Pass::OneEach : Pass::OneForAll);
    for (const std::vector<Point>& path : meeting) corridor.putBackAlong(path);
    open = std::move(again);
  }
  std::ranges::sort(untold);
  return untold;
}

void FloorPieces::forAll(std::span<const Point> from, std::span<const Place> to,
                         std::span<const Guess> likely, const Give& give) {
  std::vector<std::size_t> who(from.size());
  std::iota(who.begin(), who.end(), std::size_t{0});
  std::vector<Guess> most(likely.begin(), likely.end());
  for (Guess& m : most) m.length += kFirstMore_mm;
  who = tell(who, from, to, most, give);
  for (Guess& m : most) m.length *= kSecondMore;
  if (!who.empty()) tell(who, from, to, most, give);
}

std::optional<Nearest> FloorPieces::nearest(Point from, std::span<const Place> to, double at_most,
                                            double likely) {
  const double first = std::min(likely + kFirstMore_mm, at_most),
               second = std::min(kSecondMore * first, at_most);
  if (first == kInfinite) return std::nullopt;
  if (auto found = within(first, from, to, at_most)) return found;
  return second > first ? within(second, from, to, at_most) : std::nullopt;
}

std::optional<bool> FloorPieces::onFloor(Point p) {
  WalkFinder* finder = about(shapeAbout(p, {}, {}, 0, clearance_));
  return finder ? std::optional(finder->onFloor(finder->local(p))) : std::nullopt;
}

std::optional<bool> FloorPieces::keeps(Point p, double clearance) {
  if (clearance > kRoundEnds_mm - kMore_mm) return std::nullopt;
  WalkFinder* finder = about(shapeAbout(p, {}, {}, 0, clearance_));
  return finder ? std::optional(finder->keeps(p, clearance)) : std::nullopt;
}

// Lines that the edge cuts lie a millionth of a millimetre off, which joins and parts nothing that is not
// within that of a width of a thousandth less than the one asked for (kBuildLess_mm).
std::vector<std::optional<Mesh::Index>> FloorPieces::joined(std::span<const Point> points, double clearance) {
  std::vector<std::optional<Mesh::Index>> parts(points.size());
  std::vector<Point> corners;
  for (const Point p : points) addRound(p, kRoundEnds_mm, corners);
  if (points.empty() || clearance > kRoundEnds_mm - kLongestStep_mm) return parts;
  WalkFinder* finder = about(hullOf(std::move(corners)));
  for (std::size_t i = 0; finder && i < points.size(); ++i)
    parts[i] = finder->onePartOf(points[i], clearance);
  return parts;
}

}  // namespace stopwalk::floor
