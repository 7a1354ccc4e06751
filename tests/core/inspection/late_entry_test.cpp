// Checks that were entered after they were made, such as from paper: the order of writing must not make a
// device good that is not.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/inspection/schedule.h"
#include "tests/support/random.h"

namespace stopwalk::inspection {
namespace {

const Date kDay = *parseDate("2026-03-02"), kLater = *parseDate("2030-01-01");
constexpr int kMinutesOfADay = 1440;

// So many minutes after midnight of that day in UTC, on a clock so far east.
Moment momentAt(int minute, int zone_min = 0) {
  const int local = minute + zone_min, day = local >= 0 ? local / kMinutesOfADay : -1;
  return {daysAfter(kDay, day), 60 * (local - day * kMinutesOfADay), zone_min};
}

struct Made {
  Check check;
  int made = 0, written = 0;  // seconds
};

Check checkOf(Result result, const std::string& by, int made, std::optional<int> entered = {}) {
  Check c;
  c.device = "saw/stop";
  c.inspector = by;
  c.result = result;
  c.at = momentAt(made);
  if (entered) c.entered = momentAt(*entered);
  return c;
}

Records logOf(std::vector<Check> checks) {
  Records records;
  for (Check& c : checks) {
    c.number = records.checks.size() + 1;
    records.checks.push_back(c);
  }
  return records;
}

bool isFailed(const std::vector<Check>& checks, const Schedule& schedule = {}) {
  return !failedDevices(logOf(checks), schedule, {kLater}).empty();
}

constexpr auto Pass = Result::Pass, Fail = Result::Fail;

TEST(LateEntry, APassOfYesterdayDoesNotCloseTheFailureOfToday) {
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 2000), checkOf(Pass, "Bo", 500, 2100)}));
  EXPECT_FALSE(isFailed({checkOf(Fail, "Ada", 2000), checkOf(Pass, "Bo", 2050, 2100)}));
}

// The clock was ahead when the pass was written, as the next line shows: when that was nobody knows.
TEST(LateEntry, APassOfAClockThatWasAheadClosesNothingThatWasEnteredLater) {
  EXPECT_FALSE(isFailed({checkOf(Pass, "Bo", 660), checkOf(Fail, "Ada", 600, 720)}));
  EXPECT_TRUE(isFailed(
      {checkOf(Pass, "Bo", 660), checkOf(Result::NotTested, "Bo", 570), checkOf(Fail, "Ada", 600, 720)}));
}

TEST(LateEntry, ARoundThatIsOpenedBearsWitnessOfTheClockToo) {
  Records records = logOf({checkOf(Pass, "Bo", 610), checkOf(Fail, "Ada", 605, 612)});
  EXPECT_TRUE(failedDevices(records, {}, {kLater}).empty());
  records.checks[1].number = 3;
  Round round;
  round.number = 2;
  round.at = momentAt(500);
  round.entered = momentAt(608);
  records.rounds = {round};
  EXPECT_EQ(failedDevices(records, {}, {kLater}).size(), 1u) << "the clock was ahead";
  Records back = logOf({checkOf(Pass, "Bo", 600), checkOf(Fail, "Ada", 500), checkOf(Pass, "Bo", 550, 700)});
  EXPECT_EQ(failedDevices(back, {}, {kLater}).size(), 1u) << "the clock went back";
  back.checks.erase(back.checks.begin());
  EXPECT_TRUE(failedDevices(back, {}, {kLater}).empty());
  round.number = 1;
  round.at = momentAt(600);
  round.entered.reset();
  back.rounds = {round};
  EXPECT_EQ(failedDevices(back, {}, {kLater}).size(), 1u);
}

TEST(LateEntry, AFailureOfYesterdayIsClosedByTodaysPassAndNoEarlierOne) {
  EXPECT_FALSE(isFailed({checkOf(Pass, "Bo", 2000), checkOf(Fail, "Ada", 500, 2100)}));
  EXPECT_TRUE(isFailed({checkOf(Pass, "Bo", 400), checkOf(Fail, "Ada", 500, 2100)}));
}

TEST(LateEntry, OfTheSameMinuteTheFailureStands) {
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 500, 900), checkOf(Pass, "Bo", 500, 901)}));
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 500), checkOf(Pass, "Bo", 500, 900)}));
  EXPECT_FALSE(isFailed({checkOf(Fail, "Ada", 500), checkOf(Pass, "Bo", 500)}))
      << "written as they were made";
}

Moment secondsOn(Moment at, int seconds) {
  at.second += seconds;
  return at;
}

// People write down minutes, the program seconds.
TEST(LateEntry, ATypedTimeIsOfItsWholeMinute) {
  Check at_once = checkOf(Pass, "Bo", 555);
  at_once.at = secondsOn(at_once.at, 30);
  EXPECT_TRUE(isFailed({at_once, checkOf(Fail, "Ada", 555, 600)}));
  EXPECT_FALSE(isFailed({at_once, checkOf(Fail, "Ada", 554, 600)}));
  Check to_the_second = checkOf(Fail, "Ada", 555, 600);
  to_the_second.at = secondsOn(to_the_second.at, 29);
  EXPECT_FALSE(isFailed({at_once, to_the_second}));
  Check failed = checkOf(Fail, "Ada", 555);
  failed.at = secondsOn(failed.at, 30);
  EXPECT_TRUE(isFailed({failed, checkOf(Pass, "Bo", 555, 600)}));
  EXPECT_FALSE(isFailed({failed, checkOf(Pass, "Bo", 556, 600)}));
  EXPECT_FALSE(isFailed({checkOf(Fail, "Ada", 555, 600), checkOf(Pass, "Bo", 556, 600)}));
}

// With round 1, begun at `begun`, before the checks.
bool isFailedIn(int begun, std::optional<int> entered, const std::vector<Check>& checks) {
  Records records = logOf(checks);
  Round round;
  round.number = 1;
  round.at = momentAt(begun);
  if (entered) round.entered = momentAt(*entered);
  records.rounds = {round};
  for (Check& c : records.checks) ++c.number, c.round = 1;
  return !failedDevices(records, {}, {kLater}).empty();
}

// The round was begun at 480 and entered from 485 on; when the stop failed in it nobody wrote down.
TEST(LateEntry, AFailureWithTheTimeOfItsPaperRoundIsOfAnyTimeUntilItsEntering) {
  EXPECT_TRUE(isFailedIn(480, 485, {checkOf(Pass, "Bo", 510), checkOf(Fail, "Ada", 480, 660)}));
  EXPECT_TRUE(isFailedIn(480, 485, {checkOf(Fail, "Ada", 480, 660), checkOf(Pass, "Bo", 510, 700)}));
  EXPECT_FALSE(isFailedIn(480, 485, {checkOf(Fail, "Ada", 480, 660), checkOf(Pass, "Bo", 661, 700)}));
  EXPECT_FALSE(isFailedIn(480, 485, {checkOf(Fail, "Ada", 480, 660), checkOf(Pass, "Bo", 670)}));
  EXPECT_FALSE(isFailedIn(480, 485, {checkOf(Pass, "Bo", 510), checkOf(Fail, "Ada", 481, 660)}))
      << "it has a time of its own";
  EXPECT_FALSE(isFailedIn(480, {}, {checkOf(Pass, "Bo", 510), checkOf(Fail, "Ada", 480, 660)}))
      << "of a round that was not walked on paper nothing is filled in";
}

TEST(LateEntry, APassWithTheTimeOfItsPaperRoundIsOfItsBeginning) {
  EXPECT_TRUE(isFailedIn(480, 485, {checkOf(Fail, "Ada", 500), checkOf(Pass, "Bo", 480, 660)}));
  EXPECT_FALSE(isFailedIn(480, 485, {checkOf(Fail, "Ada", 470, 486), checkOf(Pass, "Bo", 480, 660)}));
}

// Whether the line of the round said so is not known then.
TEST(LateEntry, OfARoundWhoseLineIsInDoubtAnyTimeMayBeFilledIn) {
  Records records =
      logOf({checkOf(Fail, "Ada", 470, 480), checkOf(Pass, "Bo", 510), checkOf(Fail, "Ada", 480, 660)});
  for (Check& c : records.checks) c.round = 1;
  EXPECT_TRUE(failedDevices(records, {}, {kLater}).empty());
  records.unsure_to = 1;
  EXPECT_EQ(failedDevices(records, {}, {kLater}).size(), 1u);
}

TEST(LateEntry, ZonesAreComparedByTheInstant) {
  Check pass = checkOf(Pass, "Bo", 0, 3000);
  pass.at = *parseMoment("2026-03-02T12:30:00+02:00");  // half past ten in UTC
  Check fail = checkOf(Fail, "Ada", 0);
  fail.at = *parseMoment("2026-03-02T11:00:00+00:00");
  EXPECT_TRUE(isFailed({fail, pass}));
  pass.at = *parseMoment("2026-03-02T09:30:00-02:00");
  EXPECT_FALSE(isFailed({fail, pass}));
}

// A clock that ran ahead, or whose battery is empty.
TEST(LateEntry, WrongClockClosesNothing) {
  const int next_year = 365 * kMinutesOfADay;
  EXPECT_TRUE(isFailed({checkOf(Pass, "Bo", next_year), checkOf(Fail, "Ada", 500)}));
  EXPECT_TRUE(isFailed({checkOf(Pass, "Bo", next_year), checkOf(Fail, "Ada", 500, 900)}));
  EXPECT_TRUE(
      isFailed({checkOf(Pass, "Bo", 400), checkOf(Fail, "Ada", -next_year), checkOf(Pass, "Bo", 600, 900)}))
      << "nobody knows when it failed";
  EXPECT_FALSE(
      isFailed({checkOf(Pass, "Bo", 400), checkOf(Fail, "Ada", -next_year), checkOf(Pass, "Bo", 900)}));
  EXPECT_FALSE(isFailed({checkOf(Fail, "Ada", next_year), checkOf(Pass, "Bo", 900)}));
}

TEST(LateEntry, ACorrectionMovesAPassBackOnlyAndAFailureOnOnly) {
  Check earlier = checkOf(Pass, "Bo", 500, 3000);
  earlier.corrects = 2;
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 1000), checkOf(Pass, "Bo", 1500, 2000), earlier}));
  Check later = checkOf(Pass, "Bo", 1500, 3000);
  later.corrects = 2;
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 1000), checkOf(Pass, "Bo", 500, 2000), later}))
      << "a pass that came later is a check of its own";
  Check fail = checkOf(Fail, "Ada", 1800, 3000);
  fail.corrects = 1;
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 1000), checkOf(Pass, "Bo", 1500), fail}));
  fail.entered.reset();  // only says something else
  EXPECT_FALSE(isFailed({checkOf(Fail, "Ada", 1000), checkOf(Pass, "Bo", 1500), fail}));
}

TEST(LateEntry, EachFailureAsksForAnotherThanItsOwnFinder) {
  const Schedule another{.retest_by_another = true};
  EXPECT_TRUE(
      isFailed({checkOf(Fail, "Ada", 100), checkOf(Fail, "Bo", 200), checkOf(Pass, "Ada", 300)}, another));
  EXPECT_FALSE(
      isFailed({checkOf(Fail, "Ada", 100), checkOf(Fail, "Bo", 200), checkOf(Pass, "Cy", 300)}, another));
  Check by_ada = checkOf(Pass, "Ada", 400);
  by_ada.corrects = 2;
  EXPECT_TRUE(isFailed({checkOf(Fail, "Ada", 100), checkOf(Pass, "Bo", 200), by_ada}, another))
      << "whoever found it says now that it passed";
}

TEST(LateEntry, TheLastPassAndTheDueDatesAreOfTheTimeOfTheCheck) {
  const auto states = statesOf(logOf({checkOf(Pass, "Ada", 3 * kMinutesOfADay),
                                      checkOf(Pass, "Bo", 1 * kMinutesOfADay, 4 * kMinutesOfADay)}),
                               {}, {kLater});
  EXPECT_EQ(states[0].last, 1u);
  EXPECT_EQ(states[0].pressed, daysAfter(kDay, 3));
}

TEST(LateEntry, ACorrectionThatGivesAnotherTimeMakesNothingDueLater) {
  for (const int corrected : {1, 5}) {
    Check correction = checkOf(Pass, "Ada", corrected * kMinutesOfADay, 9 * kMinutesOfADay);
    correction.corrects = 1;
    const auto states = statesOf(logOf({checkOf(Pass, "Ada", 3 * kMinutesOfADay), correction}), {}, {kLater});
    EXPECT_EQ(states[0].pressed, daysAfter(kDay, std::min(corrected, 3)));
  }
}

TEST(LateEntry, AnActionIsDoneByALaterPassOnly) {
  Check fail = checkOf(Fail, "Ada", 1000);
  fail.corrective = Corrective{"change the contact block", "Bo", {}};
  EXPECT_EQ(openActions(logOf({fail, checkOf(Pass, "Bo", 500, 2000)}), {kLater}).size(), 1u);
  EXPECT_TRUE(openActions(logOf({fail, checkOf(Pass, "Bo", 1500, 2000)}), {kLater}).empty());
  fail.entered = momentAt(3000);
  EXPECT_TRUE(openActions(logOf({checkOf(Pass, "Bo", 1500), fail}), {kLater}).empty());
}

// What happened, in its order, and in what order it was written down.
class History {
 public:
  // `close`: many within one minute; else no two.
  explicit History(std::uint64_t seed, bool close = false) : random_(seed) {
    int second = 0;
    const int count = 2 + random_.below(14);
    for (int i = 0; i < count; ++i) {
      second += close ? 1 + random_.below(40) : 60 * (1 + random_.below(900));
      made_.push_back(next(close ? second : second - second % 60 + random_.below(60)));
    }
  }

  // As if each had been written when it was made.
  Records told() const {
    std::vector<Check> checks;
    for (Made m : made_) {
      m.check.entered.reset();
      m.check.at = secondsOn(m.check.at, m.made % 60 - m.check.at.second % 60);
      checks.push_back(m.check);
    }
    return logOf(checks);
  }
  Records written() const {
    std::vector<Made> made = made_;
    std::ranges::stable_sort(made, {}, &Made::written);
    std::vector<Check> checks;
    for (const Made& m : made) checks.push_back(m.check);
    return logOf(checks);
  }
  const std::vector<Made>& made() const { return made_; }
  support::Random& random() { return random_; }

 private:
  Made next(int second) {
    static const std::vector<std::string> people = {"Ada", "Bo", "Cy"};
    const auto result =
        std::vector{Pass, Pass, Fail, Result::NotTested}[static_cast<std::size_t>(random_.below(4))];
    const int minute = second / 60;
    Made m{checkOf(result, people[static_cast<std::size_t>(random_.below(3))], minute), second, second};
    m.check.device = random_.chance(0.5) ? "saw/stop" : "lathe/bar";
    m.check.at = momentAt(minute, 15 * (random_.below(97) - 48));
    m.check.note = std::to_string(second);  // by which it is found again
    if (random_.chance(0.2)) m.check.tested = {{Tried::Seen, true}};
    if (random_.chance(0.3)) m.check.corrective = Corrective{"mend it", "Bo", {}};
    if (random_.chance(0.5)) {
      m.written = second + 60 * (1 + random_.below(8000));
      m.check.entered = secondsOn(momentAt(m.written / 60), m.written % 60);
    } else {
      m.check.at = secondsOn(m.check.at, second % 60);
    }
    return m;
  }

  support::Random random_;
  std::vector<Made> made_;
};

// What the records come to, each check called by its note.
std::string comesTo(const Records& records, const Schedule& schedule) {
  const auto noteOf = [&](std::size_t number) { return records.findCheck(number)->note; };
  const auto dayOf = [](std::optional<Date> day) { return day ? dateText(*day) : "never"; };
  std::string text;
  for (const DeviceState& s : statesOf(records, schedule, {kLater})) {
    text += s.device + ": last " + noteOf(*s.last) + ", seen " + dayOf(s.seen) + ", pressed " +
            dayOf(s.pressed) + ", in full " + dayOf(s.in_full);
    if (s.failed)
      text += ", failed " + noteOf(s.failed->check) + " by " + s.failed->found_by + " on " +
              dateText(s.failed->on);
    text += "\n";
  }
  std::set<std::string> open;
  for (const Check* c : openActions(records, {kLater})) open.insert(c->note);
  for (const std::string& note : open) text += "open " + note + "\n";
  return text;
}

// By the plain rule, from what happened in its order.
std::set<std::string> failedInTruth(const std::vector<Made>& made, const Schedule& schedule) {
  std::map<std::string, std::set<std::string>> finders;  // of each failure that is still open
  for (const Made& m : made) {
    std::set<std::string>& open = finders[m.check.device];
    if (m.check.result == Fail) open.insert(m.check.inspector);
    if (!passedPressed(m.check)) continue;
    std::erase_if(
        open, [&](const std::string& by) { return !schedule.retest_by_another || by != m.check.inspector; });
  }
  std::set<std::string> failed;
  for (const auto& [device, open] : finders)
    if (!open.empty()) failed.insert(device);
  return failed;
}

std::set<std::string> failedIn(const Records& records, const Schedule& schedule) {
  std::set<std::string> failed;
  for (const FailedDevice& f : failedDevices(records, schedule, {kLater})) failed.insert(f.device);
  return failed;
}

class LateEntries : public testing::TestWithParam<bool> {
 protected:
  const Schedule schedule_{.retest_by_another = GetParam()};
  static constexpr std::uint64_t kHistories = 20'000;
};

TEST_P(LateEntries, ComeToTheSameInWhateverOrderTheyAreWritten) {
  for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
    const History history(seed);
    ASSERT_EQ(comesTo(history.written(), schedule_), comesTo(history.told(), schedule_)) << "seed " << seed;
    ASSERT_EQ(failedIn(history.written(), schedule_), failedInTruth(history.made(), schedule_))
        << "seed " << seed;
  }
}

// Of those within one minute it is not always known which came first.
TEST_P(LateEntries, WithinAMinuteNoDeviceIsTakenForGoodThatIsNot) {
  int differ = 0;
  for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
    const History history(seed, true);
    const auto failed = failedIn(history.written(), schedule_),
               truly = failedInTruth(history.made(), schedule_);
    ASSERT_TRUE(std::ranges::includes(failed, truly)) << "seed " << seed;
    differ += failed != truly;
    ASSERT_EQ(failedIn(history.told(), schedule_), truly) << "seed " << seed;
  }
  EXPECT_GT(differ, 100);
}

TEST_P(LateEntries, APassThatIsNotLaterThanTheFailureNeverClosesIt) {
  int tried = 0;
  for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
    History history(seed);
    Records records = history.written();
    const auto before = failedDevices(records, schedule_, {kLater});
    if (before.empty()) continue;
    ++tried;
    const FailedDevice& failed =
        before[static_cast<std::size_t>(history.random().below(static_cast<int>(before.size())))];
    const Check failure = *records.findCheck(failed.check);
    Check pass = checkOf(Pass, "Dee", 0, 1'000'000);
    pass.device = failed.device;
    pass.number = records.checks.size() + 1;
    pass.at = momentAt(std::stoi(failure.note) / 60 - history.random().below(3000));
    records.checks.push_back(pass);
    auto after = failedDevices(records, schedule_, {kLater});
    ASSERT_EQ(after.size(), before.size()) << "seed " << seed;
    for (std::size_t i = 0; i < after.size(); ++i) {
      EXPECT_GE(after[i].since, before[i].since) << "it may close a failure before that";
      after[i].since = before[i].since;
    }
    ASSERT_EQ(after, before) << "seed " << seed;
  }
  EXPECT_GT(tried, 5'000);
}

// Whatever the clock of the computer says, what is written as it is made is in order; and paper closes
// nothing that it cannot be sure of.
TEST_P(LateEntries, UnderAWrongClockNoDeviceIsTakenForGoodByWhatWasWrittenAtOnce) {
  for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
    History history(seed);
    Records records = history.told();
    for (Check& c : records.checks)
      if (history.random().chance(0.5)) c.at = momentAt(history.random().below(1'000'000));
    ASSERT_EQ(failedIn(records, schedule_), failedInTruth(history.made(), schedule_)) << "seed " << seed;
  }
}

TEST_P(LateEntries, OfAnotherDeviceChangeNothing) {
  for (std::uint64_t seed = 1; seed <= 2'000; ++seed) {
    History history(seed);
    Records records = history.written();
    const auto before = failedIn(records, schedule_);
    Check other = checkOf(Pass, "Dee", history.random().below(9'000), 1'000'000);
    other.device = "drill/stop";
    other.number = records.checks.size() + 1;
    records.checks.push_back(other);
    ASSERT_EQ(failedIn(records, schedule_), before) << "seed " << seed;
  }
}

INSTANTIATE_TEST_SUITE_P(Either, LateEntries, testing::Bool(),
                         [](const auto& p) { return p.param ? "RetestByAnother" : "RetestByAnybody"; });

}  // namespace
}  // namespace stopwalk::inspection
