#include "core/floor/room_walls.h"

#include <algorithm>
#include <tuple>

namespace stopwalk::floor {

namespace {

using namespace geometry;

// A corner from which no straight wall goes on: the one farthest from the first.
std::size_t trueCorner(const Polygon& outline) {
  std::size_t farthest = 0;
  for (std::size_t i = 0; i < outline.size(); ++i)
    if (squaredLength(outline[i] - outline[0]) > squaredLength(outline[farthest] - outline[0])) farthest = i;
  return farthest;
}

// Grows a wall from its first corner: the directions in which a straight line passes all corners so far by a
// touch at most.
class Straight {
 public:
  explicit Straight(Point start) : start_(start) {}

  bool takes(Point next) {
    const Point d = next - start_;
    const double far = length(d);
    if (far <= far_) return false;
    if (far > kTouch_mm) {
      if (!any_) first_ = (1 / far) * d;
      const double turn = std::atan2(cross(first_, d), dot(first_, d)), play = std::asin(kTouch_mm / far);
      if (any_ && (turn < least_ || turn > most_)) return false;
      least_ = any_ ? std::max(least_, turn - play) : turn - play;
      most_ = any_ ? std::min(most_, turn + play) : turn + play;
      any_ = true;
    }
    far_ = far;
    return true;
  }

 private:
  Point start_, first_;
  double far_ = 0, least_ = 0, most_ = 0;
  bool any_ = false;
};

void addStraightWalls(std::size_t room, const Polygon& outline, std::vector<StraightWall>& walls) {
  const std::size_t n = outline.size(), start = trueCorner(outline);
  for (std::size_t done = 0; done < n;) {
    const std::size_t first = (start + done) % n;
    Straight straight(outline[first]);
    std::size_t edges = 0;
    while (done + edges < n && straight.takes(outline[(first + edges + 1) % n])) ++edges;
    edges = std::max<std::size_t>(edges, 1);
    walls.push_back({room, first, edges, {outline[first], outline[(first + edges) % n]}});
    done += edges;
  }
}

}  // namespace

RoomWalls::RoomWalls(const IndexedPolygons& rooms) : rooms_(rooms) {
  std::vector<Box> boxes;
  for (std::size_t room = 0; room < rooms.size(); ++room) {
    const Polygon& outline = rooms[room].corners();
    left_.push_back(!outline.empty() && signedArea(outline) > 0);
    if (outline.empty()) continue;
    addStraightWalls(room, outline, straight_);
    for (std::size_t i = 0; i < outline.size(); ++i) {
      edges_.push_back({room, i});
      boxes.push_back(boxOf(edgeOf(outline, i)));
    }
  }
  edge_boxes_ = BoxTree(boxes);
  boxes.clear();
  for (const StraightWall& w : straight_) boxes.push_back(boxOf(w.chord));
  straight_boxes_ = BoxTree(boxes);
}

std::vector<StraightWall> RoomWalls::near(std::size_t room, Point p, double reach) const {
  std::vector<std::tuple<double, std::size_t>> found;
  straight_boxes_.any(boxOf(p).grown(reach), [&](std::size_t i) {
    const double away = distance(straight_[i].chord, p);
    if (straight_[i].room == room && away <= reach) found.emplace_back(away, i);
    return false;
  });
  std::sort(found.begin(), found.end());
  std::vector<StraightWall> walls;
  for (const auto& [away, i] : found) walls.push_back(straight_[i]);
  return walls;
}

std::vector<WallEdge> RoomWalls::in(const Box& area) const {
  std::vector<std::size_t> found;
  edge_boxes_.any(area, [&](std::size_t i) { return found.push_back(i), false; });
  std::sort(found.begin(), found.end());
  std::vector<WallEdge> edges;
  for (std::size_t i : found) edges.push_back(edges_[i]);
  return edges;
}

}  // namespace stopwalk::floor
