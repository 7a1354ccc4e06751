// After hours some doors are shut, and who is at a machine may have another way to a phone, or none. While
// something is dragged most of these ways are known to be those of the day; the reports are those of audits
// from nothing.
#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>
#include <string>

#include "core/audit/audit.h"
#include "core/audit/context.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "core/geometry/polygon.h"
#include "tests/core/audit/lines_text.h"
#include "tests/support/grid_layout.h"
#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

using layout::Layout;
using support::Random;

std::string textOf(Report report) {
  files::FiledReport filed{"shop", "", std::move(report)};
  return files::reportJson(filed, inspection::kUnreadDay) + linesText(filed.report);
}

double angleOf(layout::Point direction) {
  return std::atan2(direction.y, direction.x) * 180 / std::numbers::pi;
}

// On a wall of any room, seen from within.
void addPhone(Layout& layout, Random& random) {
  const auto& room =
      layout.rooms[static_cast<std::size_t>(random.below(static_cast<int>(layout.rooms.size())))];
  const auto edge = geometry::edgeOf(
      room.outline, static_cast<std::size_t>(random.below(static_cast<int>(room.outline.size()))));
  layout::Phone phone;
  phone.id = phone.name = "more-" + std::to_string(layout.phones.size());
  phone.at = geometry::at(edge, random.between(0.1, 0.9));
  phone.faces = angleOf(geometry::leftOf(edge.b - edge.a));
  layout.phones.push_back(std::move(phone));
}

Layout withLocksAndPhones(Layout layout, Random& random) {
  for (layout::Door& door : layout.doors)
    if (random.chance(0.4)) door.locked = layout::Locked::AfterHours;
  for (int more = random.below(4); more > 0; --more) addPhone(layout, random);
  return layout;
}

// Toward where a phone is used from, a door, or anywhere near.
layout::Point stepOf(const Layout& layout, layout::Point from, Random& random) {
  layout::Point to = from + layout::Point{random.between(-900, 900), random.between(-900, 900)};
  if (random.chance(0.3) && !layout.phones.empty()) to = layout.phones.back().at;
  if (random.chance(0.3) && !layout.doors.empty()) to = layout.doors.front().at;
  return 0.3 * (to - from);
}

void dragOver(const std::function<Layout(std::uint64_t)>& draw) {
  std::size_t by_day = 0, followed = 0;
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    Random random(seed ^ 0xafe);
    Layout layout = withLocksAndPhones(draw(seed), random);
    const Profile profile = defaultProfile();
    const auto& kinds = files::bundledDeviceKinds();
    Auditor auditor;
    auditor.audit(layout, kinds, profile);
    std::size_t machine = 0;
    for (int step = 0; step < 10; ++step) {
      if (step % 4 == 0)
        machine = static_cast<std::size_t>(random.below(static_cast<int>(layout.machines.size())));
      layout::Machine& moved = layout.machines[machine];
      moved.at = moved.at + stepOf(layout, moved.at, random);
      const std::string kept = textOf(auditor.audit(layout, kinds, profile));
      ASSERT_EQ(kept, textOf(audit(layout, kinds, profile))) << "seed " << seed << ", step " << step;
      by_day += auditor.waysByDay();
    }
    followed += auditor.followed();
  }
  EXPECT_GT(followed, 100u);
  EXPECT_GT(by_day, 50u);
}

TEST(WaysAfterHours, AreRightOverRandomShops) {
  dragOver([](std::uint64_t seed) { return support::randomLayout(seed + 6000); });
}

TEST(WaysAfterHours, AreRightWhereDoorsAreNarrow) {
  dragOver([](std::uint64_t seed) { return support::randomLayout(seed + 6000, {.narrow = true}); });
}

TEST(WaysAfterHours, AreRightOverShopsDrawnWithARuler) {
  dragOver([](std::uint64_t seed) { return support::gridLayout(seed + 6000); });
}

// Who audits the day asks for the hours after it, and the other way round: each finds what an audit at those
// hours finds by itself, to the last bit and point of the path.
void askFromEitherHours(const std::function<Layout(std::uint64_t)>& draw) {
  std::size_t walks = 0, otherwise = 0;
  for (std::uint64_t seed = 0; seed < 150; ++seed) {
    Random random(seed ^ 0xbee);
    const Layout layout = withLocksAndPhones(draw(seed), random);
    const Profile profile = defaultProfile();
    const auto& kinds = files::bundledDeviceKinds();
    const Context day(layout, kinds, profile, floor::Hours::Open),
        after(layout, kinds, profile, floor::Hours::After);
    const auto &asked = day.phoneWaysAt(floor::Hours::After), &by_day = after.phoneWaysAt(floor::Hours::Open);
    for (std::size_t s = 0; s < day.stations.size(); ++s) {
      ASSERT_EQ(asked[s], after.phone_ways[s]) << "seed " << seed << ", " << day.stations[s].id;
      ASSERT_EQ(by_day[s], day.phone_ways[s]) << "seed " << seed << ", " << day.stations[s].id;
      walks += asked[s].status == Status::Walk;
      otherwise += asked[s] != day.phone_ways[s];
    }
  }
  EXPECT_GT(walks, 200u);
  EXPECT_GT(otherwise, 50u);
}

TEST(WaysAfterHours, AreThoseOfAnAuditAfterHoursOverRandomShops) {
  askFromEitherHours([](std::uint64_t seed) { return support::randomLayout(seed + 8000); });
}

TEST(WaysAfterHours, AreThoseOfAnAuditAfterHoursWhereDoorsAreNarrow) {
  askFromEitherHours([](std::uint64_t seed) { return support::randomLayout(seed + 8000, {.narrow = true}); });
}

TEST(WaysAfterHours, AreThoseOfAnAuditAfterHoursOverShopsDrawnWithARuler) {
  askFromEitherHours([](std::uint64_t seed) { return support::gridLayout(seed + 8000); });
}

}  // namespace
}  // namespace stopwalk::audit
