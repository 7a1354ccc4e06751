// What is due and what is failed, from the records alone.
#include "core/inspection/schedule.h"

#include <gtest/gtest.h>

namespace stopwalk::inspection {
namespace {

const Date kDay = *parseDate("2026-03-02"), kLater = *parseDate("2030-01-01");

// Writes checks of one device, a day each.
class Written {
 public:
  Check& add(Result result, const std::string& by = "Ada", const std::string& device = "saw/stop") {
    Check c;
    c.number = ++number_;
    c.device = device;
    c.at.date = daysAfter(kDay, static_cast<int>(number_) - 1);
    c.inspector = by;
    c.result = result;
    records.checks.push_back(c);
    return records.checks.back();
  }
  bool isFailed(const Schedule& schedule = {}) const {
    return !failedDevices(records, schedule, {kLater}).empty();
  }

  Records records;

 private:
  std::size_t number_ = 0;
};

TEST(Failed, UntilACheckIsPassed) {
  Written w;
  w.add(Result::Pass);
  EXPECT_FALSE(w.isFailed());
  w.add(Result::Fail);
  EXPECT_TRUE(w.isFailed());
  w.add(Result::NotTested);
  w.add(Result::NotAccessible);
  EXPECT_TRUE(w.isFailed());
  w.add(Result::Pass, "Bo", "saw/other");
  EXPECT_TRUE(w.isFailed());
  w.add(Result::Pass);
  EXPECT_FALSE(w.isFailed());
}

TEST(Failed, NamesTheLastFailure) {
  Written w;
  w.add(Result::Fail, "Ada");
  w.add(Result::Fail, "Bo");
  EXPECT_EQ(failedDevices(w.records, {}, {kLater}),
            (std::vector<FailedDevice>{{"saw/stop", daysAfter(kDay, 1), 2, "Bo", kDay}}));
}

TEST(Failed, LookingClosesNothing) {
  Written w;
  w.add(Result::Fail);
  w.add(Result::Pass).tested = {{Tried::Seen, true}};
  EXPECT_TRUE(w.isFailed());
  w.add(Result::Pass).tested = {{Tried::Seen, true}, {Tried::PressedRunning, true}};
  EXPECT_FALSE(w.isFailed());
}

TEST(Failed, OnlyAnotherPersonClosesItWhereTheScheduleAsks) {
  Written w;
  w.add(Result::Fail, "Ada Example");
  w.add(Result::Pass, " ada  example");
  EXPECT_FALSE(w.isFailed());
  EXPECT_TRUE(w.isFailed({.retest_by_another = true}));
  w.add(Result::Pass, "Bo Example");
  EXPECT_FALSE(w.isFailed({.retest_by_another = true}));
}

TEST(Failed, ACorrectionDoesNotUndoIt) {
  Written w;
  w.add(Result::Fail);
  w.add(Result::Pass).corrects = 1;
  EXPECT_TRUE(w.isFailed());
  w.add(Result::NotTested);
  w.add(Result::Pass).corrects = 3;
  EXPECT_TRUE(w.isFailed()) << "what was not passed from the first closes nothing";
  w.add(Result::Pass);
  EXPECT_FALSE(w.isFailed());
}

TEST(Failed, ATakenBackPassNoLongerClosesIt) {
  Written w;
  w.add(Result::Fail);
  w.add(Result::Pass);
  EXPECT_FALSE(w.isFailed());
  w.add(Result::Pass).corrects = 2;  // such as with a note
  EXPECT_FALSE(w.isFailed());
  w.add(Result::NotTested).corrects = 3;
  EXPECT_TRUE(w.isFailed());
}

TEST(Failed, CorrectingAFailureThatWasMendedLeavesItMended) {
  Written w;
  w.add(Result::Fail);
  w.add(Result::Pass);
  w.add(Result::Fail).corrects = 1;
  EXPECT_FALSE(w.isFailed());
  w.add(Result::Fail).corrects = 2;
  EXPECT_TRUE(w.isFailed());
}

TEST(Failed, ACorrectionOfAnotherDeviceIsNone) {
  Written w;
  w.add(Result::Fail);
  w.add(Result::Pass);
  w.add(Result::NotTested, "Ada", "saw/other").corrects = 2;
  EXPECT_FALSE(w.isFailed());
  EXPECT_EQ(correctedBy(w.records), (std::vector<std::size_t>{0, 0, 0}));
}

class DueList : public testing::Test {
 protected:
  std::vector<std::string> due(const char* on, const Schedule& schedule = {}) const {
    std::vector<std::string> all;
    const auto states = statesOf(w.records, schedule, {*parseDate(on)});
    for (const Due& d : dueOn(devices, states, schedule, *parseDate(on)))
      all.push_back(d.device + " " + std::string(word(d.what)) + (isOverdue(d, *parseDate(on)) ? "!" : ""));
    return all;
  }
  using Lines = std::vector<std::string>;
  const std::vector<std::string> devices = {"saw/stop"};
  Written w;
};

TEST_F(DueList, WhatWasNeverTriedIsOverdue) {
  EXPECT_EQ(due("2026-03-02"), (Lines{"saw/stop pressed!", "saw/stop full!"}));
}

TEST_F(DueList, FollowsFromTheLastPass) {
  w.add(Result::Pass).tested = {{Tried::Seen, true},
                                {Tried::PressedRunning, true},
                                {Tried::StaysStoppedReleased, true},
                                {Tried::StaysStoppedPower, true}};
  EXPECT_EQ(due("2026-03-02"), Lines{});
  EXPECT_EQ(due("2026-04-01"), Lines{});
  EXPECT_EQ(due("2026-04-02"), Lines{"saw/stop pressed"});
  EXPECT_EQ(due("2026-04-03"), Lines{"saw/stop pressed!"});
  EXPECT_EQ(due("2027-03-02"), (Lines{"saw/stop pressed!", "saw/stop full"}));
  EXPECT_EQ(due("2026-03-05", {.seen_days = 3}), Lines{"saw/stop seen"});
  EXPECT_EQ(due("2026-04-03", {.pressed_months = 2}), Lines{});
  const auto states = statesOf(w.records, {}, {kLater});
  EXPECT_EQ(nextDue(devices, states, {}, kDay), parseDate("2026-04-02"));
}

TEST_F(DueList, APassOnlyCountsForWhatWasTried) {
  w.add(Result::Pass).tested = {{Tried::Seen, true}};
  EXPECT_EQ(due("2026-03-02", {.seen_days = 1}), (Lines{"saw/stop pressed!", "saw/stop full!"}));
  w.add(Result::Pass);
  EXPECT_EQ(due("2026-03-03"), Lines{"saw/stop full!"});
}

TEST_F(DueList, AFailureAsksForARetestAtOnce) {
  w.add(Result::Pass);
  w.add(Result::Fail);
  EXPECT_EQ(due("2026-03-03"), (Lines{"saw/stop retest!", "saw/stop full!"}));
}

TEST(Actions, AreOpenUntilTheDevicePasses) {
  Written w;
  w.add(Result::Fail).corrective = Corrective{"change the contact block", "Bo", parseDate("2026-03-09")};
  w.add(Result::NotTested);
  ASSERT_EQ(openActions(w.records, {kLater}).size(), 1u);
  EXPECT_EQ(openActions(w.records, {kLater})[0]->number, 1u);
  w.add(Result::Fail).corrects = 1;  // which says nothing of it
  ASSERT_EQ(openActions(w.records, {kLater}).size(), 1u);
  EXPECT_EQ(openActions(w.records, {kLater})[0]->number, 1u);
  w.add(Result::Pass);
  EXPECT_TRUE(openActions(w.records, {kLater}).empty());
}

TEST(RunDown, MeanOfItsRuns) {
  EXPECT_EQ(meanOf({}), std::nullopt);
  EXPECT_DOUBLE_EQ(*meanOf({2.4, 2.6, 2.5, 2.5, 2.4, 2.6, 2.5, 2.5, 2.7, 2.3}), 2.5);
}

TEST(Words, AreReadAsTheyAreWritten) {
  for (const Tried test : kTried) EXPECT_EQ(triedOf(word(test)), test);
  for (const Result result : kResults) EXPECT_EQ(resultOf(word(result)), result);
  EXPECT_EQ(triedOf("prodded"), std::nullopt);
  EXPECT_EQ(resultOf(""), std::nullopt);
}

}  // namespace
}  // namespace stopwalk::inspection
