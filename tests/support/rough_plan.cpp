#include "tests/support/rough_plan.h"

#include <cmath>

namespace stopwalk::support {

using geometry::Point;
using geometry::Polygon;

Polygon turnedBox(Point at, double width, double depth, double deg) {
  const double w = width / 2, d = depth / 2;
  Polygon p = {{-w, -d}, {w, -d}, {w, d}, {-w, d}};
  for (Point& c : p) c = at + geometry::turned(c, deg);
  return p;
}

floor::Plan roughPlan(Numbers& n, int most) {
  floor::Plan plan;
  const Polygon rooms[] = {{{0, 0}, {8000, 0}, {8000, 6000}, {0, 6000}},
                           {{0, 0}, {8000, 0}, {8000, 3000}, {4500, 3000}, {4500, 7000}, {0, 7000}}};
  const Polygon room = rooms[n.below(2)];
  plan.rooms = {room};
  for (std::size_t i = 0; i < room.size(); ++i) plan.walls.push_back({room[i], room[(i + 1) % room.size()]});
  const int solids = 1 + n.below(most);
  const bool raster = n.below(2) == 0;
  for (int i = 0; i < solids; ++i) {
    Point at{n.in(0, 8000), n.in(0, 6000)};
    double w = n.in(300, 2500), d = n.in(300, 1500);
    if (raster) {
      at = {std::round(at.x / 250) * 250, std::round(at.y / 250) * 250};
      w = std::round(w / 500) * 500 + 500;
      d = std::round(d / 500) * 500 + 500;
    }
    plan.solids.push_back({turnedBox(at, w, d, raster ? 0 : n.in(0, 360)), std::nullopt, true, static_cast<std::size_t>(i)});
  }
  return plan;
}

Point movedPoint(Point p, double deg, Point by) { return by + geometry::turned(p, deg); }

floor::Plan movedPlan(const floor::Plan& plan, double deg, Point by) {
  floor::Plan moved = plan;
  const auto move = [&](Point& p) { p = movedPoint(p, deg, by); };
  for (Polygon& room : moved.rooms)
    for (Point& p : room) move(p);
  for (auto& s : moved.solids)
    for (Point& p : s.outline) move(p);
  for (auto& w : moved.walls) {
    move(w.a);
    move(w.b);
  }
  for (auto& w : moved.passages)
    for (Point* p : {&w.first.a, &w.first.b, &w.second.a, &w.second.b}) move(*p);
  return moved;
}

}  // namespace stopwalk::support
