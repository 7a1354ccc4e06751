// However a layout is edited, an Auditor that has seen all before reports what an audit from nothing does, to
// the byte.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdint>
#include <functional>
#include <string>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "tests/core/audit/lines_text.h"
#include "tests/core/audit/random_edits.h"
#include "tests/support/furnished.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random_layout.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::audit {
namespace {

std::string textOf(Report report) {
  files::FiledReport filed{"shop", "", std::move(report)};
  return files::reportJson(filed, inspection::kUnreadDay) + linesText(filed.report);
}

using Edit = std::function<void(Layout&, Random&)>;

struct Count {
  std::size_t kept = 0, found = 0, reports = 0, followed = 0;
};

void follow(Layout layout, std::uint64_t seed, int edits, double after_hours, Edit edit, Count& count) {
  const Profile profile = defaultProfile();
  Random random(seed);
  Auditor auditor;
  for (int i = 0; i <= edits; ++i) {
    const floor::Hours hours = random.chance(after_hours) ? floor::Hours::After : floor::Hours::Open;
    const std::string kept = textOf(auditor.audit(layout, files::bundledDeviceKinds(), profile, hours));
    const std::string anew = textOf(audit(layout, files::bundledDeviceKinds(), profile, hours));
    ASSERT_EQ(kept, anew) << "seed " << seed << ", after edit " << i;
    if (i > 0) count.kept += auditor.walksKept(), count.found += auditor.walksFound(), ++count.reports;
    edit(layout, random);
  }
  count.followed += auditor.followed();
}

void followAll(const std::function<Layout(std::uint64_t)>& draw, int seeds, int edits, double least_kept,
               double after_hours = 0.15, const Edit& edit = edited) {
  Count count;
  for (int seed = 0; seed < seeds && !testing::Test::HasFatalFailure(); ++seed)
    follow(draw(static_cast<std::uint64_t>(seed)), static_cast<std::uint64_t>(seed), edits, after_hours, edit,
           count);
  // That it is not found anew after all.
  EXPECT_GT(static_cast<double>(count.kept), least_kept * static_cast<double>(count.found));
  EXPECT_GT(count.followed, 0u);
  testing::Test::RecordProperty("reports", static_cast<int>(count.reports));
  testing::Test::RecordProperty("followed", static_cast<int>(count.followed));
  testing::Test::RecordProperty("kept", static_cast<int>(count.kept));
  testing::Test::RecordProperty("found", static_cast<int>(count.found));
}

TEST(Auditor, ReportsOfRandomShopsAsFromNothing) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed); }, 25, 20, 0.05);
}

TEST(Auditor, ReportsOfNarrowShopsAsFromNothing) {
  followAll(
      [](std::uint64_t seed) { return support::randomLayout(seed, {.most_machines = 16, .narrow = true}); },
      12, 25, 0.05);
}

TEST(Auditor, ReportsOfShopsDrawnWithARulerAsFromNothing) {
  followAll([](std::uint64_t seed) { return support::gridLayout(seed); }, 25, 20, 0.2);
}

TEST(Auditor, ReportsOfABigShopAsFromNothing) {
  followAll([](std::uint64_t) { return support::shopLayout(support::kShopSizes[1]); }, 1, 40, 0.2);
}

TEST(Auditor, FollowsDragsInRandomShops) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed); }, 24, 30, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsAfterHours) {
  followAll([](std::uint64_t seed) { return support::randomLayout(seed + 500); }, 10, 40, 0, 1, Drag());
}

TEST(Auditor, FollowsDragsInNarrowShops) {
  followAll(
      [](std::uint64_t seed) { return support::randomLayout(seed, {.most_machines = 16, .narrow = true}); },
      12, 40, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsInShopsDrawnWithARuler) {
  followAll([](std::uint64_t seed) { return support::gridLayout(seed); }, 20, 30, 0, 0, Drag());
}

TEST(Auditor, FollowsDragsWithWaysOutHazardsAndTapeChecks) {
  followAll([](std::uint64_t seed) { return support::furnished(support::randomLayout(seed + 700), seed); },
            24, 30, 0, 0.05, Drag());
  followAll([](std::uint64_t seed) { return support::furnished(support::gridLayout(seed + 700), seed); }, 24,
            30, 0, 0.05, Drag());
}

TEST(Auditor, FollowsDragsInABigShop) {
  followAll([](std::uint64_t) { return support::shopLayout(support::kShopSizes[1]); }, 1, 150, 0, 0, Drag());
}

}  // namespace
}  // namespace stopwalk::audit
