// However wide a way out is asked for: after each move an Auditor tells the same of ways out as an audit from
// nothing.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "core/audit/profile.h"
#include "tests/core/audit/shop.h"
#include "tests/support/furnished.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

using support::Random;

Profile asking(double width_m) {
  Profile profile = defaultProfile();
  EXPECT_EQ(applyLimit(profile, "exit-width=" + std::to_string(width_m)), "");
  return profile;
}

std::set<std::string> withoutWayOut(const Report& report) {
  std::set<std::string> stations;
  for (const Finding& f : report.findings)
    if (f.rule == "exit-width") stations.insert(f.subject);
  return stations;
}

// A long room with its door at one end and a lathe at the other; half-way there are three metres beside a
// crate, which is pushed into them.
const char* const kLongRoom = R"(stopwalk_layout: 1
units: mm
site: {name: Test shop}
rooms:
  - {id: shop, name: Shop, outline: [[0, 0], [12000, 0], [12000, 20000], [0, 20000]]}
doors:
  - {id: out, joins: [shop, outside], at: [6000, 0], width: 3500}
machines:
  - id: lathe
    name: Lathe
    at: [6000, 18500]
    footprint: {width: 1000, depth: 800}
    height: 900
    stations:
      - {id: operator, role: operator, at: [0, -2100]}
fixtures:
  - {id: shelf, name: Shelf, at: [2000, 10000], footprint: {width: 4000, depth: 800}, height: 900}
  - {id: crate, name: Crate, at: [8000, 10000], footprint: {width: 2000, depth: 800}, height: 900}
  - {id: bench, name: Bench, at: [10500, 10000], footprint: {width: 3000, depth: 800}, height: 900}
...
)";

TEST(WideWaysOut, CloseWhenSomethingIsPushedIntoThem) {
  for (const double width_m : {0.9, 1.4, 1.9, 1.99, 2.1, 2.4, 2.9}) {
    layout::Layout layout = layoutOf(kLongRoom);
    const Profile profile = asking(width_m);
    Auditor auditor;
    const auto& kinds = files::bundledDeviceKinds();
    EXPECT_TRUE(withoutWayOut(auditor.audit(layout, kinds, profile)).empty()) << width_m;
    int closed = 0;
    for (int step = 0; step < 7; ++step) {
      layout.fixtures[1].at.x -= 400;
      const auto kept = withoutWayOut(auditor.audit(layout, kinds, profile));
      EXPECT_EQ(kept, withoutWayOut(audit(layout, kinds, profile))) << width_m << " m, step " << step;
      closed += !kept.empty();
    }
    EXPECT_EQ(closed > 0, width_m > 1.4) << width_m;
    EXPECT_GT(auditor.followed(), 0u);
    layout.fixtures[1].at.x += 2800;
    EXPECT_TRUE(withoutWayOut(auditor.audit(layout, kinds, profile)).empty()) << width_m;
  }
}

layout::Layout withWideDoors(layout::Layout layout) {
  for (layout::Door& door : layout.doors) door.width = std::max(door.width, 3200.0);
  return layout;
}

TEST(WideWaysOut, AreTheSameOverRandomShops) {
  std::size_t with_some = 0, with_none = 0;
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    Random random(seed);
    layout::Layout layout = withWideDoors(support::furnished(
        seed % 2 == 0 ? support::randomLayout(seed + 300) : support::gridLayout(seed + 300), seed));
    const Profile profile = asking(random.between(0.7, 3));
    const auto& kinds = files::bundledDeviceKinds();
    Auditor auditor;
    for (int step = 0; step < 12; ++step) {
      auto& moved = layout.machines[static_cast<std::size_t>(random.below(3)) % layout.machines.size()];
      moved.at = moved.at + layout::Point{random.between(-700, 700), random.between(-700, 700)};
      const auto kept = withoutWayOut(auditor.audit(layout, kinds, profile));
      ASSERT_EQ(kept, withoutWayOut(audit(layout, kinds, profile))) << "seed " << seed << ", step " << step;
      ++(kept.empty() ? with_none : with_some);
    }
  }
  EXPECT_GT(with_some, 50u);
  EXPECT_GT(with_none, 10u);
}

}  // namespace
}  // namespace stopwalk::audit
