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
  int made = 0, written = 0;  // minutes
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
  return !failedDevices(logOf(checks), schedule, kLater).empty();
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
  EXPECT_EQ(openActions(logOf({fail, checkOf(Pass, "Bo", 500, 2000)}), kLater).size(), 1u);
  EXPECT_TRUE(openActions(logOf({fail, checkOf(Pass, "Bo", 1500, 2000)}), kLater).empty());
  fail.entered = momentAt(3000);
  EXPECT_TRUE(openActions(logOf({checkOf(Pass, "Bo", 1500), fail}), kLater).empty());
}

// What happened, in its order, and in what order it was written down.
class History {
 public:
  explicit History(std::uint64_t seed) : random_(seed) {
    int minute = 0;
    const int count = 2 + random_.below(14);
    for (int i = 0; i < count; ++i) made_.push_back(next(minute += 1 + random_.below(900)));
  }

  // As if each had been written when it was made.
  Records told() const {
    std::vector<Check> checks;
    for (Made m : made_) {
      m.check.entered.reset();
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
  Made next(int minute) {
    static const std::vector<std::string> people = {"Ada", "Bo", "Cy"};
    const auto result =
        std::vector{Pass, Pass, Fail, Result::NotTested}[static_cast<std::size_t>(random_.below(4))];
    Made m{checkOf(result, people[static_cast<std::size_t>(random_.below(3))], minute), minute, minute};
    m.check.device = random_.chance(0.5) ? "saw/stop" : "lathe/bar";
    m.check.at = momentAt(minute, 15 * (random_.below(97) - 48));
    m.check.note = std::to_string(minute);  // by which it is found again
    if (random_.chance(0.2)) m.check.tested = {{Tried::Seen, true}};
    if (random_.chance(0.3)) m.check.corrective = Corrective{"mend it", "Bo", {}};
    if (random_.chance(0.5)) {
      m.written = minute + 1 + random_.below(8000);
      m.check.entered = momentAt(m.written);
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
  for (const Check* c : openActions(records, kLater)) open.insert(c->note);
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
  for (const FailedDevice& f : failedDevices(records, schedule, kLater)) failed.insert(f.device);
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

TEST_P(LateEntries, APassThatIsNotLaterThanTheFailureNeverClosesIt) {
  int tried = 0;
  for (std::uint64_t seed = 1; seed <= kHistories; ++seed) {
    History history(seed);
    Records records = history.written();
    const auto before = failedDevices(records, schedule_, kLater);
    if (before.empty()) continue;
    ++tried;
    const FailedDevice& failed =
        before[static_cast<std::size_t>(history.random().below(static_cast<int>(before.size())))];
    const Check failure = *records.findCheck(failed.check);
    Check pass = checkOf(Pass, "Dee", 0, 1'000'000);
    pass.device = failed.device;
    pass.number = records.checks.size() + 1;
    pass.at = momentAt(std::stoi(failure.note) - history.random().below(3000));
    records.checks.push_back(pass);
    ASSERT_EQ(failedDevices(records, schedule_, kLater), before) << "seed " << seed;
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
