// What the plan tells of a device: what its last check came to, and how much of its time has gone.
#include "app/rounds/on_plan.h"

#include <gtest/gtest.h>

#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::Result;
using plan::CheckAge;
using plan::CheckMark;
using plan::CheckSign;

inspection::Date day(const char* text) {
  return *inspection::parseDate(text);
}

class OnThePlanOfADay : public testing::Test {
 protected:
  OnThePlanOfADay() {
    device.id = "saw/stop";
    device.machines = {"saw"};
  }
  void check(Result result, const char* on) {
    Check check;
    check.number = records.checks.size() + 1;
    check.device = device.id;
    check.machines = device.machines;
    check.at = *inspection::parseMoment(std::string(on) + "T09:15:00+01:00");
    check.inspector = "Ada Example";
    check.result = result;
    if (result == Result::Pass)
      for (const inspection::Tried test : inspection::kTried) check.tested.emplace_back(test, true);
    records.checks.push_back(check);
  }
  plan::InspectedOnPlan::Device shown(const char* on) {
    const std::vector devices{device};
    const inspection::AsOf as_of = planning::asOf(devices, day(on));
    const inspection::OnRecord on_record(records, schedule, as_of);
    const Counting counting(on_record, {});
    const auto states = on_record.states();
    return dueOnPlan({devices, records, counting, states, schedule, as_of.now.day}).devices.at(device.id);
  }

  planning::InspectedDevice device;
  inspection::Records records;
  inspection::Schedule schedule;
};

// Pressed monthly: from the 2nd of March it is due on the 2nd of April, and half of 31 days is gone after 16.
TEST_F(OnThePlanOfADay, TheRingGoesByHowMuchOfTheTimeHasGone) {
  check(Result::Pass, "2026-03-02");
  const auto age = [&](const char* on) { return shown(on).mark; };
  EXPECT_EQ(age("2026-03-02"), (CheckMark{CheckSign::Passed, CheckAge::Fresh}));
  EXPECT_EQ(age("2026-03-17"), (CheckMark{CheckSign::Passed, CheckAge::Fresh}));
  EXPECT_EQ(age("2026-03-18"), (CheckMark{CheckSign::Passed, CheckAge::HalfGone}));
  EXPECT_EQ(age("2026-04-01"), (CheckMark{CheckSign::Passed, CheckAge::HalfGone}));
  EXPECT_EQ(age("2026-04-02"), (CheckMark{CheckSign::Passed, CheckAge::Due}));
  EXPECT_EQ(age("2026-04-03"), (CheckMark{CheckSign::Passed, CheckAge::Overdue}));
  EXPECT_EQ(shown("2026-03-18").told,
            "Last check: passed on 2 Mar 2026; half of its time gone, next due on 2 Apr 2026.");
  EXPECT_EQ(shown("2026-03-18").text, "16 d");
  schedule.seen_days = 10;  // the sooner of both counts
  EXPECT_EQ(age("2026-03-07"), (CheckMark{CheckSign::Passed, CheckAge::HalfGone}));
}

TEST_F(OnThePlanOfADay, TheSignIsOfTheLastCheckAndAFailureStaysUntilItHasPassed) {
  EXPECT_EQ(shown("2026-03-02").mark, (CheckMark{CheckSign::Never, CheckAge::Overdue}));
  EXPECT_EQ(shown("2026-03-02").told, "Last check: never checked; overdue.");
  check(Result::NotAccessible, "2026-03-02");
  EXPECT_EQ(shown("2026-03-03").mark.sign, CheckSign::NotReached);
  check(Result::NotTested, "2026-03-03");
  EXPECT_EQ(shown("2026-03-03").mark.sign, CheckSign::NotTested);
  EXPECT_EQ(shown("2026-03-03").mark.age, CheckAge::Overdue) << "it never passed";
  check(Result::Fail, "2026-03-04");
  EXPECT_EQ(shown("2026-03-04").mark.sign, CheckSign::Failed);
  check(Result::NotAccessible, "2026-03-05");
  EXPECT_EQ(shown("2026-03-05").mark.sign, CheckSign::Failed) << "nobody has mended it";
  check(Result::Pass, "2026-03-06");
  EXPECT_EQ(shown("2026-03-06").mark, (CheckMark{CheckSign::Passed, CheckAge::Fresh}));
}

// A check that is dated tomorrow is not believed: the sign is of the check whose day is told.
TEST_F(OnThePlanOfADay, TheSignAndTheDayAreOfTheSameCheck) {
  check(Result::Pass, "2026-03-02");
  check(Result::NotAccessible, "2026-03-09");
  EXPECT_EQ(shown("2026-03-03").mark.sign, CheckSign::Passed);
  EXPECT_TRUE(shown("2026-03-03").told.startsWith("Last check: passed on 2 Mar 2026;"))
      << shown("2026-03-03").told.toStdString();
  EXPECT_EQ(shown("2026-03-09").mark.sign, CheckSign::NotReached);
}

// A line that was changed may say of several devices that they failed, under one number.
TEST_F(OnThePlanOfADay, TheSignIsOfTheDevicesOwnCheckWhereSeveralHaveOneNumber) {
  check(Result::Fail, "2026-03-02");
  records.checks.front().device = "planer/stop";
  check(Result::NotTested, "2026-03-02");
  records.checks.back().number = 1;
  EXPECT_EQ(shown("2026-03-03").mark.sign, CheckSign::NotTested);
}

TEST_F(OnThePlanOfADay, WhyItIsStillDueIsTold) {
  check(Result::Pass, "2026-03-02");
  records.checks.back().tested.pop_back();
  EXPECT_EQ(shown("2026-03-03").mark, (CheckMark{CheckSign::Passed, CheckAge::Overdue}));
  EXPECT_EQ(
      shown("2026-03-03").told,
      "Last check: passed on 2 Mar 2026; overdue. Still due: full test, not ticked: \"Stays stopped when "
      "power returns\".");
}

}  // namespace
}  // namespace stopwalk::rounds
