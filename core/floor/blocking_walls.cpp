#include "core/floor/blocking_walls.h"

#include <algorithm>
#include <tuple>

#include "core/geometry/indexed_polygon.h"

namespace stopwalk::floor {

namespace {

using namespace geometry;

void addWall(Point from, Point to, std::vector<Segment>& walls) {
  if (distance(from, to) > kOnOutline_mm) walls.push_back({from, to});
}

void addOutlines(const RoomWalls& walls, std::vector<Opening> openings, std::vector<Segment>& all) {
  std::sort(openings.begin(), openings.end(), [](const Opening& a, const Opening& b) {
    return std::tie(a.edge.room, a.edge.edge, a.from_t) < std::tie(b.edge.room, b.edge.edge, b.from_t);
  });
  auto next = openings.begin();
  for (std::size_t room = 0; room < walls.rooms().size(); ++room) {
    for (std::size_t i = 0; i < walls.rooms()[room].corners().size(); ++i) {
      const WallEdge edge{room, i};
      const Segment whole = walls.segment(edge);
      Point from = whole.a;
      double from_t = 0;
      for (; next != openings.end() && next->edge == edge; ++next) {
        if (next->from_t > from_t) addWall(from, next->from, all);
        if (next->to_t > from_t) std::tie(from, from_t) = std::tuple{next->to, next->to_t};
      }
      addWall(from, whole.b, all);
    }
  }
}

// The parameters of `s` inside a convex polygon.
std::optional<Stretch> inside(Segment s, const Polygon& convex) {
  const double turn = signedArea(convex) > 0 ? 1 : -1;
  Stretch in{0, 1};
  for (std::size_t i = 0; i < convex.size(); ++i) {
    const Segment e = edgeOf(convex, i);
    const double a = turn * cross(e.b - e.a, s.a - e.a), b = turn * cross(e.b - e.a, s.b - e.a);
    if (a <= 0 && b <= 0) return std::nullopt;
    if (a < 0) in.from = std::max(in.from, a / (a - b));
    if (b < 0) in.to = std::min(in.to, a / (a - b));
  }
  if (in.from >= in.to) return std::nullopt;
  return in;
}

// Keeps of the jamb what has no other passage beyond it.
void addJamb(const Jamb& jamb, const IndexedPolygons& passages, std::vector<Segment>& walls) {
  const Point aside = (2 * kTouch_mm) * jamb.outward;
  const Segment beyond{jamb.wall.a + aside, jamb.wall.b + aside};
  std::vector<Stretch> open;
  passages.boxes().any(boxOf(beyond), [&](std::size_t i) {
    if (const auto s = inside(beyond, passages[i].corners())) open.push_back(*s);
    return false;
  });
  std::sort(open.begin(), open.end(), [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
  double reached = 0;
  for (const Stretch& s : open) {
    if (s.from > reached) addWall(at(jamb.wall, reached), at(jamb.wall, s.from), walls);
    reached = std::max(reached, s.to);
  }
  addWall(at(jamb.wall, reached), jamb.wall.b, walls);
}

}  // namespace

std::vector<Segment> blockingWalls(const RoomWalls& walls, const std::vector<const Doorway*>& open) {
  std::vector<Segment> all;
  std::vector<Opening> openings;
  std::vector<IndexedPolygon> through;
  for (const Doorway* way : open) {
    openings.insert(openings.end(), way->openings.begin(), way->openings.end());
    for (const Passage& p : way->passages) {
      const Polygon outline = outlineOf(p);
      through.emplace_back(hasNoArea(outline) ? Polygon{} : outline);
    }
  }
  addOutlines(walls, std::move(openings), all);
  const IndexedPolygons passages(std::move(through));
  for (const Doorway* way : open)
    for (const Jamb& jamb : way->jambs) addJamb(jamb, passages, all);
  return all;
}

}  // namespace stopwalk::floor
