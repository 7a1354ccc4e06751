// What is in doubt makes nothing good.
#include "core/inspection/reliance.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/files/inspection_log.h"
#include "core/inspection/person.h"
#include "core/inspection/schedule.h"
#include "tests/support/random.h"

namespace stopwalk::inspection {
namespace {

const Date kDay = *parseDate("2026-03-02"), kToday = *parseDate("2026-06-01");
const std::vector<std::string> kDevices = {"saw/stop", "lathe/bar"};

Check checkOf(std::size_t number, Result result, const std::string& by = "Ada Example") {
  Check c;
  c.number = number;
  c.device = "saw/stop";
  c.machines = {"saw"};
  c.at.date = daysAfter(kDay, static_cast<int>(number));
  c.inspector = by;
  c.result = result;
  return c;
}

Records recordsOf(std::vector<Check> checks, std::size_t unsure_to = 0) {
  return {{}, std::move(checks), unsure_to};
}

DeviceState stateOf(const Records& records, const AsOf& as_of = {kToday}) {
  return *findState(statesOf(records, {}, as_of), "saw/stop");
}

TEST(Reliance, APassUpToABadLineMakesNothingGood) {
  const auto of = [](std::size_t unsure_to) {
    return stateOf(recordsOf({checkOf(1, Result::Fail), checkOf(2, Result::Pass)}, unsure_to));
  };
  EXPECT_FALSE(of(0).failed);
  EXPECT_EQ(of(0).pressed, daysAfter(kDay, 2));
  EXPECT_FALSE(of(1).failed) << "the pass was written after it";
  EXPECT_TRUE(of(2).failed);
  EXPECT_EQ(of(2).pressed, std::nullopt);
  EXPECT_TRUE(of(3).failed);
  EXPECT_EQ(of(3).pressed_not_counted, (NotCounted{2, daysAfter(kDay, 2), Doubt::NotAsWritten}));
}

// What the bad line said may have been found between the pass on paper and its entering.
TEST(Reliance, APassOnPaperCountsOnlyIfItWasMadeAfterTheBadLineWasWritten) {
  Check paper = checkOf(4, Result::Pass);
  paper.entered = paper.at;
  paper.at.date = kDay;
  EXPECT_EQ(stateOf(recordsOf({checkOf(1, Result::Fail), paper}, 2)).pressed, std::nullopt);
  Check later = checkOf(5, Result::Pass);
  later.entered = later.at;
  later.at.second = 1;
  EXPECT_EQ(stateOf(recordsOf({checkOf(1, Result::Fail), paper, later}, 2)).pressed, later.at.date);
}

// Of a correction of a pass that can no longer be trusted nothing is known but what it says of failures.
TEST(Reliance, ACorrectionBehindTheBadLineDoesNotMakeAPassBeforeItGood) {
  Check correction = checkOf(4, Result::Pass);
  correction.corrects = 2;
  EXPECT_EQ(stateOf(recordsOf({checkOf(2, Result::Pass), correction}, 3)).pressed, std::nullopt);
}

TEST(Reliance, APassOfADayToComeMakesNothingGoodUntilThen) {
  Records records = recordsOf({checkOf(1, Result::Fail), checkOf(2, Result::Pass)});
  records.checks[1].at.date = daysAfter(kToday, 1);
  const DeviceState state = stateOf(records);
  EXPECT_TRUE(state.failed);
  EXPECT_EQ(state.pressed, std::nullopt);
  EXPECT_EQ(state.last_on, daysAfter(kDay, 1));
  EXPECT_EQ(state.pressed_not_counted, (NotCounted{2, daysAfter(kToday, 1), Doubt::AfterToday}));
  EXPECT_FALSE(stateOf(records, {daysAfter(kToday, 1)}).failed);
}

// Tokyo has the next day nine hours before the clock by which it is read.
TEST(Reliance, APassOfTheNextDayElsewhereCountsOnceItsTimeIsHere) {
  Records records = recordsOf({checkOf(1, Result::Fail), checkOf(2, Result::Pass)});
  records.checks[1].at = *parseMoment("2026-06-02T08:15:00+09:00");
  const auto at = [&](const char* now) { return stateOf(records, {*parseMoment(now)}); };
  EXPECT_FALSE(at("2026-06-01T23:15:00+00:00").failed);
  EXPECT_EQ(at("2026-06-01T23:15:00+00:00").pressed, daysAfter(kToday, 1));
  EXPECT_FALSE(at("2026-06-01T13:15:00-10:00").failed);
  EXPECT_TRUE(at("2026-06-01T23:14:59+00:00").failed) << "a clock that is wrong";
  EXPECT_TRUE(stateOf(records).failed) << "by the day alone nobody knows";
  records.checks[1].entered = *parseMoment("2026-06-02T08:15:01+09:00");
  EXPECT_TRUE(at("2026-06-01T23:15:00+00:00").failed) << "entered later";
}

TEST(Reliance, AFailureOfADayToComeCounts) {
  Records records = recordsOf({checkOf(1, Result::Fail)});
  records.checks[0].at.date = daysAfter(kToday, 100);
  EXPECT_TRUE(stateOf(records).failed);
}

// Of what is still to come nobody says that it was checked last, in records that are hurt or whole.
TEST(Reliance, ACheckOfADayToComeIsNotTheLast) {
  Check coming = checkOf(3, Result::Fail);
  coming.at.date = daysAfter(kToday, 36500);
  for (const std::size_t unsure_to : {0u, 1u}) {
    const DeviceState state = stateOf(recordsOf({checkOf(2, Result::NotTested), coming}, unsure_to));
    EXPECT_EQ(state.last, 2u) << unsure_to;
    EXPECT_EQ(state.last_on, daysAfter(kDay, 2));
    EXPECT_TRUE(state.failed);
  }
}

// A pass of before it failed could not have closed that.
TEST(Reliance, WhatIsDueNamesThePassThatMightHaveDoneForIt) {
  const Schedule schedule{.seen_days = 7};
  const auto dueOf = [&](const Records& records) {
    return dueOn(std::span(kDevices).first(1), statesOf(records, schedule, {kToday}), schedule, kToday);
  };
  const Records passed_last = recordsOf({checkOf(2, Result::Fail), checkOf(3, Result::Pass)}, 3);
  const NotCounted pass{3, passed_last.checks[1].at.date, Doubt::NotAsWritten};
  EXPECT_EQ(dueOf(passed_last), (std::vector<Due>{{"saw/stop", Due::What::Retest, {}, pass},
                                                  {"saw/stop", Due::What::Pressed, {}, pass},
                                                  {"saw/stop", Due::What::Full, {}, {}},
                                                  {"saw/stop", Due::What::Seen, {}, pass}}));
  const auto failed_last = dueOf(recordsOf({checkOf(2, Result::Pass), checkOf(3, Result::Fail)}, 3));
  EXPECT_EQ(failed_last.at(0), (Due{"saw/stop", Due::What::Retest, {}, {}}));
}

TEST(Reliance, APassCountsForTheMachinesItNamed) {
  Check full = checkOf(1, Result::Pass);
  for (const Tried test : kTried) full.tested.emplace_back(test, true);
  const Records records = recordsOf({full});
  const auto dueNow = [&](std::vector<std::string> machines) {
    const AsOf as_of{full.at.date, {{"saw/stop", std::move(machines)}}};
    return dueOn(std::span(kDevices).first(1), statesOf(records, {}, as_of), {}, full.at.date);
  };
  EXPECT_TRUE(dueNow({"saw"}).empty());
  EXPECT_TRUE(dueNow({}).empty());
  const NotCounted pass{1, full.at.date, Doubt::NotNamed, {"planer"}};
  EXPECT_EQ(dueNow({"planer", "saw"}), (std::vector<Due>{{"saw/stop", Due::What::Pressed, {}, pass},
                                                         {"saw/stop", Due::What::Full, {}, pass}}));
}

// It was written when the device stopped more than what was tested.
TEST(Reliance, ACorrectionNamesNoMachineThatItsCheckDidNot) {
  Check correction = checkOf(2, Result::Pass);
  correction.corrects = 1;
  correction.machines = {"saw", "planer"};
  const AsOf as_of{kToday, {{"saw/stop", {"saw", "planer"}}}};
  EXPECT_EQ(stateOf(recordsOf({checkOf(1, Result::Pass), correction}), as_of).pressed, std::nullopt);
}

TEST(Reliance, AnActionStaysOpenWhereThePassIsInDoubt) {
  Check fail = checkOf(1, Result::Fail);
  fail.corrective = Corrective{"mend it", "Bo Example", {}};
  EXPECT_TRUE(openActions(recordsOf({fail, checkOf(2, Result::Pass)}), {kToday}).empty());
  EXPECT_EQ(openActions(recordsOf({fail, checkOf(2, Result::Pass)}, 2), {kToday}).size(), 1u);
  EXPECT_EQ(openActions(recordsOf({fail, checkOf(2, Result::Pass)}), {kDay}).size(), 1u);
}

Check randomCheck(std::size_t number, support::Random& random) {
  Check c = checkOf(number, kResults[static_cast<std::size_t>(random.below(4))],
                    random.below(2) == 0 ? "Ada" : "Bo");
  c.device = kDevices[static_cast<std::size_t>(random.below(2))];
  c.at.second = static_cast<int>(random.below(86400));
  if (random.below(4) == 0) {
    c.entered = c.at;
    c.at.date = daysAfter(c.at.date, -static_cast<int>(random.below(5)));
  }
  if (number > 1 && random.below(4) == 0)
    c.corrects = 1 + static_cast<std::size_t>(random.below(static_cast<int>(number) - 1));
  return c;
}

std::string logTextOf(const std::vector<Check>& checks) {
  std::string text, before = files::kNoLineBefore;
  for (const Check& c : checks) {
    const std::string line = files::recordLine(c, c.number, before);
    before = files::endOfLog(line).head;
    text += line;
  }
  return text;
}

// Whether a line that was of the failure of a device is no longer so.
bool isLost(const Check& failure, const files::InspectionLog& log) {
  const auto line = std::ranges::find(log.bad, failure.number, &files::BadLine::line);
  if (line == log.bad.end()) return false;
  const Check* now = log.records.findCheck(failure.number);
  EXPECT_EQ(line->unread, !now);
  EXPECT_EQ(line->unread, files::faultText(log).find("failure") != std::string::npos);
  return !now || now->device != failure.device || now->result != Result::Fail;
}

bool isNoLater(const std::optional<Date>& date, const std::optional<Date>& than) {
  return !date || (than && *date <= *than);
}

// Property: whatever is done to one byte, no device is better off than by the records as they were; a failure
// is lost only with what its own line says.
TEST(Reliance, NoChangedByteMakesADeviceBetter) {
  int lost = 0, lasting = 0;
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    support::Random random(seed);
    std::vector<Check> checks;
    for (std::size_t n = 1; n <= 8; ++n) checks.push_back(randomCheck(n, random));
    const std::string text = logTextOf(checks);
    const Records good = files::readInspectionLog(text).records;
    const auto before = statesOf(good, {}, {kToday});
    const auto holds = [&](std::size_t at, char byte) {
      std::string changed = text;
      changed[at] = byte;
      if (changed == text) return;
      const std::string where = "seed " + std::to_string(seed) + " at " + std::to_string(at) + " " + byte;
      const files::InspectionLog log = files::readInspectionLog(changed);
      ASSERT_NE(log.records.unsure_to, 0u) << where;
      const auto after = statesOf(log.records, {}, {kToday});
      for (const DeviceState& was : before) {
        const DeviceState* found = findState(after, was.device);
        const DeviceState is = found ? *found : DeviceState{};
        ASSERT_TRUE(isNoLater(is.pressed, was.pressed)) << where;
        ASSERT_TRUE(isNoLater(is.seen, was.seen)) << where;
        ASSERT_TRUE(isNoLater(is.in_full, was.in_full)) << where;
        if (!was.failed || is.failed) {
          lasting += was.failed.has_value();
          continue;
        }
        const bool is_lost = std::ranges::any_of(good.checks, [&](const Check& c) {
          return c.device == was.device && c.result == Result::Fail && isLost(c, log);
        });
        ASSERT_TRUE(is_lost) << where << "\n" << text;
        ++lost;
      }
    };
    for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1))
      for (const char byte : {' ', '\r', 'x', '"', '}'}) holds(at, byte);
    for (int change = 0; change < 60; ++change)
      holds(static_cast<std::size_t>(random.below(static_cast<int>(text.size()))),
            "fp0123456789x\n\""[random.below(15)]);
  }
  EXPECT_GT(lasting, 3000);
  EXPECT_LT(lost, lasting / 10);
}

TEST(Person, IsTheSameHoweverTheNameIsWritten) {
  for (const char* name : {"ÅSA EXAMPLE",
                           "\xC3\xA5sa\xC2\xA0"
                           "example",
                           "A\xCC\x8Asa Example",
                           "\xE2\x80\x8B"
                           "Åsa\xE2\x80\x8D Example ",
                           "Asa-Example", "Ａｓａ Example"})
    EXPECT_TRUE(maybeSamePerson("Åsa Example", name)) << name;
  EXPECT_FALSE(maybeSamePerson("Åsa Example", "Bo Example"));
  EXPECT_TRUE(maybeSamePerson("Штефан Пример", "ШТЕФАН  ПРИМЕР"));
  EXPECT_FALSE(maybeSamePerson("Штефан Пример", "Анна Пример"));
}

TEST(Person, IsRecordedWithOneBlankBetweenAndNothingUnseen) {
  EXPECT_EQ(nameOf("  Ada \t Example\n"), "Ada Example");
  EXPECT_EQ(nameOf("\xC2\xA0"
                   "Åsa\xC2\xA0\xE2\x80\x8B"
                   "Example\x01"),
            "Åsa Example");
  EXPECT_EQ(nameOf("d'Un-Exemple, 2."), "d'Un-Exemple, 2.");
  EXPECT_EQ(nameOf("علی\xE2\x80\x8Cرضا"), "علی\xE2\x80\x8Cرضا") << "letters that are not to join";
  for (const char* blank : {"", "  ", "\xC2\xA0", "\xE2\x80\x8B\xEF\xBB\xBF", "\x01\x7F", "...",
                            "\xE3\x85\xA4", "\xE2\xA0\x80", "Bo\xFF"})
    EXPECT_EQ(nameOf(blank), "") << blank;
}

TEST(Person, IsTheSameInDoubt) {
  EXPECT_TRUE(maybeSamePerson("Ada", ""));
  EXPECT_TRUE(maybeSamePerson("Ada", "..."));
  EXPECT_TRUE(maybeSamePerson("Ada", "Bo\xFF"));
  EXPECT_TRUE(maybeSamePerson("Müller", "M\uFFFDller")) << "as a record holds what was no UTF-8";
}

TEST(Person, WithAnUnseenBlankClosesNoFailureThatAnotherHasToClose) {
  const Records records = recordsOf({checkOf(1, Result::Fail, "Ada Example"), checkOf(2, Result::Pass,
                                                                                      "Ada\xC2\xA0"
                                                                                      "Example")});
  EXPECT_EQ(failedDevices(records, {.retest_by_another = true}, {kToday}).size(), 1u);
  EXPECT_TRUE(failedDevices(records, {}, {kToday}).empty());
}

}  // namespace
}  // namespace stopwalk::inspection
