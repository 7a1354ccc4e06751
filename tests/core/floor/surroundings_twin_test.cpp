#include <gtest/gtest.h>

#include <algorithm>

#include "core/floor/surroundings.h"
#include "core/geometry/segment.h"
#include "tests/support/draw.h"
#include "tests/support/rough_plan.h"

// Answers of Surroundings beside slow ones made from the words of docs/measuring.md, point by point along dense lines.
namespace stopwalk::floor {
namespace {

using namespace draw;
using geometry::Segment;
using layout::Layout;
using support::Numbers;

bool strictlyInside(const Polygon& polygon, Point p) {
  bool inside = false;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Point a = polygon[i] - p, b = polygon[(i + 1) % polygon.size()] - p;
    if ((a.y > 0) != (b.y > 0) && (b.y > a.y) == (cross(a, b) > 0)) inside = !inside;
  }
  return inside;
}

// How near `p` is to where an answer changes: there the twin, which has no tolerance, is not asked.
double toNearestEdge(const Plan& plan, Point p) {
  double least = 1e300;
  const auto take = [&](const Polygon& polygon) {
    for (std::size_t i = 0; i < polygon.size(); ++i)
      least = std::min(least, distance(Segment{polygon[i], polygon[(i + 1) % polygon.size()]}, p));
  };
  for (const Polygon& r : plan.rooms) take(r);
  for (const Passage& w : plan.passages) take(outlineOf(w));
  for (const Solid& s : plan.solids) take(s.outline);
  return least;
}

bool slowOnFloor(const Plan& plan, Point p) {
  const auto holds = [p](const Polygon& polygon) { return strictlyInside(polygon, p); };
  const bool open = std::any_of(plan.rooms.begin(), plan.rooms.end(), holds) ||
                    std::any_of(plan.passages.begin(), plan.passages.end(), [&](const Passage& w) { return holds(outlineOf(w)); });
  return open && std::none_of(plan.solids.begin(), plan.solids.end(), [&](const Solid& s) { return holds(s.outline); });
}

// What a device touches does not carry it if it stands before it, unless the machine stands on that.
bool slowCarries(const Plan& plan, const Solid& solid, const PlacedDevice& device) {
  for (const Solid& s : plan.solids) {
    if (!s.is_machine || device.machine != s.index) continue;
    const Point middle = 0.5 * (s.outline[0] + s.outline[2]);  // of a rectangle
    if (strictlyInside(solid.outline, middle)) return true;
  }
  const Point out = geometry::direction(device.faces);
  double before = -1e300, behind = 1e300;
  for (const Point& corner : solid.outline) {
    before = std::max(before, dot(corner - device.at, out));
    behind = std::min(behind, dot(corner - device.at, out));
  }
  return before <= 1 || (before <= 100 && before + behind <= 0);
}

double toOutline(const Polygon& polygon, Point p) {
  double away = 1e300;
  for (std::size_t i = 0; i < polygon.size(); ++i) away = std::min(away, distance(Segment{polygon[i], polygon[(i + 1) % polygon.size()]}, p));
  return away;
}

bool deepIn(const Polygon& polygon, Point p) {
  return strictlyInside(polygon, p) && toOutline(polygon, p) > 1;
}

// Where the wall that the device is drawn in ends on the line to it, in mm from the device: felt for in small
// steps, first along the facing for the floor that it faces, then along the line for that same floor.
double slowInWall(const Plan& plan, Segment line, const PlacedDevice& device) {
  if (device.machine) return 0;
  for (const Polygon& r : plan.rooms)
    if (deepIn(r, device.at)) return 0;
  std::vector<Polygon> floors = plan.rooms;
  for (const Passage& w : plan.passages) floors.push_back(outlineOf(w));
  const Point out = geometry::direction(device.faces), back = geometry::unit(line.a - line.b);
  for (double far = 0; far < 200; far += 0.25)
    for (const Polygon& floor : floors) {
      if (!deepIn(floor, line.b + far * out)) continue;
      for (double along = 0; along <= std::min(100.0, distance(line.a, line.b)); along += 0.25)
        if (strictlyInside(floor, line.b + along * back)) {
          // Round the end of a wall between two parts of one floor nobody reaches.
          const Segment across{line.b + std::min(along + 20, distance(line.a, line.b)) * back, line.b + (far + 20) * out};
          for (const Segment& w : plan.walls)
            if (crossProperly(across, w, 0)) return 0;
          return along;
        }
      return 0;
    }
  return 0;
}

bool slowSpared(const Plan& plan, const Solid& solid, const PlacedDevice& device) {
  if (solid.is_machine && device.machine == solid.index) return true;
  if (solid.height && device.height && *solid.height < *device.height) return true;
  if (!slowCarries(plan, solid, device)) return false;
  const Segment line = device.line();
  for (int k = 0; k <= 2000; ++k) {
    const Point p = at(line, k / 2000.0);
    if (strictlyInside(solid.outline, p)) return true;
    for (std::size_t i = 0; i < solid.outline.size(); ++i)
      if (distance(Segment{solid.outline[i], solid.outline[(i + 1) % solid.outline.size()]}, p) <= 1) return true;
  }
  return false;
}

bool slowBetween(const Plan& plan, const std::vector<const Solid*>& standing, Segment line, const PlacedDevice& device) {
  const double in_wall = slowInWall(plan, line, device);
  const Segment walled{line.a, at(line, 1 - in_wall / distance(line.a, line.b))};
  for (const Segment& w : plan.walls)
    if (crossProperly(walled, w, 0)) return true;
  for (const Solid* s : standing)
    for (int k = 1; k < 1200; ++k)
      if (strictlyInside(s->outline, at(line, k / 1200.0))) return true;
  return false;
}

// By anything not known to be lower than the device, where there is no way 10 mm outside a corner within 100 mm of it.
bool slowBarredFromBehind(const Plan& plan, const Polygon& hazard, Segment line, const PlacedDevice& device) {
  std::vector<const Solid*> there;
  for (const Solid& s : plan.solids)
    if (!(s.height && device.height && *s.height < *device.height)) there.push_back(&s);
  const auto inside = [](const Polygon& outline, Segment way) {
    for (int k = 1; k < 5000; ++k)
      if (strictlyInside(outline, at(way, k / 5000.0))) return true;
    return false;
  };
  const auto clear = [&](Segment way) {
    for (const Segment& w : plan.walls)
      if (crossProperly(way, w, 0)) return false;
    return std::ranges::none_of(there, [&](const Solid* s) { return inside(s->outline, way); });
  };
  if (clear(line)) return false;
  for (const Solid& s : plan.solids)
    for (std::size_t i = 0; i < s.outline.size(); ++i) {
      const Point c = s.outline[i], p = s.outline[(i + s.outline.size() - 1) % s.outline.size()],
                  n = s.outline[(i + 1) % s.outline.size()];
      if (distance(c, line.b) > 100) continue;
      const Point w = c + 10 * geometry::unit(geometry::unit(c - p) + geometry::unit(c - n));
      if (distance(line.a, w) + distance(w, line.b) > (device.foot ? 500 : 650)) continue;
      if (!device.foot && (inside(hazard, {line.a, w}) || inside(hazard, {w, line.b}))) continue;
      if (clear({line.a, w}) && clear({w, line.b})) return false;
    }
  return true;
}

std::vector<const Solid*> solidsInTheWay(const Plan& plan, const PlacedDevice& device) {
  std::vector<const Solid*> found;
  for (const Solid& s : plan.solids)
    if (!slowSpared(plan, s, device)) found.push_back(&s);
  return found;
}

std::optional<double> height(Numbers& numbers) {
  if (numbers.below(3) == 0) return {};
  return numbers.in(100, 1600);
}

// Two rooms with a thick or thin wall and a door between, and things thrown in near the middle.
Layout roughLayout(Numbers& numbers) {
  Layout l;
  const double wall = numbers.below(2) ? 0 : numbers.in(50, 300);
  l.rooms = {room("a", box(0, 0, 3000, 3000)), room("b", box(3000 + wall, 0, 6000, 3000))};
  if (numbers.below(3)) l.doors = {door("d", "a", "b", {3000, numbers.in(500, 2500)}, numbers.in(500, 900))};
  for (int i = 0; i < 6; ++i) {
    auto f = bench("f" + std::to_string(i), {numbers.in(1500, 4500), numbers.in(0, 3000)}, numbers.in(50, 600), numbers.in(50, 600), height(numbers));
    f.turn = numbers.in(0, 360);
    l.fixtures.push_back(f);
  }
  auto m = machine("m", {numbers.in(1800, 4200), numbers.in(800, 2200)}, numbers.in(300, 1500), numbers.in(300, 900), height(numbers));
  m.turn = numbers.in(0, 360);
  m.hazard = box(-200, -700, numbers.in(-100, 400), numbers.in(-400, 0));
  l.machines = {m};
  return l;
}

// Rooms on either side of a corner: a wall, thick or without thickness, with a door that may be shut, meets the
// wall on which things hang; in one of three a room goes round the end of it.
Layout cornerLayout(Numbers& numbers) {
  Layout l;
  const double wall = numbers.below(2) ? 0 : numbers.in(20, 90);
  if (numbers.below(3)) {
    l.rooms = {room("a", box(0, 0, 4000, 3000)), room("b", box(0, -3000 - wall, 4000, -wall))};
    l.doors = {door("d", "a", "b", {numbers.in(450, 700), 0}, 880, numbers.below(2) ? layout::Locked::Never : layout::Locked::Always)};
  } else {
    const double end = numbers.in(300, 2000), half = std::max(wall, 20.0);
    l.rooms = {room("a", {{0, 0}, {end, 0}, {end, -half}, {0, -half}, {0, -3000}, {4000, -3000}, {4000, 3000}, {0, 3000}})};
  }
  return l;
}

PlacedDevice nearCorner(Numbers& numbers, bool bar) {
  PlacedDevice d;
  d.at = {numbers.in(-95, 5), numbers.in(-300, 300)};
  d.faces = numbers.in(-40, 40);
  d.foot = numbers.below(2) == 0;
  if (bar) d.length = numbers.in(100, 1000);
  return d;
}

PlacedDevice roughDevice(Numbers& numbers, const Layout& l, bool bar) {
  PlacedDevice d;
  const layout::Machine& m = l.machines[0];
  const auto& r = std::get<layout::Rectangle>(m.footprint);
  if (numbers.below(3)) {
    d.machine = 0;
    d.at = layout::toPlan(m.at, m.turn, {numbers.in(-r.width / 2, r.width / 2), -r.depth / 2});
    d.faces = m.turn + 270;
  } else {
    d.at = {3000 + numbers.in(-60, 60), numbers.in(500, 2500)};
    d.faces = numbers.in(-40, 40) + 180 * numbers.below(2);
  }
  d.foot = numbers.below(2) == 0;
  d.height = height(numbers);
  if (bar) d.length = numbers.in(300, 2000);
  return d;
}

class Twin : public testing::TestWithParam<unsigned> {};

TEST_P(Twin, StandingLineOfABar) {
  Numbers numbers(GetParam());
  const Layout l = roughLayout(numbers);
  const Plan plan = buildPlan(l, Hours::Open);
  const Surroundings surroundings(l, plan);
  for (int round = 0; round < 4; ++round) {
    const PlacedDevice d = roughDevice(numbers, l, true);
    const auto in_the_way = solidsInTheWay(plan, d);
    const Standing standing = surroundings.standing(d);
    const Point out = (d.foot ? 300 : 450) * geometry::direction(d.faces);
    for (int k = 0; k <= 300; ++k) {
      const Point on_bar = at(d.line(), k / 300.0), p = on_bar + out;
      if (toNearestEdge(plan, p) < 0.01) continue;
      const bool slow = slowOnFloor(plan, p) && !slowBetween(plan, in_the_way, {p, on_bar}, d);
      double away = 1e300;
      for (const Segment& s : standing.place.lines) away = std::min(away, distance(s, p));
      // A crossing thinner than the twin's steps is seen by one side only.
      const bool near_end = std::any_of(standing.place.lines.begin(), standing.place.lines.end(), [&](const Segment& s) {
        return std::min(distance(s.a, p), distance(s.b, p)) < 3;
      });
      if (!near_end) {
        EXPECT_EQ(away < 1e-6, slow) << "seed " << GetParam() << ", round " << round << ", at " << k;
      }
    }
  }
}

TEST_P(Twin, StandingPlaceOfAButton) {
  Numbers numbers(GetParam() + 1000);
  const Layout l = roughLayout(numbers);
  const Plan plan = buildPlan(l, Hours::Open);
  const Surroundings surroundings(l, plan);
  for (int round = 0; round < 30; ++round) {
    const PlacedDevice d = roughDevice(numbers, l, false);
    std::optional<Point> slow;
    const Point out = geometry::direction(d.faces);
    for (double far = d.foot ? 300 : 450; !slow && far <= (d.foot ? 300 : 650); far += 0.25)
      if (slowOnFloor(plan, d.at + far * out)) slow = d.at + far * out;
    const Standing standing = surroundings.standing(d);
    if (!slow) {
      EXPECT_TRUE(standing.place.empty()) << "seed " << GetParam() << ", round " << round;
      continue;
    }
    if (slowBetween(plan, solidsInTheWay(plan, d), {*slow, d.at}, d)) {
      EXPECT_TRUE(standing.place.empty()) << "seed " << GetParam() << ", round " << round;
    } else {
      ASSERT_EQ(standing.place.points.size(), 1u) << "seed " << GetParam() << ", round " << round;
      EXPECT_LE(distance(standing.place.points[0], *slow), 0.25 + 1e-6);
    }
  }
}

TEST_P(Twin, AtHand) {
  Numbers numbers(GetParam() + 2000);
  const Layout l = roughLayout(numbers);
  const Plan plan = buildPlan(l, Hours::Open);
  const Surroundings surroundings(l, plan);
  const layout::Machine& m = l.machines[0];
  const Polygon hazard = layout::outlineInPlan(m.hazard, m.at, m.turn);
  for (int round = 0; round < 30; ++round) {
    const PlacedDevice d = roughDevice(numbers, l, round % 2);
    const Point station = d.at + numbers.in(50, 800) * geometry::direction(d.faces + numbers.in(-120, 120));
    const Segment line{station, nearestPoint(d.line(), station)};
    bool slow = distance(line.a, line.b) <= (d.foot ? 500 : 650);
    if (dot(station - line.b, geometry::direction(d.faces)) <= 0)
      slow = slow && d.machine && !slowBarredFromBehind(plan, hazard, line, d);
    slow = slow && !slowBetween(plan, solidsInTheWay(plan, d), line, d);
    if (!d.foot)
      for (int k = 0; k <= 5000; ++k) slow = slow && !strictlyInside(hazard, at(line, k / 5000.0));
    EXPECT_EQ(surroundings.atHand(station, d).has_value(), slow) << "seed " << GetParam() << ", round " << round;
  }
}

TEST_P(Twin, AtHandNearACorner) {
  Numbers numbers(GetParam() + 3000);
  for (int round = 0; round < 60; ++round) {
    const Layout l = cornerLayout(numbers);
    const Plan plan = buildPlan(l, Hours::Open);
    EXPECT_TRUE(plan.faults.empty());
    const Surroundings surroundings(l, plan);
    const PlacedDevice d = nearCorner(numbers, round % 2);
    const Point station = d.at + numbers.in(50, 700) * geometry::direction(d.faces + numbers.in(-95, 95));
    const Segment line{station, nearestPoint(d.line(), station)};
    bool slow = distance(line.a, line.b) <= (d.foot ? 500 : 650) && dot(station - line.b, geometry::direction(d.faces)) > 0;
    slow = slow && !slowBetween(plan, {}, line, d);
    EXPECT_EQ(surroundings.atHand(station, d).has_value(), slow) << "seed " << GetParam() << ", round " << round;
  }
}

INSTANTIATE_TEST_SUITE_P(Seeds, Twin, testing::Range(1u, 41u));

}  // namespace
}  // namespace stopwalk::floor
