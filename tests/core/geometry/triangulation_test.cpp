#include "core/geometry/triangulation.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/geometry/lattice.h"

namespace stopwalk::geometry {
namespace {

using Line = Triangulation::Line;

// Every triangle turns left, neighbours know each other, and their common edge has one mark.
void expectSound(const Triangulation& t) {
  const auto& tris = t.triangles();
  for (std::size_t i = 0; i < tris.size(); ++i) {
    const auto& c = tris[i].corner;
    ASSERT_GT(orientation(t.corners()[c[0]], t.corners()[c[1]], t.corners()[c[2]]), 0) << "triangle " << i;
    for (int e = 0; e < 3; ++e) {
      const auto n = tris[i].neighbour[e];
      if (n == Triangulation::kNone) continue;
      int back = 0;
      while (back < 3 && tris[n].neighbour[back] != static_cast<Triangulation::Index>(i)) ++back;
      ASSERT_LT(back, 3);
      EXPECT_EQ(tris[n].corner[after(back)], c[before(e)]);
      EXPECT_EQ(tris[n].corner[before(back)], c[after(e)]);
      EXPECT_EQ(tris[n].mark[back], tris[i].mark[e]);
    }
  }
}

double toSegment(Point p, Point a, Point b) {
  const Point u = b - a;
  const double s = std::clamp(dot(p - a, u) / std::max(squaredLength(u), 1e-300), 0.0, 1.0);
  return distance(p, a + s * u);
}

// The marked edges near a line cover it from end to end.
void expectDrawn(const Triangulation& t, const Line& line) {
  const double size = distance(line.a, line.b);
  if (size < 1e-3) return;
  std::vector<std::pair<double, double>> parts;
  for (const auto& tri : t.triangles()) {
    for (int e = 0; e < 3; ++e) {
      if (!(tri.mark[e] & Triangulation::kBlocking)) continue;
      const Point p = t.corners()[tri.corner[after(e)]], q = t.corners()[tri.corner[before(e)]];
      if (toSegment(p, line.a, line.b) > 1e-4 || toSegment(q, line.a, line.b) > 1e-4) continue;
      const double sp = dot(p - line.a, line.b - line.a) / size, sq = dot(q - line.a, line.b - line.a) / size;
      parts.push_back({std::min(sp, sq), std::max(sp, sq)});
    }
  }
  std::sort(parts.begin(), parts.end());
  double covered = 1e-3;
  for (const auto& [from, to] : parts)
    if (from <= covered) covered = std::max(covered, to + 1e-3);
  EXPECT_GE(covered, size - 1e-3);
}

class Tangle : public testing::TestWithParam<int> {};

TEST_P(Tangle, OfCrossingTouchingAndRepeatedLinesIsDrawn) {
  std::mt19937 g(static_cast<unsigned>(GetParam()));
  const auto in = [&](double a, double b) { return a + (b - a) * static_cast<double>(g()) / 4294967295.0; };
  std::vector<Line> lines;
  const int kind = GetParam() % 4;
  for (int i = 0; i < 40; ++i) {
    Point a{in(0, 1000), in(0, 1000)}, b{in(0, 1000), in(0, 1000)};
    if (kind == 1) {  // a coarse raster: collinear, overlapping, meeting
      for (Point* p : {&a, &b}) *p = {std::round(p->x / 100) * 100, std::round(p->y / 100) * 100};
    }
    if (kind == 2) b = a + Point{in(-1, 1), in(-1, 1)};  // tiny
    if (kind == 3) {  // nearly parallel, nearly on one line, turned
      a = turned({in(0, 1000), in(0, 1e-4)}, 30);
      b = turned({in(0, 1000), in(0, 1e-4)}, 30);
    }
    lines.push_back({a, b});
    if (i % 7 == 0) lines.push_back({b, a});
    if (i % 5 == 0) lines.push_back({a, a});
  }
  const Triangulation t(lines);
  expectSound(t);
  for (const Line& line : lines) expectDrawn(t, line);
}

INSTANTIATE_TEST_SUITE_P(Seeds, Tangle, testing::Range(0, 200));

TEST(Triangulation, LocatesEveryPoint) {
  const Triangulation t({{{0, 0}, {100, 0}}, {{100, 0}, {50, 80}}, {{50, 80}, {0, 0}}});
  std::mt19937 g(1);
  for (int i = 0; i < 500; ++i) {
    const Point p = onLattice({static_cast<double>(g() % 2000) / 10 - 50, static_cast<double>(g() % 2000) / 10 - 50});
    const auto at = t.locate(p, 0);
    ASSERT_NE(at, Triangulation::kNone);
    for (int e = 0; e < 3; ++e) {
      const auto& c = t.triangles()[at].corner;
      EXPECT_GE(orientation(t.corners()[c[after(e)]], t.corners()[c[before(e)]], p), 0);
    }
  }
}

TEST(Lattice, SideOfALineIsExactToTheLastStep) {
  const Point a{0, 0}, b = onLattice({8e6, 3e6 + 1 / 3.0});
  const Point c = onLattice({-8e6, -3e6 - 1 / 3.0});
  EXPECT_EQ(orientation(a, b, c), 0);
  EXPECT_EQ(orientation(a, b, {c.x, c.y + kLatticeStep_mm}), -orientation(a, b, {c.x, c.y - kLatticeStep_mm}));
  EXPECT_NE(orientation(a, b, {c.x, c.y + kLatticeStep_mm}), 0);
}

}  // namespace
}  // namespace stopwalk::geometry
