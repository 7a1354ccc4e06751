#include "app/rounds/open_failure.h"

#include <gtest/gtest.h>

#include "app/rounds/on_plan.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::Result;

// A failure that Ada Example found, and a pass after it.
const inspection::Date kToday = *inspection::parseDate("2026-06-01");

class OpenFailure : public testing::Test {
 protected:
  OpenFailure() {
    Check check;
    check.number = 2;
    check.device = "saw/stop";
    check.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
    check.inspector = "Ada Example";
    check.result = Result::Fail;
    records.checks.push_back(check);
    check.number = 3;
    check.at = *inspection::parseMoment("2026-03-03T09:15:00+01:00");
    check.result = Result::Pass;
    check.inspector = "Grace Example";
    records.checks.push_back(check);
  }
  QString why() { return whyStillFailed(pass(), records, schedule, {kToday}); }
  Check& pass() { return records.checks[1]; }
  plan::InspectedOnPlan onPlan(const RoundUnderWay& round) {
    const inspection::OnRecord on_record(records, schedule, {kToday});
    const Counting counting(on_record, {});
    const auto states = on_record.states();
    return roundOnPlan(round, {}, {{}, records, counting, states, schedule, kToday});
  }

  inspection::Records records;
  inspection::Schedule schedule;
};

TEST_F(OpenFailure, IsClosedByAPassOfItsOwn) {
  EXPECT_EQ(why(), "");
}

TEST_F(OpenFailure, StaysOpenWhereWhoFoundItPassesItAndAnotherIsWanted) {
  pass().inspector = "Ada Example";
  EXPECT_EQ(why(), "");
  schedule.retest_by_another = true;
  EXPECT_TRUE(why().contains("another person than Ada Example")) << why().toStdString();
  pass().inspector = "Grace Example";
  EXPECT_EQ(why(), "");
}

TEST_F(OpenFailure, OfWhomNobodyCanReadWhoFoundItIsClosedByTwoPeople) {
  schedule.retest_by_another = true;
  records.checks.front().inspector.clear();
  EXPECT_EQ(
      why(),
      "It is still failed: it was found by somebody whose name cannot be read: two different people are to "
      "pass it, in a check each.");
  const auto failed = inspection::failedDevices(records, schedule, {kToday});
  ASSERT_EQ(failed.size(), 1u);
  EXPECT_EQ(
      openFailureText(failed[0], schedule),
      "Failed on 2 Mar 2026 (check 2), found by somebody whose name cannot be read: it stays failed until it "
      "passes two checks of its own, made by two different people.");
}

TEST_F(OpenFailure, StaysOpenAfterWhatWasNotPressed) {
  pass().tested = {{inspection::Tried::Seen, true}, {inspection::Tried::Pressed, false}};
  EXPECT_TRUE(why().contains("not pressed")) << why().toStdString();
}

TEST_F(OpenFailure, StaysOpenAfterACorrection) {
  pass().corrects = 2;
  EXPECT_TRUE(why().contains("correction")) << why().toStdString();
}

TEST_F(OpenFailure, StaysOpenAfterWhatIsNotSurelyLater) {
  pass().at = *inspection::parseMoment("2026-03-01T09:15:00+01:00");
  pass().entered = *inspection::parseMoment("2026-03-03T09:15:00+01:00");
  EXPECT_TRUE(why().contains("not sure")) << why().toStdString();
}

TEST_F(OpenFailure, StaysOpenAfterWhatCountsForNothing) {
  records.unsure_to = 3;
  EXPECT_TRUE(why().contains("not as they were written")) << why().toStdString();
  records.unsure_to = 0;
  pass().at = *inspection::parseMoment("2026-07-03T09:15:00+01:00");
  EXPECT_TRUE(why().contains("still to come")) << why().toStdString();
}

// In the history of the device, and wherever the check is shown.
TEST_F(OpenFailure, IsSaidBehindThePassThatLeavesItOpen) {
  const auto but = [&] {
    return Counting(inspection::OnRecord(records, schedule, {kToday}), {}).but(pass()).toStdString();
  };
  EXPECT_EQ(but(), "");
  pass().inspector = "Ada Example";
  schedule.retest_by_another = true;
  EXPECT_EQ(but(), "leaves the failure open: another person than Ada Example, who found it, is to pass it");
  schedule.retest_by_another = false;
  pass().tested = {{inspection::Tried::Seen, true}};
  EXPECT_EQ(
      but(),
      "only looked at; leaves the failure open: it was not pressed, or did not stay in, or what it stops "
      "did not stop or stay stopped");
}

TEST_F(OpenFailure, IsToldOfPassesOnly) {
  pass().result = Result::NotTested;
  EXPECT_EQ(why(), "");
}

TEST_F(OpenFailure, SaysWhatWouldCloseIt) {
  records.checks.pop_back();
  const auto failed = inspection::failedDevices(records, schedule, {kToday});
  ASSERT_EQ(failed.size(), 1u);
  EXPECT_EQ(openFailureText(failed[0], schedule),
            "Failed on 2 Mar 2026 (check 2): it stays failed until it passes a check of its own.");
  schedule.retest_by_another = true;
  EXPECT_TRUE(openFailureText(failed[0], schedule).contains("made by another person than Ada Example"));
}

TEST_F(OpenFailure, HasTheDayOfTheFirstAndOfTheLast) {
  records.checks.push_back(records.checks[0]);
  records.checks.back().number = 4;
  records.checks.back().at = *inspection::parseMoment("2026-03-04T09:15:00+01:00");
  records.checks.erase(records.checks.begin() + 1);
  const auto failed = inspection::failedDevices(records, schedule, {kToday});
  ASSERT_EQ(failed.size(), 1u);
  EXPECT_TRUE(openFailureText(failed[0], schedule)
                  .startsWith("Failed since 2 Mar 2026. Failed on 4 Mar 2026 (check 4): it stays failed"))
      << openFailureText(failed[0], schedule).toStdString();
}

// A tick of a round stands for a pass that counts, and closes what failed.
TEST_F(OpenFailure, LeavesNoTickOnThePlanOfTheRoundThatPassedIt) {
  records.rounds.push_back({1, records.checks[0].at, "Ada Example", "all", {"saw/stop"}, {}});
  for (Check& check : records.checks) check.round = 1;
  const auto sign = [&] {
    RoundUnderWay round;
    round.setRecords(std::make_shared<const inspection::Records>(records));
    round.walk(1);
    return onPlan(round).devices.at("saw/stop").mark.sign;
  };
  EXPECT_EQ(sign(), plan::CheckSign::Passed);
  pass().inspector = "Ada Example";
  schedule.retest_by_another = true;
  EXPECT_EQ(sign(), plan::CheckSign::Failed);
  pass().tested = {{inspection::Tried::Seen, true}};
  EXPECT_EQ(sign(), plan::CheckSign::Failed);
  records.checks.erase(records.checks.begin());
  EXPECT_EQ(sign(), plan::CheckSign::Short);
}

TEST_F(OpenFailure, HasItsCrossInARoundThatHasNotComeToIt) {
  records.checks.pop_back();
  records.rounds.push_back({2, records.checks[0].at, "Bo Example", "all", {"saw/stop", "saw/bar"}, {}});
  RoundUnderWay round;
  round.setRecords(std::make_shared<const inspection::Records>(records));
  round.walk(2);
  const auto shown = onPlan(round);
  EXPECT_EQ(shown.devices.at("saw/stop").mark.sign, plan::CheckSign::Failed);
  EXPECT_EQ(shown.devices.at("saw/bar").mark.sign, plan::CheckSign::None);
}

}  // namespace
}  // namespace stopwalk::rounds
