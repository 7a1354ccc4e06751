// Which failures are open, and what is told of a pass that closes none.
#include "core/inspection/closing.h"

#include <gtest/gtest.h>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {
namespace {

const Date kDay = *parseDate("2026-03-02"), kToday = *parseDate("2026-06-01");

// Checks of one device, a day each.
class OpenFailures : public testing::Test {
 protected:
  Check& add(Result result, const std::string& by = "Ada") {
    Check c;
    c.number = records.checks.size() + 1;
    c.device = "saw/stop";
    c.machines = {"saw"};
    c.at.date = daysAfter(kDay, static_cast<int>(c.number) - 1);
    c.inspector = by;
    c.result = result;
    records.checks.push_back(c);
    return records.checks.back();
  }
  std::optional<LeftOpen> leftOpen(std::size_t check) const {
    const auto passes = passesShort(records, schedule, {kToday});
    const auto pass = passes.find(check);
    return pass == passes.end() ? std::nullopt : pass->second.left_open;
  }
  FailedDevice failed() const { return failedDevices(records, schedule, {kToday}).at(0); }

  Records records;
  Schedule schedule;
};

TEST_F(OpenFailures, SinceIsTheDayOfTheFirstFailureThatIsOpen) {
  add(Result::Fail);
  add(Result::Pass);
  add(Result::Fail);
  add(Result::Fail);
  EXPECT_EQ(failed().since, daysAfter(kDay, 2)) << "the first was closed";
  EXPECT_EQ(failed().on, daysAfter(kDay, 3));
  EXPECT_EQ(failed().check, 4u);
}

TEST_F(OpenFailures, OfEachPassThatClosesNothingItIsKnownWhy) {
  schedule.retest_by_another = true;
  add(Result::Pass);
  add(Result::Fail, "Ada");
  add(Result::Pass, "ada");
  add(Result::Pass, "Bo").tested = {{Tried::Seen, true}};
  add(Result::NotTested, "Bo");
  add(Result::Pass, "Bo").corrects = 5;
  Check& paper = add(Result::Pass, "Bo");
  paper.entered = paper.at;
  paper.at.date = kDay;
  add(Result::Pass, "Bo").at.date = daysAfter(kToday, 1);
  EXPECT_EQ(leftOpen(1), std::nullopt) << "it was long before";
  EXPECT_EQ(leftOpen(3), LeftOpen::SamePerson);
  EXPECT_EQ(leftOpen(4), LeftOpen::NotPressed);
  EXPECT_EQ(leftOpen(5), std::nullopt) << "it is no pass";
  EXPECT_EQ(leftOpen(6), LeftOpen::Correction);
  EXPECT_EQ(leftOpen(7), LeftOpen::NotSurelyAfter);
  EXPECT_EQ(leftOpen(8), LeftOpen::InDoubt);
  add(Result::Pass, "Bo");
  EXPECT_TRUE(passesShort(records, schedule, {kToday}).contains(8)) << "it is of a day to come";
  for (const std::size_t check : {3u, 4u, 6u, 7u, 8u}) EXPECT_EQ(leftOpen(check), std::nullopt) << check;
}

// Of two people one is another than who found it.
TEST_F(OpenFailures, WhatNobodyKnowsWhoFoundIsClosedByTwoPeople) {
  schedule.retest_by_another = true;
  add(Result::Fail, "");
  add(Result::Pass, "Ada");
  EXPECT_EQ(leftOpen(2), LeftOpen::SamePerson);
  EXPECT_EQ(reasonOf(passesShort(records, schedule, {kToday}).at(2)),
            "it was found by somebody whose name cannot be read: two different people are to pass it, in a "
            "check each");
  EXPECT_EQ(whoElse(failed()),
            "another person than who found it, somebody whose name cannot be read: by two different people, "
            "a check "
            "each");
  add(Result::Pass, "ADA");
  add(Result::Pass, "Bo\uFFFD");
  add(Result::Pass, "Bo").tested = {{Tried::Seen, true}};
  add(Result::Pass, "Cleo");
  add(Result::Pass, "Ada").corrects = 6;
  EXPECT_EQ(failedDevices(records, schedule, {kToday}).size(), 1u) << "by Ada alone, as far as anybody knows";
  add(Result::Pass, "Bo");
  EXPECT_TRUE(failedDevices(records, schedule, {kToday}).empty());
  EXPECT_EQ(leftOpen(2), std::nullopt);
  add(Result::Fail, "Cleo");
  add(Result::Pass, "Cleo");
  EXPECT_EQ(failed().check, 9u) << "of whom one is known another is to";
}

TEST_F(OpenFailures, APassThatCountsForNothingIsNamedThoughNothingFailed) {
  add(Result::Pass);
  const auto passes = passesShort(records, schedule, {kToday, {{"saw/stop", {"saw", "planer"}}}});
  ASSERT_TRUE(passes.contains(1));
  EXPECT_EQ(passes.at(1).not_counted, (NotCounted{1, kDay, Doubt::NotNamed, {"planer"}}));
  EXPECT_EQ(passes.at(1).left_open, std::nullopt);
  EXPECT_TRUE(passesShort(records, schedule, {kToday}).empty());
}

TEST_F(OpenFailures, WhatIsRemovedIsFailedOnlyForWhereItIsThereAgain) {
  add(Result::Fail).corrective = Corrective{"mend it", "Bo", {}};
  add(Result::NotTested).removed = true;
  EXPECT_TRUE(failed().removed);
  EXPECT_TRUE(removedDevices(records, kToday).contains("saw/stop"));
  EXPECT_EQ(failed().check, 1u) << "it is closed by nothing";
  records.unsure_to = 2;
  EXPECT_FALSE(failed().removed) << "whether that was said is not known";
  records.unsure_to = 1;
  EXPECT_TRUE(failed().removed) << "it was said after all that is in doubt";
  records.unsure_to = 0;
  add(Result::Fail);
  EXPECT_FALSE(failed().removed) << "it was there again";
  EXPECT_TRUE(removedDevices(records, kToday).empty());
}

TEST_F(OpenFailures, WhatWasCheckedSinceItWasRemovedIsThereAgain) {
  add(Result::Fail);
  add(Result::NotTested).removed = true;
  add(Result::NotAccessible);
  EXPECT_FALSE(failed().removed);
  EXPECT_TRUE(removedDevices(records, kToday).empty());
  add(Result::NotTested).removed = true;
  EXPECT_TRUE(failed().removed) << "and was taken away again";
  add(Result::NotTested).corrects = 4;
  EXPECT_FALSE(failed().removed) << "by mistake";
}

// What stands under its id now is another, that nobody tested.
TEST_F(OpenFailures, APassOfWhatWasTakenAwayIsNoneOfWhatIsThereAgain) {
  const AsOf there{kToday, {{"saw/stop", {"saw"}}}};
  const auto stateNow = [&] { return statesOf(records, schedule, there).at(0); };
  const NotCounted of_before{1, kDay, Doubt::TakenAway, {}};
  add(Result::Pass).tested = {{Tried::Seen, true},
                              {Tried::PressedRunning, true},
                              {Tried::StaysStoppedReleased, true},
                              {Tried::StaysStoppedPower, true}};
  EXPECT_EQ(stateNow().in_full, kDay);
  add(Result::NotTested).removed = true;
  for (const auto& day : {stateNow().seen, stateNow().pressed, stateNow().in_full})
    EXPECT_EQ(day, std::nullopt);
  for (const auto& pass :
       {stateNow().seen_not_counted, stateNow().pressed_not_counted, stateNow().full_not_counted})
    EXPECT_EQ(pass, of_before);
  EXPECT_EQ(passesShort(records, schedule, there).at(1).not_counted, of_before);
  EXPECT_TRUE(passesShort(records, schedule, {kToday}).empty()) << "it was good for what it was of";
  Check& paper = add(Result::Pass);
  paper.entered = paper.at;
  paper.at.date = kDay;
  EXPECT_EQ(stateNow().pressed, std::nullopt) << "it was made before";
  add(Result::Pass);
  EXPECT_EQ(stateNow().pressed, daysAfter(kDay, 3));
  EXPECT_EQ(stateNow().in_full, std::nullopt);
  add(Result::NotTested).corrects = 2;
  EXPECT_EQ(stateNow().in_full, kDay) << "it was never taken away";
}

// Such as one that was wired to more than the layout said when it passed.
TEST_F(OpenFailures, APassOfFewerMachinesThanFailedClosesNothing) {
  add(Result::Fail).machines = {"saw", "planer"};
  add(Result::Pass);
  const auto failedNow = [&](std::vector<DeviceNow> devices) {
    return !failedDevices(records, schedule, {kToday, std::move(devices)}).empty();
  };
  EXPECT_TRUE(failedNow({{"saw/stop", {"saw", "planer"}}}));
  EXPECT_TRUE(failedNow({})) << "what it stops is not known";
  EXPECT_TRUE(failedNow({{"saw/stop", {"saw", "joiner"}}})) << "the planer may be called the joiner now";
  EXPECT_FALSE(failedNow({{"saw/stop", {"saw"}}})) << "it stops no more";
  const auto passes = passesShort(records, schedule, {kToday, {{"saw/stop", {"saw", "planer"}}}});
  EXPECT_EQ(passes.at(2).left_open, LeftOpen::NotNamed);
  EXPECT_EQ(reasonOf(passes.at(2)), "it did not test planer");
  EXPECT_EQ(reasonOf(passesShort(records, schedule, {kToday}).at(2)), "it did not test planer");
  add(Result::Pass).machines = {"planer", "saw", "joiner"};
  EXPECT_FALSE(failedNow({{"saw/stop", {"saw", "planer"}}}));
  EXPECT_FALSE(failedNow({}));
}

TEST_F(OpenFailures, AFailureWithoutMachinesIsOfAllThatItStops) {
  add(Result::Fail).machines.clear();
  add(Result::Pass);
  EXPECT_EQ(failedDevices(records, schedule, {kToday, {{"saw/stop", {"saw", "planer"}}}}).size(), 1u);
  EXPECT_TRUE(failedDevices(records, schedule, {kToday, {{"saw/stop", {"saw"}}}}).empty());
}

TEST_F(OpenFailures, WhatIsStillToBeDoneIsNotDoneByAPassOfFewerMachines) {
  Check& failure = add(Result::Fail);
  failure.machines = {"saw", "planer"};
  failure.corrective = Corrective{"mend it", "Bo", {}};
  add(Result::Pass);
  EXPECT_EQ(openActions(records, {kToday, {{"saw/stop", {"saw", "planer"}}}}).size(), 1u);
  EXPECT_TRUE(openActions(records, {kToday, {{"saw/stop", {"saw"}}}}).empty());
}

// As an earlier version or another program may have written it.
TEST_F(OpenFailures, APassThatContradictsItselfClosesNoneAndCountsForNothing) {
  for (const Tried test : {Tried::Clear, Tried::Legible, Tried::Latches, Tried::StaysStoppedReleased,
                           Tried::StaysStoppedPower}) {
    records = {};
    add(Result::Fail);
    add(Result::Pass).tested = {{Tried::Seen, true}, {Tried::Pressed, true}, {test, false}};
    EXPECT_EQ(leftOpen(2), LeftOpen::NotPressed) << word(test);
    EXPECT_EQ(failed().check, 1u);
    const DeviceState state = statesOf(records, schedule, {kToday, {{"saw/stop", {"saw"}}}}).at(0);
    EXPECT_EQ(state.pressed, std::nullopt) << word(test);
    EXPECT_EQ(state.seen, std::nullopt) << word(test);
  }
}

// And so does what is due next.
TEST_F(OpenFailures, WhatIsStillToBeDoneFallsDueAsTestsDo) {
  add(Result::Fail).corrective = Corrective{"mend it", "Bo", parseDate("2026-03-20")};
  const std::vector<std::string> devices = {"saw/stop"};
  const auto states = statesOf(records, schedule, {kDay});
  EXPECT_EQ(nextDue(devices, states, schedule, kDay), std::nullopt);
  EXPECT_EQ(nextDue(devices, states, schedule, kDay, openActions(records, {kDay})), parseDate("2026-03-20"));
  EXPECT_EQ(nextDue(devices, states, schedule, *parseDate("2026-03-20"), openActions(records, {kDay})),
            std::nullopt);
}

}  // namespace
}  // namespace stopwalk::inspection
