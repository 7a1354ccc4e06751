#include "core/floor/standing_places.h"

#include <algorithm>

namespace stopwalk::floor {

namespace {

using namespace geometry;

Frame frameOfDevice(const PlacedDevice& device) {
  const Point out = direction(device.faces);
  return {device.at, {out.y, -out.x}};
}

void sortUnique(std::vector<double>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

}  // namespace

StandingPlaces::StandingPlaces(const PlacedDevice& device, const FloorIndex& index,
                               const Obstacles& obstacles, Between between)
    : device_(device),
      index_(index),
      obstacles_(obstacles),
      between_(std::move(between)),
      frame_(frameOfDevice(device)) {}

StandingPlaces::Found StandingPlaces::find() const {
  return device_.length ? findLine() : findPoint();
}

StandingPlaces::Found StandingPlaces::findPoint() const {
  Found found;
  for (double begins_at : begins()) {
    const auto y = standsAt(0, begins_at);
    if (!y) continue;
    const Point p = frame_.out({0, *y});
    found.on_floor = p;
    found.between = between_({p, device_.at});
    if (!found.between) found.place.points.push_back(p);
    break;
  }
  return found;
}

StandingPlaces::Found StandingPlaces::findLine() const {
  Found found;
  const std::vector<double> x = changes();
  struct Free {
    Stretch along;
    double y;
  };
  std::vector<Free> free;
  for (std::size_t i = 0; i + 1 < x.size(); ++i) {
    if (x[i + 1] - x[i] <= kOnOutline_mm) continue;
    const double middle = (x[i] + x[i + 1]) / 2;
    const auto y = standsAt(middle, from());
    if (!y) continue;
    const Point p = frame_.out({middle, *y});
    if (!found.on_floor) found.on_floor = p;
    if (const auto between = between_({p, frame_.out({middle, 0})})) {
      if (!found.between) found.between = between;
    } else if (!free.empty() && x[i] - free.back().along.to <= kOnOutline_mm && free.back().y == *y) {
      free.back().along.to = x[i + 1];
    } else {
      free.push_back({{x[i], x[i + 1]}, *y});
    }
  }
  for (const auto& [along, y] : free)
    if (along.to - along.from > kTouch_mm)
      found.place.lines.push_back({frame_.out({along.from, y}), frame_.out({along.to, y})});
  if (!found.place.empty()) {
    found.on_floor = at(found.place.lines.front(), 0.5);
    found.between.reset();
  }
  return found;
}

std::vector<double> StandingPlaces::begins() const {
  std::vector<double> y{from()};
  if (upTo() <= from()) return y;
  const double most = upTo() + kTouch_mm;
  const Segment ray{frame_.out({0, from()}), frame_.out({0, most})};
  eachEdge(boxOf(ray).grown(kOnOutline_mm), [&](Segment e) {
    const auto beside = clippedByX(e, -kOnOutline_mm, kOnOutline_mm);
    if (!beside) return;
    const auto add = [&](double at_y) {
      if (at_y > from() && at_y <= most) y.push_back(at_y);
    };
    if ((e.a.x > 0) != (e.b.x > 0)) add(e.a.y - e.a.x / (e.b.x - e.a.x) * (e.b.y - e.a.y));
    if (std::abs(e.b.x - e.a.x) <= 2 * kOnOutline_mm || (e.a.x > 0) == (e.b.x > 0)) {
      add(beside->a.y);
      add(beside->b.y);
    }
  });
  sortUnique(y);
  return y;
}

std::vector<double> StandingPlaces::changes() const {
  const double half = *device_.length / 2, s = from();
  std::vector<double> x{-half, half};
  Box area;
  for (double along : {-half, half})
    for (double out : {0.0, s}) area.add(frame_.out({along, out}));
  const auto addWhere = [&](Segment e, double low, double high) {
    const auto across = clippedByX(e, -half, half);
    if (!across) return;
    if (const auto there = clippedByY(*across, low, high)) {
      x.push_back(there->a.x);
      x.push_back(there->b.x);
    }
  };
  eachEdge(area.grown(kOnOutline_mm), [&](Segment e) {
    addWhere(e, 0, s);
    addWhere(e, s - kOnOutline_mm, s + kOnOutline_mm);
  });
  obstacles_.wallBoxes().any(area, [&](std::size_t i) {
    const Segment& w = obstacles_.walls()[i];
    const Segment e{frame_.in(w.a), frame_.in(w.b)};
    addWhere(e, 0, s);
    if (!device_.machine) addWhere(e, kInWall_mm, s);
    return false;
  });
  sortUnique(x);
  return x;
}

bool StandingPlaces::canStand(Point p) const {
  if (!index_.onFloor(p)) return false;
  const Point here = frame_.in(p);
  for (double dx : {-kTouch_mm, kTouch_mm})
    for (double dy : {-kTouch_mm, kTouch_mm})
      if (index_.onFloor(frame_.out(here + Point{dx, dy}))) return true;
  return false;
}

std::optional<double> StandingPlaces::standsAt(double x, double y) const {
  if (!canStand(frame_.out({x, y}))) return std::nullopt;
  if (!index_.onFloor(frame_.out({x, y + kTouch_mm})) || !isOnWallAcross({x, y})) return y;
  // Such a wall has floor on both sides. Who stands beyond it does not stand before the device.
  const double before = y - kTouch_mm;
  return canStand(frame_.out({x, before})) ? std::optional(before) : std::nullopt;
}

// Whether walls through the place run to both sides of the way straight to the device.
bool StandingPlaces::isOnWallAcross(Point here) const {
  bool left = false, right = false;
  const Point p = frame_.out(here);
  obstacles_.wallBoxes().any(boxOf(p).grown(kTouch_mm), [&](std::size_t i) {
    const Segment& wall = obstacles_.walls()[i];
    if (distance(wall, p) > kTouch_mm / 2) return false;
    for (const Point& end : {wall.a, wall.b}) {
      const double aside = frame_.in(end).x - here.x;
      left = left || aside < -kTouch_mm;
      right = right || aside > kTouch_mm;
    }
    return false;
  });
  return left && right;
}

// The edges of rooms, passages and solids in `area`, in the frame of the device.
template <class Visit>
void StandingPlaces::eachEdge(const Box& area, Visit&& visit) const {
  for (const IndexedPolygons* polygons : {&index_.rooms(), &index_.passages(), &index_.solids()}) {
    polygons->boxes().any(area, [&](std::size_t i) {
      return (*polygons)[i].anyEdge(area, [&](std::size_t edge) {
        const Segment e = edgeOf((*polygons)[i].corners(), edge);
        visit(Segment{frame_.in(e.a), frame_.in(e.b)});
        return false;
      });
    });
  }
}

}  // namespace stopwalk::floor
