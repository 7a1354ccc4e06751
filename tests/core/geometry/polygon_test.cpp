#include "core/geometry/polygon.h"

#include <gtest/gtest.h>

#include <random>

#include "core/geometry/indexed_polygon.h"

namespace stopwalk::geometry {
namespace {

Polygon box(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

// The same however it is turned and moved, wherever it begins, and backwards.
template <class Check>
void inEveryView(const Polygon& polygon, Check&& check) {
  for (double turn : {0.0, 90.0, 31.7, 203.2}) {
    for (Point by : {Point{0, 0}, Point{1e6, -1e6}}) {
      for (std::size_t first = 0; first < polygon.size(); ++first) {
        Polygon seen;
        for (std::size_t i = 0; i < polygon.size(); ++i)
          seen.push_back(turned(polygon[(first + i) % polygon.size()], turn) + by);
        check(seen);
        check(Polygon(seen.rbegin(), seen.rend()));
      }
    }
  }
}

TEST(CrossesItself, SimpleOutlinesDoNot) {
  inEveryView(box(0, 0, 3000, 2000), [](const Polygon& p) { EXPECT_FALSE(crossesItself(p)); });
  inEveryView({{0, 0}, {10, 0}, {10, 5}, {5, 5}, {5, 10}, {0, 10}}, [](const Polygon& p) { EXPECT_FALSE(crossesItself(p)); });
}

TEST(CrossesItself, CrossingEdgesDo) {
  inEveryView({{0, 0}, {1000, 1000}, {1000, 0}, {0, 900}}, [](const Polygon& p) { EXPECT_TRUE(crossesItself(p)); });
}

TEST(CrossesItself, ThroughACornerDoes) {
  // Two strands pass through one corner: straight over each other.
  inEveryView({{0, 0}, {500, 500}, {1000, 1000}, {1000, 0}, {500, 500}, {0, 900}},
              [](const Polygon& p) { EXPECT_TRUE(crossesItself(p)); });
  // A corner on another edge, the strand going through.
  inEveryView({{0, 0}, {1000, 0}, {1000, 1000}, {500, 0}, {300, -500}, {0, 800}},
              [](const Polygon& p) { EXPECT_TRUE(crossesItself(p)); });
}

TEST(CrossesItself, AlongASharedLineDoes) {
  // Comes to the line y = 0 from above, runs along it, and leaves it below.
  inEveryView({{0, 0}, {1000, 0}, {1000, 1000}, {800, 0}, {600, 0}, {400, -500}, {0, -500}},
              [](const Polygon& p) { EXPECT_TRUE(crossesItself(p)); });
}

TEST(CrossesItself, TouchingAtACornerDoesNot) {
  inEveryView({{0, 0}, {500, 500}, {1000, 0}, {1000, 1000}, {500, 500}, {0, 1000}},
              [](const Polygon& p) { EXPECT_FALSE(crossesItself(p)); });
}

TEST(CrossesItself, GoingRoundACourtAndBackDoesNot) {
  inEveryView({{0, 0}, {9000, 0}, {9000, 9000}, {0, 9000}, {0, 3000}, {3000, 3000}, {3000, 6000}, {6000, 6000},
               {6000, 3000}, {3000, 3000}, {0, 3000}},
              [](const Polygon& p) { EXPECT_FALSE(crossesItself(p)); });
}

TEST(CrossesItself, SpikesRepeatsAndTinyEdgesDoNot) {
  inEveryView({{0, 0}, {1000, 0}, {1000, 0}, {1000, 500}, {1400, 500}, {1000, 500}, {1000, 1000}, {1000.0004, 1000.0003}, {0, 1000}},
              [](const Polygon& p) { EXPECT_FALSE(crossesItself(p)); });
}

TEST(CrossesItself, ManyCornersInAMoment) {
  // A comb of 40,000 corners; then one tooth crosses the next.
  Polygon comb;
  for (int i = 0; i < 10000; ++i) {
    const double x = 100.0 * i;
    comb.insert(comb.end(), {{x, 0}, {x + 40, 0}, {x + 40, 1e6}, {x + 60, 1e6}});
  }
  comb.push_back({1e6, -100});
  comb.push_back({0, -100});
  EXPECT_FALSE(crossesItself(comb));
  comb[20002].x += 100;
  EXPECT_TRUE(crossesItself(comb));
}

TEST(HasNoArea, OfLinesAndPointsOnly) {
  inEveryView({{0, 0}, {4000, 0}, {9000, 0}}, [](const Polygon& p) { EXPECT_TRUE(hasNoArea(p)); });
  inEveryView({{5, 5}, {5, 5}, {5, 5}}, [](const Polygon& p) { EXPECT_TRUE(hasNoArea(p)); });
  inEveryView({{0, 0}, {4000, 0}, {4000, 1}, {0, 1}}, [](const Polygon& p) { EXPECT_FALSE(hasNoArea(p)); });
}

TEST(SideOf, OutlineInsideAndOutside) {
  const Polygon shape = {{0, 0}, {4000, 0}, {4000, 3000}, {2000, 1000}, {0, 3000}};
  for (double turn : {0.0, 90.0, 12.5}) {
    for (Point by : {Point{0, 0}, Point{1e6, 1e6}}) {
      Polygon seen;
      for (Point p : shape) seen.push_back(turned(p, turn) + by);
      const IndexedPolygon polygon(seen);
      const auto side = [&](Point p) { return polygon.sideOf(turned(p, turn) + by); };
      EXPECT_EQ(side({1000, 1000}), Side::Inside);
      EXPECT_EQ(side({2000, 1000}), Side::On);
      EXPECT_EQ(side({2000, 1000.01}), Side::Outside);
      EXPECT_EQ(side({2000, 999.99}), Side::Inside);
      EXPECT_EQ(side({4000, 3000}), Side::On);
      EXPECT_EQ(side({1000, 2000}), Side::On);
      EXPECT_EQ(side({-1, 0}), Side::Outside);
    }
  }
}

TEST(SideOf, ManyCornersAnswerLikeFew) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> coordinate(-1200, 1200), reach(300, 1000);
  Polygon star;
  for (int i = 0; i < 200; ++i) star.push_back(reach(random) * direction(1.8 * i));
  const IndexedPolygon indexed(star);
  for (int i = 0; i < 2000; ++i) {
    const Point p{coordinate(random), coordinate(random)};
    // A star about the origin: inside where the ray from the origin is not yet out.
    const double angle = std::atan2(p.y, p.x) * 57.29577951308232;
    const auto from = static_cast<std::size_t>(std::floor((angle < 0 ? angle + 360 : angle) / 1.8)) % 200;
    const Segment edge = edgeOf(star, from);
    EXPECT_EQ(indexed.sideOf(p) == Side::Inside, cross(edge.b - edge.a, p - edge.a) > 0);
    double least = 1e300;
    for (std::size_t e = 0; e < star.size(); ++e) least = std::min(least, distance(edgeOf(star, e), p));
    EXPECT_DOUBLE_EQ(indexed.distanceToOutline(p), least);
  }
}

// Twin: dense points of one, how deep in the other.
bool sampledDeeper(const Polygon& a, const Polygon& b, double depth) {
  const IndexedPolygon in(b), of(a);
  const Box box = of.box();
  for (int i = 0; i <= 120; ++i) {
    for (int j = 0; j <= 120; ++j) {
      const Point p{box.low.x + (box.high.x - box.low.x) * i / 120, box.low.y + (box.high.y - box.low.y) * j / 120};
      if (of.holds(p) && in.sideOf(p) == Side::Inside && in.distanceToOutline(p) > depth) return true;
    }
  }
  return false;
}

TEST(OverlapDeeper, AgreesWithDenseSampling) {
  std::mt19937 random(11);
  std::uniform_real_distribution<double> coordinate(-60, 60), reach(10, 60);
  int deep = 0;
  for (int round = 0; round < 300; ++round) {
    Polygon a, b;
    const Point away{coordinate(random), coordinate(random)};
    for (int i = 0; i < 7; ++i) a.push_back(reach(random) * direction(51.0 * i));
    for (int i = 0; i < 5; ++i) b.push_back(away + reach(random) * direction(71.0 * i));
    for (double depth : {1.0, 8.0}) {
      const bool sampled = sampledDeeper(a, b, depth) || sampledDeeper(b, a, depth);
      const bool found = overlapDeeper(IndexedPolygon(a), IndexedPolygon(b), depth);
      if (sampled) {
        EXPECT_TRUE(found) << round << " " << depth;
      }
      if (found) {  // samples are some 1 mm apart
        EXPECT_TRUE(sampledDeeper(a, b, depth - 0.95) || sampledDeeper(b, a, depth - 0.95)) << round << " " << depth;
      }
      deep += found;
    }
  }
  EXPECT_GT(deep, 100);
  EXPECT_LT(deep, 590);
}

TEST(OverlapDeeper, StripsByTheirWidth) {
  inEveryView(box(0, 0, 10, 10), [](const Polygon& a) {
    EXPECT_TRUE(overlapDeeper(IndexedPolygon(a), IndexedPolygon(a), 4.9));
    EXPECT_FALSE(overlapDeeper(IndexedPolygon(a), IndexedPolygon(a), 5.1));
  });
  const IndexedPolygon a(box(0, 0, 10, 10)), b(box(8, -5, 20, 20));
  EXPECT_TRUE(overlapDeeper(a, b, 1.99));
  EXPECT_FALSE(overlapDeeper(a, b, 2.01));
}

}  // namespace
}  // namespace stopwalk::geometry
