// What stops nothing, such as a guarded start, is looked at and nothing else.
#include <gtest/gtest.h>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {
namespace {

const Date kDay = *parseDate("2026-03-02"), kToday = *parseDate("2026-03-10");
const std::vector<std::string> kDevices = {"saw/start"};
using Tests = std::vector<std::pair<Tried, bool>>;
const Tests kFull = {{Tried::Seen, true},
                     {Tried::PressedRunning, true},
                     {Tried::StaysStoppedReleased, true},
                     {Tried::StaysStoppedPower, true}};

AsOf asOf(bool is_stop) {
  return {kToday, {{"saw/start", {"saw"}, false, is_stop}}};
}

// Checks of one device, a day each.
class LookedAt : public testing::Test {
 protected:
  void add(Result result, Tests tested = {}) {
    Check c;
    c.number = records.checks.size() + 1;
    c.device = "saw/start";
    c.machines = {"saw"};
    c.at.date = daysAfter(kDay, static_cast<int>(c.number) - 1);
    c.inspector = "Ada Example";
    c.result = result;
    c.tested = std::move(tested);
    records.checks.push_back(c);
  }
  std::vector<Due> due(bool is_stop, Date day = kToday) const {
    return dueOn(kDevices, statesOf(records, schedule, asOf(is_stop)), schedule, day);
  }
  bool isFailed(bool is_stop) const { return !failedDevices(records, schedule, asOf(is_stop)).empty(); }

  Records records;
  Schedule schedule;
};

TEST_F(LookedAt, IsDueToBeSeenOnly) {
  EXPECT_EQ(due(false), (std::vector<Due>{{"saw/start", Due::What::Seen, {}, {}}}));
  EXPECT_EQ(due(true).size(), 2u) << "a stop is pressed, and tested in full";
  add(Result::Pass, {{Tried::Seen, true}});
  EXPECT_TRUE(due(false).empty());
  EXPECT_EQ(due(true).size(), 2u) << "looking is no test of a stop";
  const Date month_on = monthsAfter(kDay, schedule.pressed_months);
  EXPECT_EQ(due(false, month_on), (std::vector<Due>{{"saw/start", Due::What::Seen, month_on, {}}}));
  schedule.seen_days = 7;
  EXPECT_EQ(due(false), (std::vector<Due>{{"saw/start", Due::What::Seen, daysAfter(kDay, 7), {}}}));
}

TEST_F(LookedAt, OldRecordsOfItSayThatItWasSeen) {
  add(Result::Pass, kFull);
  EXPECT_TRUE(due(false).empty());
  records = {};
  add(Result::Pass);
  EXPECT_TRUE(due(false).empty()) << "a bare pass says all that is asked";
  for (const Tried worked : {Tried::Pressed, Tried::PressedRunning}) {
    records = {};
    add(Result::Pass, {{worked, true}});
    EXPECT_TRUE(due(false).empty()) << "whoever pressed it looked at it";
  }
}

TEST_F(LookedAt, WhatWasPressedWasNotSeenWhereThatIsSaid) {
  for (const Tried test : {Tried::Seen, Tried::Clear, Tried::Legible}) {
    records = {};
    add(Result::Fail);
    add(Result::Pass, {{Tried::Pressed, true}, {test, false}});
    EXPECT_TRUE(isFailed(false)) << word(test);
    EXPECT_EQ(due(false).size(), 2u) << word(test) << ": a retest and a look";
  }
}

// Of what the layout has no more it is on record what it was.
TEST_F(LookedAt, StaysPassedOnceItIsOffThePlan) {
  const auto isFailedNow = [&] { return !failedDevices(records, schedule, {kToday}).empty(); };
  const auto notStops = [&](bool failed, bool passed) {
    records = {};
    add(Result::Fail);
    add(Result::Pass, {{Tried::Seen, true}});
    records.checks[0].no_stop = failed;
    records.checks[1].no_stop = passed;
  };
  notStops(true, true);
  EXPECT_FALSE(isFailedNow());
  EXPECT_TRUE(isFailed(true)) << "a stop now, it must be pressed, whatever was written";
  EXPECT_FALSE(isFailed(false));
  records.unsure_to = 1;
  EXPECT_FALSE(isFailedNow()) << "as of what is on the plan";
  for (const auto& [failed, passed] : {std::pair(false, false), {true, false}, {false, true}}) {
    notStops(failed, passed);
    EXPECT_TRUE(isFailedNow()) << failed << passed << ": it may have been a stop";
    EXPECT_FALSE(isFailed(false)) << "it is looked at now";
  }
}

TEST_F(LookedAt, EachCorrectionOfAPassSaysWhatItWas) {
  add(Result::Fail);
  add(Result::Pass, {{Tried::Seen, true}});
  add(Result::Pass, {{Tried::Seen, true}});
  for (Check& c : records.checks) c.no_stop = true;
  records.checks[2].corrects = 2;
  EXPECT_TRUE(failedDevices(records, schedule, {kToday}).empty());
  records.checks[2].no_stop = false;
  EXPECT_FALSE(failedDevices(records, schedule, {kToday}).empty());
}

TEST_F(LookedAt, WhatIsStillToBeDoneAtItIsDoneOncePassedAlsoOffThePlan) {
  add(Result::Fail);
  add(Result::Pass, {{Tried::Seen, true}});
  records.checks[0].corrective = Corrective{"fit the pin", "Bo", {}};
  EXPECT_EQ(openActions(records, {kToday}).size(), 1u);
  for (Check& c : records.checks) c.no_stop = true;
  EXPECT_TRUE(openActions(records, {kToday}).empty());
}

// Drawn as a stop since.
TEST_F(LookedAt, ABarePassOfWhatWasNoStopIsNoPress) {
  add(Result::Pass);
  EXPECT_EQ(due(true).size(), 1u) << "an older record does not say what it was";
  records.checks[0].no_stop = true;
  EXPECT_EQ(due(true).size(), 2u);
}

TEST_F(LookedAt, APassThatSaysSeenClosesWhatItFailed) {
  add(Result::Fail);
  add(Result::Pass, {{Tried::Clear, true}});
  EXPECT_TRUE(isFailed(false));
  EXPECT_EQ(passesShort(records, schedule, asOf(false)).at(2).left_open, LeftOpen::NotSeen);
  add(Result::Pass, {{Tried::Seen, true}});
  EXPECT_FALSE(isFailed(false));
  records.checks.erase(records.checks.begin() + 1);
  EXPECT_TRUE(isFailed(true)) << "drawn as a stop, it was never pressed";
}

// What is not as it was written may have been a failure of it.
TEST_F(LookedAt, APassBehindABadLineIsAsGoodAsOfAStop) {
  add(Result::Fail);
  add(Result::Pass, {{Tried::Seen, true}});
  records.unsure_to = 1;
  EXPECT_TRUE(due(false).empty());
  EXPECT_FALSE(isFailed(false));
  records.unsure_to = 2;
  EXPECT_EQ(due(false).size(), 2u) << "a retest and a look";
  EXPECT_EQ(due(false)[0].despite, (NotCounted{2, daysAfter(kDay, 1), Doubt::NotAsWritten}));
  EXPECT_TRUE(isFailed(false));
}

}  // namespace
}  // namespace stopwalk::inspection
