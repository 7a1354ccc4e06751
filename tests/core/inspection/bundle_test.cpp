// What of a period goes to an insurer.
#include "core/inspection/bundle.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace stopwalk::inspection {
namespace {

Moment momentOn(const char* day, int second = 0) {
  return {*parseDate(day), second, 0};
}

class BundleOf : public testing::Test {
 protected:
  Check& check(const char* day, Result result, const std::string& device = "saw/stop") {
    Check c;
    c.number = ++number_;
    c.round = 1;
    c.device = device;
    c.at = momentOn(day);
    c.inspector = "Ada";
    c.result = result;
    records.checks.push_back(c);
    return records.checks.back();
  }
  void round(const char* day) {
    records.rounds.push_back(Round{++number_, momentOn(day), "Ada", "all", {"saw/stop"}, {}});
  }
  Bundle march() const {
    return bundleOf(records, {}, *parseDate("2026-03-01"), *parseDate("2026-03-31"),
                    {*parseDate("2026-12-31")});
  }
  static std::vector<std::size_t> numbersOf(const std::vector<Check>& checks) {
    std::vector<std::size_t> numbers;
    for (const Check& c : checks) numbers.push_back(c.number);
    return numbers;
  }
  using Numbers = std::vector<std::size_t>;

  Records records;

 private:
  std::size_t number_ = 0;
};

TEST_F(BundleOf, HoldsBothDaysAndNothingBeyond) {
  round("2026-02-28");
  check("2026-02-28", Result::Pass);
  round("2026-03-01");
  check("2026-03-01", Result::Pass);
  check("2026-03-31", Result::Pass).at.second = 86'399;
  check("2026-04-01", Result::Pass);
  const Bundle bundle = march();
  ASSERT_EQ(bundle.rounds.size(), 1u);
  EXPECT_EQ(bundle.rounds[0].number, 3u);
  EXPECT_EQ(numbersOf(bundle.checks), (Numbers{4, 5}));
  EXPECT_EQ(bundle.corrected_by, (Numbers{0, 0}));
}

TEST_F(BundleOf, IsEmptyWhereNothingWasDone) {
  const Bundle bundle = march();
  EXPECT_TRUE(bundle.rounds.empty() && bundle.checks.empty() && bundle.failed.empty() &&
              bundle.open_actions.empty());
}

TEST_F(BundleOf, FollowsCorrectionsWheneverTheyWereWritten) {
  check("2026-03-02", Result::Pass);
  check("2026-04-02", Result::Pass);
  check("2026-05-02", Result::Fail).corrects = 1;
  check("2026-06-02", Result::Fail).corrects = 3;
  const Bundle bundle = march();
  EXPECT_EQ(numbersOf(bundle.checks), (Numbers{1, 3, 4}));
  EXPECT_EQ(bundle.corrected_by, (Numbers{3, 4, 0}));
}

// The time of a correction that gives none is that of its writing, which is no time of a check.
TEST_F(BundleOf, ACorrectionIsOfThePeriodOfWhatItCorrects) {
  check("2026-02-02", Result::Pass);
  check("2026-03-02", Result::Fail).corrects = 1;
  EXPECT_EQ(numbersOf(march().checks), Numbers{});
}

TEST_F(BundleOf, GoesByTheTimeOfTheCheckAndNotOfItsWriting) {
  check("2026-03-31", Result::Pass).entered = momentOn("2026-04-02");
  check("2026-02-28", Result::Pass).entered = momentOn("2026-03-02");
  EXPECT_EQ(numbersOf(march().checks), Numbers{1});
}

// Nobody knows that it is not of the period.
TEST_F(BundleOf, HoldsWhatHasNoReadableTimeInEachPeriod) {
  check("2026-02-02", Result::Pass);
  check("1970-01-01", Result::Fail).is_undated = true;
  check("2026-04-02", Result::Fail).is_undated = true;
  const Bundle bundle = march();
  EXPECT_EQ(numbersOf(bundle.checks), (Numbers{2, 3}));
  EXPECT_EQ(timeText(bundle.checks[0]), "no readable time");
  EXPECT_EQ(bundle.failed.at(0).since, kUnreadDay);
  EXPECT_EQ(statesOf(records, {}, {*parseDate("2026-12-31")}).at(0).last_on, kUnreadDay);
}

TEST_F(BundleOf, ACorrectionMaySayWhenThatWas) {
  check("1970-01-01", Result::Fail).is_undated = true;
  Check& correction = check("2026-02-03", Result::Fail);
  correction.corrects = 1;
  correction.entered = momentOn("2026-05-02");
  EXPECT_EQ(numbersOf(march().checks), Numbers{});
  correction.at = momentOn("2026-03-03");
  EXPECT_EQ(numbersOf(march().checks), (Numbers{1, 2}));
}

TEST_F(BundleOf, OfTwoFailuresOfOneLineEachIsItsOwn) {
  check("2026-03-02", Result::Fail);
  check("2026-03-02", Result::Fail, "lathe/bar").inspector = "Bo";
  records.checks[1].number = records.checks[0].number;
  const Bundle bundle = march();
  ASSERT_EQ(bundle.failed.size(), 2u);
  EXPECT_EQ(bundle.failures.at({1, "saw/stop"}).inspector, "Ada");
  EXPECT_EQ(bundle.failures.at({1, "lathe/bar"}).inspector, "Bo");
}

TEST_F(BundleOf, TellsWhatIsOpenNowWheneverItWasFound) {
  check("2026-02-02", Result::Fail).corrective = Corrective{"mend it", "Bo", {}};
  check("2026-03-02", Result::Fail, "lathe/bar");
  check("2026-04-02", Result::Pass, "lathe/bar");
  check("2026-05-02", Result::Fail, "drill/stop");
  const Bundle bundle = march();
  EXPECT_EQ(numbersOf(bundle.checks), Numbers{2});
  ASSERT_EQ(bundle.failed.size(), 2u);
  EXPECT_EQ(bundle.failed[0].device, "drill/stop");
  EXPECT_EQ(bundle.failed[1].device, "saw/stop");
  EXPECT_EQ(numbersOf(bundle.open_actions), Numbers{1});
}

}  // namespace
}  // namespace stopwalk::inspection
