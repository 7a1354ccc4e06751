#include "core/floor/walks.h"

#include <gtest/gtest.h>

namespace stopwalk::floor {
namespace {

Polygon box(double x0, double y0, double x1, double y1) { return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}; }

Plan roomWith(Polygon room, std::vector<Polygon> solids) {
  Plan plan;
  for (std::size_t i = 0; i < room.size(); ++i) plan.walls.push_back({room[i], room[(i + 1) % room.size()]});
  plan.rooms = {room};
  for (Polygon& p : solids) plan.solids.push_back({p, std::nullopt, true, 0});
  return plan;
}

const Polygon kHall = box(-20000, -20000, 20000, 20000);

struct Case {
  const char* name;
  std::vector<Polygon> solids;
  Point from, to;
  double at_zero, at_305;
};

class WalkPastCorners : public testing::TestWithParam<Case> {};

// Lengths derived in closed form: tangents and an arc about each corner passed.
TEST_P(WalkPastCorners, AgreesWithTheClosedForm) {
  const Case& c = GetParam();
  const Plan plan = roomWith(kHall, c.solids);
  EXPECT_NEAR(Walks(plan, 0).between(c.from, c.to).length_mm, c.at_zero, 0.001);
  EXPECT_NEAR(Walks(plan, 305).between(c.from, c.to).length_mm, c.at_305, 0.001);
}

INSTANTIATE_TEST_SUITE_P(
    Derived, WalkPastCorners,
    testing::Values(Case{"free", {}, {0, 0}, {3000, 4000}, 5000, 5000},
                    Case{"block", {box(-1000, -500, 1000, 500)}, {-3000, 0}, {3000, 0}, 6123.106, 6317.749},
                    Case{"quadrant", {box(0, -20000, 20000, 0)}, {4000, 1000}, {-1000, -4000}, 8246.211, 8598.439},
                    Case{"machine", {box(0, 0, 1200, 800)}, {-1000, 200}, {2500, 500}, 3612.643, 3864.325},
                    Case{"jamb", {box(0, -20000, 100, 0), box(0, 900, 100, 20000)}, {-3000, -2000}, {4000, -2000}, 8088.473, 8435.863}),
    [](const auto& i) { return std::string(i.param.name); });

}  // namespace
}  // namespace stopwalk::floor
