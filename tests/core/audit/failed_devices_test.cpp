// What the audit makes of devices that failed and have not passed since.
#include "core/planning/suppositions.h"
#include "tests/core/audit/shop.h"

namespace stopwalk::audit {
namespace {

const inspection::Date kDay = *inspection::parseDate("2026-03-02");
const std::vector<inspection::FailedDevice> kSawStop = {{"saw/stop", kDay, 7, "Ada Example"}};

TEST(FailedDevices, StationIsShownWithItsNextStop) {
  const Report whole = auditOf(kShop), failed = auditOf(kShop, {}, floor::Hours::Open, kSawStop);
  EXPECT_EQ(stationOf(whole, "saw/operator").stop.device, "saw/stop");
  EXPECT_EQ(stationOf(failed, "saw/operator").stop.device, "cut-off");
  EXPECT_EQ(stationOf(failed, "drill/operator").stop.device, "drill/stop");
  EXPECT_EQ(findingOf(failed, "failed-check").text,
            "The mushroom button of Saw: failed on 2026-03-02 and has not passed since; it is not counted as "
            "a stop, and "
            "each station is shown with its next one; have it mended, and check it again.");
}

// As if it were not there.
TEST(FailedDevices, StopsAreThoseOfTheLayoutWithoutIt) {
  const layout::Layout layout = layoutOf(kShop);
  for (const char* device : {"saw/stop", "drill/stop", "cut-off"}) {
    const std::vector<inspection::FailedDevice> failed = {{device, kDay, 7, "Ada Example"}};
    const Report with = auditOf(kShop, {}, floor::Hours::Open, failed);
    const Report without =
        audit(planning::supposed(layout, {.out_of_order = {device}, .shut = {}, .in_the_way = {}}),
              files::bundledDeviceKinds(), defaultProfile());
    for (std::size_t i = 0; i < with.stations.size(); ++i) {
      EXPECT_EQ(with.stations[i].stop.device, without.stations[i].stop.device) << device;
      EXPECT_EQ(with.stations[i].stop.walk_m, without.stations[i].stop.walk_m) << device;
    }
    for (const char* rule : {"no-stop", "no-emergency-stop", "no-room-cut-off", "stop-out-of-reach"})
      EXPECT_EQ(subjects(with, rule), subjects(without, rule)) << device << " " << rule;
  }
}

TEST(FailedDevices, ProfileMayCountThemAllTheSame) {
  Profile profile = defaultProfile();
  profile.inspection.failed_stops_count = true;
  const Report report =
      audit(layoutOf(kShop), files::bundledDeviceKinds(), profile, floor::Hours::Open, kSawStop);
  EXPECT_EQ(stationOf(report, "saw/operator").stop.device, "saw/stop");
  EXPECT_EQ(subjects(report, "failed-check"), Subjects{"saw/stop"});
}

TEST(FailedDevices, ThatAreNotInTheLayoutArePassedBy) {
  const std::vector<inspection::FailedDevice> gone = {{"saw/gone", kDay, 7, "Ada Example"}};
  EXPECT_TRUE(auditOf(kShop, {}, floor::Hours::Open, gone).findings.empty());
}

}  // namespace
}  // namespace stopwalk::audit
