// Walks that can be worked out on paper. All derived: each was computed by tangents and arcs, and once more
// as the convex hull of the corners swollen by the clearance. No published worked example of a walking path
// with coordinates is known.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

#include "core/floor/walks.h"
#include "tests/support/random.h"

namespace stopwalk::outside {
namespace {

using floor::Plan;
using floor::Walks;
using geometry::Point;
using geometry::Polygon;

constexpr double kTolerance_mm = 0.001;  // the values are given to the micrometre

Polygon box(double x0, double y0, double x1, double y1) {
  return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

Plan hallWith(const std::vector<Polygon>& solids, double half = 20000) {
  Plan plan;
  plan.rooms = {box(-half, -half, half, half)};
  for (std::size_t i = 0; i < 4; ++i) plan.walls.push_back({plan.rooms[0][i], plan.rooms[0][(i + 1) % 4]});
  for (const Polygon& solid : solids) plan.solids.push_back({solid, std::nullopt, true, 0});
  return plan;
}

double walked(const Plan& plan, double clearance, Point from, Point to) {
  const floor::Walk walk = Walks(plan, clearance).between(from, to);
  EXPECT_EQ(walk.status, floor::WalkStatus::Walk);
  return walk.length_mm;
}

// Millimetres, at no clearance and at 305.
void expectWalk(const Plan& plan, Point from, Point to, double at_zero, double at_305) {
  EXPECT_NEAR(walked(plan, 0, from, to), at_zero, kTolerance_mm);
  EXPECT_NEAR(walked(plan, 305, from, to), at_305, kTolerance_mm);
  EXPECT_NEAR(walked(plan, 305, to, from), at_305, kTolerance_mm);
}

TEST(ClosedForms, NothingInTheWay) {
  expectWalk(hallWith({}), {0, 0}, {3000, 4000}, 5000, 5000);
}

TEST(ClosedForms, BlockWithTwoEqualWays) {
  expectWalk(hallWith({box(-1000, -500, 1000, 500)}), {-3000, 0}, {3000, 0}, 6123.106, 6317.749);
}

TEST(ClosedForms, SolidQuadrant) {
  expectWalk(hallWith({box(0, -20000, 20000, 0)}), {4000, 1000}, {-1000, -4000}, 8246.211, 8598.439);
}

// Its arc, by the directions of the two straight pieces: 70.412 degrees.
TEST(ClosedForms, SolidQuadrantTurnsBy70Degrees) {
  const floor::Walk walk =
      Walks(hallWith({box(0, -20000, 20000, 0)})).between(Point{4000, 1000}, Point{-1000, -4000});
  ASSERT_GT(walk.path.size(), 3u);
  const Point first = geometry::unit(walk.path[1] - walk.path[0]);
  const Point last = geometry::unit(walk.path.back() - walk.path[walk.path.size() - 2]);
  EXPECT_NEAR(std::acos(dot(first, last)) * 180 / std::numbers::pi, 70.412, 0.001);
}

TEST(ClosedForms, MachineFromBelow) {
  expectWalk(hallWith({box(0, 0, 1200, 800)}), {-1000, 200}, {2500, 500}, 3612.643, 3864.325);
}

// A wall from the machine's lower edge down leaves only the way above.
TEST(ClosedForms, MachineFromAbove) {
  expectWalk(hallWith({box(0, 0, 1200, 800), box(500, -20000, 700, 0)}), {-1000, 200}, {2500, 500}, 3700.357,
             4009.492);
}

TEST(ClosedForms, DoorwayRoundItsJamb) {
  expectWalk(hallWith({box(0, -20000, 100, 0), box(0, 900, 100, 20000)}), {-3000, -2000}, {4000, -2000},
             8088.473, 8435.863);
}

// One corner at distances d1, d2, with phi between the two on the free side:
// L = sqrt(d1^2 - r^2) + sqrt(d2^2 - r^2) + r (phi - acos(r / d1) - acos(r / d2)).
TEST(ClosedForms, OneCornerAtAnyDistanceAngleAndClearance) {
  const Plan plan = hallWith({box(0, -20000, 20000, 0)});
  support::Random random(7);
  for (int i = 0; i < 200; ++i) {
    const double r = random.between(1, 600);
    const double d1 = random.between(2 * r + 1, 9000), d2 = random.between(2 * r + 1, 9000);
    // From beside the face along +x to beside the face along -y; counter-clockwise from +x the free side is
    // 270 degrees.
    const double a1 = random.between(std::asin(r / d1), 0.5 * std::numbers::pi);
    const double a2 = random.between(std::numbers::pi, 1.5 * std::numbers::pi - std::asin(r / d2));
    const double phi = a2 - a1, arc = phi - std::acos(r / d1) - std::acos(r / d2);
    const Point from{d1 * std::cos(a1), d1 * std::sin(a1)}, to{d2 * std::cos(a2), d2 * std::sin(a2)};
    const double expected =
        arc > 0 ? std::sqrt(d1 * d1 - r * r) + std::sqrt(d2 * d2 - r * r) + r * arc : distance(from, to);
    EXPECT_NEAR(walked(plan, r, from, to), expected, kTolerance_mm) << "draw " << i << ": r " << r;
  }
}

// The same with one millimetre more: the check above would see it.
TEST(ClosedForms, OneMillimetreMoreIsSeen) {
  const Plan plan = hallWith({box(0, -20000, 20000, 0)});
  EXPECT_GT(walked(plan, 306, {4000, 1000}, {-1000, -4000}), 8598.439 + 100 * kTolerance_mm);
}

// A gap of twice the clearance is open, and so is one up to a thousandth of a millimetre under it (by
// definition).
TEST(ClosedForms, GapOfTwiceTheClearance) {
  const auto gap = [](double wide) {
    return Walks(hallWith({box(0, -20000, 100, 0), box(0, wide, 100, 20000)}))
        .between(Point{-3000, 300}, Point{3000, 300});
  };
  EXPECT_EQ(gap(610).status, floor::WalkStatus::Walk);
  EXPECT_EQ(gap(609.9992).status, floor::WalkStatus::Walk);
  EXPECT_EQ(gap(609.99).status, floor::WalkStatus::Narrow);
  EXPECT_EQ(gap(609.99).clearance_mm, 304);
}

// OSHA 29 CFR 1910.36(g)(2): exit access at least 28 in (71.1 cm) wide. Published. Kept 305 mm off both sides
// that leaves 101.2 mm (derived), so it is walked at the full clearance; a 600 mm traffic-way (common
// practice in school workshops) is closed by 10 mm at 305 and is walked as narrow, at 300.
TEST(ClosedForms, PublishedPassageWidths) {
  const auto through = [](double wide) {
    return Walks(hallWith({box(0, -20000, 100, 0), box(0, wide, 100, 20000)}))
        .between(Point{-3000, 300}, Point{3000, 300});
  };
  EXPECT_NEAR(28 * 25.4 - 2 * floor::kMeasuringClearance_mm, 101.2, 1e-9);
  EXPECT_EQ(through(28 * 25.4).status, floor::WalkStatus::Walk);
  EXPECT_EQ(through(600).status, floor::WalkStatus::Narrow);
  EXPECT_EQ(through(600).clearance_mm, 300);
  EXPECT_EQ(through(560).clearance_mm, 280);
  EXPECT_EQ(through(559).status, floor::WalkStatus::Unreachable);
}

}  // namespace
}  // namespace stopwalk::outside
