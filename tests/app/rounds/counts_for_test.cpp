// What a pass counts for by what was tried at it, said before it is recorded and after.
#include "app/rounds/counts_for.h"

#include <gtest/gtest.h>

#include "app/rounds/due_rows.h"
#include "app/rounds/missed_failures.h"
#include "app/rounds/words.h"
#include "core/inspection/tests_of_pass.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::DeviceNow;
using inspection::Due;
using inspection::notTicked;
using inspection::Result;
using inspection::Tried;
using What = Due::What;

constexpr Tried kAsked[] = {Tried::Clear,
                            Tried::Legible,
                            Tried::Pressed,
                            Tried::PressedRunning,
                            Tried::Latches,
                            Tried::StaysStoppedReleased,
                            Tried::StaysStoppedPower};

Check passOf(const std::vector<std::pair<Tried, bool>>& tested) {
  Check pass;
  pass.result = Result::Pass;
  pass.tested = tested;
  return pass;
}

// By the core's own measure, for each set of ticks: what is named is enough, and none of it can be left out.
TEST(NotTicked, IsJustWhatTheTestsAskForBesides) {
  const DeviceNow stop{"saw/stop", {"saw"}};
  const auto isAll = [&](const Check& check, const std::vector<What>& tests) {
    for (const What test : tests)
      if (!(test == What::Full ? inspection::passedInFull(check, true) : inspection::passedPressed(check)))
        return false;
    return true;
  };
  for (unsigned ticks = 1; ticks < 1u << std::size(kAsked); ++ticks)
    for (const std::vector<What>& tests :
         {std::vector{What::Pressed}, std::vector{What::Full}, std::vector{What::Pressed, What::Full}}) {
      std::vector<std::pair<Tried, bool>> tested;
      for (std::size_t i = 0; i < std::size(kAsked); ++i)
        if (ticks >> i & 1) tested.emplace_back(kAsked[i], true);
      const auto left = notTicked(passOf(tested), tests, stop);
      EXPECT_EQ(left.empty(), isAll(passOf(tested), tests)) << ticks;
      std::vector<std::pair<Tried, bool>> all = tested;
      for (const Tried test : left) {
        EXPECT_FALSE(inspection::testedFor(passOf(tested), test).value_or(false)) << ticks;
        all.emplace_back(test, true);
      }
      EXPECT_TRUE(isAll(passOf(all), tests)) << ticks;
      for (const Tried test : left) {
        auto without = all;
        std::erase(without, std::pair(test, true));
        EXPECT_FALSE(isAll(passOf(without), tests)) << ticks << " " << inspection::word(test);
      }
    }
}

TEST(NotTicked, IsALookThatWasAnsweredWithNo) {
  Check pass = passOf({{Tried::Seen, false}, {Tried::Pressed, true}});
  EXPECT_EQ(notTicked(pass, std::array{What::Seen}, {"saw/stop", {"saw"}}), std::vector{Tried::Seen});
}

TEST(NotTicked, OfWhatIsNoStopIsThatItWasLookedAt) {
  const DeviceNow start{"saw/start", {}, true, false};
  EXPECT_EQ(notTicked(passOf({{Tried::Clear, true}}), std::array{What::Seen}, start),
            std::vector{Tried::Seen});
  EXPECT_TRUE(notTicked(passOf({{Tried::Seen, true}}), std::array{What::Seen}, start).empty());
  EXPECT_TRUE(notTicked(passOf({{Tried::Seen, true}, {Tried::Pressed, true}}), std::array{What::Pressed},
                        {"saw/stop", {"saw"}})
                  .empty());
}

class CountsFor : public testing::Test {
 protected:
  CountsFor() {
    device.id = "saw/stop";
    device.machines = {"saw"};
    device.kind = "mushroom button";
  }
  void record(Result result, const char* on, const std::vector<Tried>& ticked) {
    Check check = passOf({});
    for (const Tried test : ticked) check.tested.emplace_back(test, true);
    check.number = records.checks.size() + 1;
    check.device = device.id;
    check.machines = device.machines;
    check.at = *inspection::parseMoment(std::string(on) + "T09:15:00+01:00");
    check.inspector = "Ada Example";
    check.result = result;
    records.checks.push_back(check);
  }
  DeviceOn on(const char* day) {
    const auto today = *inspection::parseDate(day);
    states = inspection::statesOf(records, schedule, planning::asOf(std::vector{device}, today));
    if (missed) addMissedFailures(states, std::span(&*missed, 1));
    return {device, inspection::findState(states, device.id), schedule, today};
  }
  QString will(const char* day, const std::vector<Tried>& ticked, const QString& by = "Ada Example",
               Result result = Result::Pass) {
    Entered entered;
    entered.result = result;
    for (const Tried test : ticked) entered.tested.emplace_back(test, true);
    Check check = passOf(entered.tested);
    check.device = device.id;
    check.machines = device.machines;
    check.at = *inspection::parseMoment(std::string(made_on.empty() ? day : made_on) + "T10:15:00+01:00");
    if (!made_on.empty()) check.entered = *inspection::parseMoment(std::string(day) + "T12:00:00+01:00");
    check.inspector = personTyped(by).toStdString();
    check.result = result;
    if (corrects) check.corrects = corrects;
    const DeviceOn now = on(day);
    const inspection::OnRecord on_record(records, schedule, planning::asOf(std::vector{device}, now.day));
    return willCountFor(entered, check, on_record.ifRecorded(check), now, {}).text;
  }
  std::string made_on;       // on paper; empty: at once
  std::size_t corrects = 0;  // 0: none
  std::optional<inspection::FailedDevice> missed;
  const std::vector<Tried> all{std::begin(kAsked), std::end(kAsked)};
  const std::vector<Tried> but_power{all.begin(), all.end() - 1};

  planning::InspectedDevice device;
  inspection::Records records;
  inspection::Schedule schedule;
  std::vector<inspection::DeviceState> states;
};

TEST_F(CountsFor, WhatStaysDueIsSaidBeforeWithWhatIsNotTicked) {
  EXPECT_EQ(will("2026-03-02", but_power),
            "Recorded like this, the device stays due for: full test, not ticked: \"Stays stopped when power "
            "returns\". It counts as: press.");
  EXPECT_EQ(will("2026-03-02", all), "It counts as: press, full test.");
  EXPECT_EQ(
      will("2026-03-02", {Tried::Clear}),
      "Recorded like this, the device stays due for: press, full test, not ticked: \"Marking legible\", "
      "\"Pressed while running at no load: the machine stopped\", and 2 more. It counts as no test.");
  EXPECT_EQ(will("2026-03-02", {}), "Tick what was tried: a pass says nothing without it.");
  EXPECT_EQ(will("2026-03-02", {}, {}, Result::Fail), "");
  EXPECT_EQ(will("2026-03-02", {}, {}, Result::NotTested), "");
}

TEST_F(CountsFor, WhatIsNotDueIsNotAskedFor) {
  record(Result::Pass, "2026-03-02", all);
  EXPECT_EQ(will("2026-04-02", {Tried::Pressed}), "It counts as: press.");
  EXPECT_EQ(will("2027-03-02", {Tried::Pressed}).left(66),
            "Recorded like this, the device stays due for: full test, not ticke");
}

TEST_F(CountsFor, AFailureThatStaysOpenIsSaidBefore) {
  record(Result::Pass, "2026-03-01", all);
  record(Result::Fail, "2026-03-02", {Tried::Pressed});
  EXPECT_TRUE(will("2026-03-03", {Tried::Clear})
                  .startsWith("Recorded like this, it stays failed: it was not pressed"))
      << will("2026-03-03", {Tried::Clear}).toStdString();
  EXPECT_FALSE(will("2026-03-03", {Tried::Pressed}).contains("failed"));
  schedule.retest_by_another = true;
  EXPECT_EQ(
      will("2026-03-03", {Tried::Pressed}, " ada example "),
      "Recorded like this, it stays failed: another person than Ada Example, who found it, is to pass it. "
      "It counts as: press.");
  EXPECT_EQ(will("2026-03-03", {Tried::Pressed}, "Bo Example"), "It counts as: press.");
}

TEST_F(CountsFor, ACorrectionClosesNoFailureAndSaysSo) {
  record(Result::Fail, "2026-03-02", {Tried::Pressed});
  record(Result::NotTested, "2026-03-03", {});
  corrects = 2;
  EXPECT_EQ(will("2026-03-04", all).left(76),
            "Recorded like this, it stays failed: a correction undoes no failure. It coun");
}

TEST_F(CountsFor, ACorrectionSaysWhatItMakesDue) {
  record(Result::Pass, "2026-03-02", all);
  corrects = 1;
  EXPECT_EQ(will("2026-03-03", {}, "Ada Example", Result::NotTested),
            "Recorded like this, the device becomes due for: press, full test.");
  EXPECT_EQ(will("2026-03-03", all), "It counts as: press, full test.");
  EXPECT_EQ(will("2026-03-03", but_power),
            "Recorded like this, the device becomes due for: full test. It counts as: press.");
  EXPECT_EQ(will("2026-04-09", all),
            "Recorded like this, the device stays due for: press, as the check is of 2 Mar 2026. It counts "
            "as: press, full test.");
  corrects = 0;
  EXPECT_EQ(will("2026-03-03", {}, "Ada Example", Result::NotTested), "");
}

TEST_F(CountsFor, APassFromPaperIsOfItsOwnDay) {
  record(Result::Fail, "2026-03-02", {Tried::Pressed});
  made_on = "2026-03-01";
  EXPECT_TRUE(will("2026-03-03", all).startsWith("Recorded like this, it stays failed: by the times given"))
      << will("2026-03-03", all).toStdString();
  records.checks.clear();
  made_on = "2026-01-05";
  EXPECT_EQ(will("2026-03-03", all),
            "Recorded like this, the device stays due for: press, as the check is of 5 Jan 2026. It counts "
            "as: press, full test.");
}

// Of a log that was gone on from without its beginning.
TEST_F(CountsFor, WhatFailedByMissedRecordsIsClosedByAnotherPersonTooWhereThatIsAsked) {
  schedule.retest_by_another = true;
  missed = inspection::FailedDevice{.device = device.id, .found_by = "Ada Example"};
  EXPECT_TRUE(will("2026-03-03", all, "Ada Example").contains("another person than Ada Example"));
  EXPECT_TRUE(will("2026-03-03", {Tried::Clear}, "Bo Sample").contains("it was not pressed"));
  EXPECT_FALSE(will("2026-03-03", all, "Bo Sample").contains("failed"));
}

TEST_F(CountsFor, ALookOfAStopCountsWhereLooksAreFollowed) {
  record(Result::Pass, "2026-03-02", all);
  EXPECT_TRUE(will("2026-03-03", {Tried::Clear, Tried::Legible}).endsWith("It counts as no test."));
  schedule.seen_days = 1;
  EXPECT_EQ(will("2026-03-03", {Tried::Clear, Tried::Legible}), "It counts as: look.");
}

TEST_F(CountsFor, WhoeverPassesItSecondClosesWhatNobodyKnownFound) {
  schedule.retest_by_another = true;
  record(Result::Fail, "2026-03-02", {Tried::Pressed});
  records.checks.back().inspector = "";
  EXPECT_TRUE(will("2026-03-03", all, "Ada Example").contains("it stays failed")) << "one of two";
  record(Result::Pass, "2026-03-03", all);
  EXPECT_FALSE(will("2026-03-04", all, "Bo Sample").contains("failed"));
}

TEST_F(CountsFor, TheDueListSaysWhyItIsDueThoughItWasChecked) {
  layout::Layout layout;
  const auto row = [&](const char* day) {
    const DeviceOn now = on(day);
    return dueView(layout, std::vector{device}, records, states, {}, schedule, now.day)
        .groups.at(0)
        .rows.at(0)
        .text;
  };
  record(Result::Pass, "2026-03-02", but_power);
  EXPECT_TRUE(row("2026-03-03")
                  .endsWith("full test never passed (check 1 of 2 Mar 2026, not ticked: \"Stays stopped when "
                            "power returns\")"))
      << row("2026-03-03").toStdString();
  EXPECT_EQ(stillDueText(records.checks[0], on("2026-03-03")),
            "full test, not ticked: \"Stays stopped when power returns\"");
  record(Result::NotAccessible, "2026-03-04", {});
  EXPECT_TRUE(row("2026-03-05").endsWith("full test never passed; could not reach on 4 Mar 2026"))
      << row("2026-03-05").toStdString();
  record(Result::Pass, "2026-03-05", all);
  EXPECT_EQ(stillDueText(records.checks[2], on("2026-03-05")), "");
}

}  // namespace
}  // namespace stopwalk::rounds
