// A station without a stop or a phone to go to never meets, whichever rules a house leaves on.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"
#include "tests/core/audit/random_edits.h"
#include "tests/core/audit/rule_cases.h"
#include "tests/support/furnished.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

bool isAWay(const Nearest& n) {
  return n.status == Status::AtHand || n.status == Status::Walk || n.status == Status::Narrow;
}

Profile someRulesOff(Random& random) {
  Profile profile = defaultProfile();
  const double off = random.chance(0.3) ? 0 : random.between(0, 1);
  for (Setting& s : profile.settings) {
    s.on = !random.chance(off);
    if (random.chance(off)) s.severity = Severity::Note;
  }
  return profile;
}

// Stations anywhere on the machines' outlines, too, and some things that stop nothing or nobody gets to.
Layout spoilt(Layout layout, Random& random) {
  for (layout::Machine& m : layout.machines) {
    const geometry::Polygon outline = layout::outlineInPlan(m.footprint, {0, 0}, 0);
    for (layout::Station& s : m.stations)
      if (random.chance(0.3))
        s.at = geometry::at(geometry::edgeOf(outline, static_cast<std::size_t>(random.below(4))),
                            random.between(0, 1));
    if (random.chance(0.3)) m.devices.clear();
    if (random.chance(0.1)) m.hand_held = true;
  }
  for (layout::Door& d : layout.doors)
    if (random.chance(0.3)) d.locked = layout::Locked::Always;
  if (random.chance(0.3)) layout.devices.clear();
  if (random.chance(0.2)) layout.phones.clear();
  return layout;
}

struct Seen {
  std::size_t meeting = 0, lacking = 0, silent = 0;
};

void look(const Report& report, const layout::Layout& layout, Seen& seen, std::uint64_t seed) {
  for (const StationReport& s : report.stations) {
    const auto machine = std::ranges::find(layout.machines, s.machine, &layout::Machine::id);
    const bool needs_none =
        s.stop.status == Status::None && machine->hand_held && s.role != layout::Role::Operator;
    const bool lacks = (!isAWay(s.stop) && !needs_none) || !isAWay(s.phone);
    EXPECT_EQ(s.lacks_stop || s.lacks_phone, lacks) << "seed " << seed << ": " << s.id;
    if (lacks) {
      EXPECT_NE(s.verdict, Verdict::Meets) << "seed " << seed << ": " << s.id;
    }
    const bool named = std::ranges::any_of(
        report.findings, [&](const Finding& f) { return f.subject == s.id && f.severity != Severity::Note; });
    ++(lacks ? seen.lacking : seen.meeting);
    seen.silent += lacks && !named;
  }
}

TEST(Verdict, OfAStationWithoutAWayIsNeverThatItMeets) {
  Seen seen;
  for (std::uint64_t seed = 0; seed < 150; ++seed) {
    Random random(seed);
    const Layout layout = spoilt(
        seed % 2 ? support::gridLayout(seed) : support::furnished(support::randomLayout(seed), seed), random);
    look(audit(layout, files::bundledDeviceKinds(), someRulesOff(random), floor::Hours::Open), layout, seen,
         seed);
  }
  EXPECT_GT(seen.meeting, 300u);
  EXPECT_GT(seen.lacking, 300u);
  EXPECT_GT(seen.silent, 50u);
}

TEST(Verdict, OfAStationWithoutAWayIsNeverThatItMeetsInADrag) {
  Seen seen;
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    Random random(seed);
    Layout layout = spoilt(support::randomLayout(seed), random);
    const Profile profile = someRulesOff(random);
    Auditor auditor;
    Drag drag;
    for (int i = 0; i < 20; ++i) {
      const Report& report = auditor.audit(layout, files::bundledDeviceKinds(), profile, floor::Hours::Open);
      look(report, layout, seen, seed);
      EXPECT_EQ(report.stations.size(),
                audit(layout, files::bundledDeviceKinds(), profile, floor::Hours::Open).stations.size());
      drag(layout, random);
    }
  }
  EXPECT_GT(seen.lacking, 300u);
}

// By the rules as they are, something that fails or warns says why.
TEST(Verdict, OfAStationWithoutAWayIsExplainedByAFinding) {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    Random random(seed + 1000);
    const Layout layout = spoilt(seed % 2 ? support::gridLayout(seed) : support::randomLayout(seed), random);
    Seen seen;
    look(audit(layout, files::bundledDeviceKinds(), defaultProfile(), floor::Hours::Open), layout, seen,
         seed);
    EXPECT_EQ(seen.silent, 0u) << "seed " << seed;
  }
}

TEST(Verdict, OfAStationWhereMachineAndBenchTouch) {
  const Report report = auditOf(shopWith({{"role: operator, at: [0, -710]", "role: operator, at: [0, -400]"},
                                          before("machines:\n",
                                                 "fixtures:\n  - {id: bench, at: [2000, 3300], footprint: "
                                                 "{width: 2000, depth: 600}, height: 900}\n")}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::Unmeasured);
  EXPECT_EQ(stationOf(report, "saw/operator").verdict, Verdict::Fails);
  EXPECT_TRUE(finds(report, "drawing-fault", "saw/operator"));
}

}  // namespace
}  // namespace stopwalk::audit
