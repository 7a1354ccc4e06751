// What would come of a check is what comes of it once it is recorded.
#include "core/inspection/on_record.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace stopwalk::inspection {
namespace {

constexpr int kChecks = 14;
const Date kFirst = *parseDate("2026-03-02");

// Few devices, people, machines and times, so that much comes together. Not all that may be wrong is.
class AnyChecks {
 public:
  explicit AnyChecks(std::uint64_t seed) : random_(seed) {}

  std::size_t below(std::size_t n) { return static_cast<std::size_t>(random_() % n); }
  bool once(std::size_t in) { return below(in) == 0; }
  // Around the day it is written.
  Moment moment(int day) {
    return {daysAfter(kFirst, day + (once(5) ? static_cast<int>(below(9)) - 4 : 0)),
            static_cast<int>(below(4)) * 3600, 60};
  }
  Check next(const Records& records, int day) {
    Check c;
    const std::size_t last = records.checks.empty() ? 0 : records.checks.back().number;
    c.number = std::max(last, records.unsure_to) + 1;
    c.round = 0;
    c.device = once(3) ? "saw/bar" : "saw/stop";
    c.machines = once(4) ? std::vector<std::string>{} : std::vector<std::string>{"saw"};
    c.inspector = once(2) ? "Ada Example" : once(4) ? "A. Example" : "Bo Sample";
    c.at = moment(day);
    if (once(3)) c.entered = moment(day);
    c.result = once(2) ? Result::Pass : kResults[below(kResults.size())];
    for (const Tried test : kTried)
      if (!once(4)) c.tested.emplace_back(test, !once(9));
    c.removed = c.result == Result::NotTested && once(2);
    c.is_undated = c.result == Result::Fail && once(6);
    c.no_stop = once(9);
    if (c.result != Result::Pass && once(3)) c.corrective = Corrective{"mend it", "Cy Invented", {}};
    if (!records.checks.empty() && once(4)) {
      const Check& old = records.checks[below(records.checks.size())];
      c.corrects = old.number;
      c.device = old.device;
    }
    return c;
  }

 private:
  std::mt19937_64 random_;
};

TEST(IfRecorded, IsWhatComesOfItOnceItIsRecorded) {
  std::size_t counted = 0, shorted = 0, changed = 0;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    AnyChecks any(seed);
    Schedule schedule;
    schedule.retest_by_another = any.once(2);
    AsOf as_of{Now(Moment{daysAfter(kFirst, kChecks)})};
    if (!any.once(4)) as_of.devices.push_back({"saw/stop", {"saw"}, !any.once(4), !any.once(5)});
    if (!any.once(4)) as_of.devices.push_back({"saw/bar", {"saw", "lathe"}});
    Records records;
    const std::size_t unsure_to = any.once(4) ? any.below(kChecks) : 0;
    for (int i = 0; i < kChecks; ++i) {
      // At times of a last line that is not read.
      const std::size_t last = records.checks.empty() ? 0 : records.checks.back().number;
      records.unsure_to = std::min(unsure_to, last + (any.once(3) ? 1 : 0));
      const Check check = any.next(records, i);
      const IfRecorded told = OnRecord(records, schedule, as_of).ifRecorded(check);
      const auto states_before = statesOf(records, schedule, as_of);
      const DeviceState* before = findState(states_before, check.device);
      ASSERT_TRUE(!before || told.before == *before) << seed << " " << i;
      records.checks.push_back(check);
      const auto states = statesOf(records, schedule, as_of);
      ASSERT_EQ(told.after, *findState(states, check.device)) << seed << " " << i;
      const auto passes = passesShort(records, schedule, as_of);
      const ShortOfPass* short_of = findShort(passes, check);
      ASSERT_EQ(told.short_of, short_of ? std::optional(*short_of) : std::nullopt) << seed << " " << i;
      const auto isCounted = [&](Due::What what, const std::optional<Date>& was,
                                 const std::optional<Date>& is) {
        const bool counts = std::ranges::find(told.counts, what) != told.counts.end();
        return counts ? check.result == Result::Pass && is && *is >= told.on : check.corrects || is <= was;
      };
      ASSERT_TRUE(isCounted(Due::What::Pressed, told.before.pressed, told.after.pressed)) << seed << " " << i;
      ASSERT_TRUE(isCounted(Due::What::Full, told.before.in_full, told.after.in_full)) << seed << " " << i;
      ASSERT_TRUE(isCounted(Due::What::Seen, told.before.seen, told.after.seen)) << seed << " " << i;
      counted += !told.counts.empty(), shorted += short_of != nullptr;
      changed += told.before.failed != told.after.failed;
    }
  }
  EXPECT_GT(counted, 500u);
  EXPECT_GT(shorted, 500u);
  EXPECT_GT(changed, 500u);
}

TEST(IfRecorded, OfNobodyItIsNotSaidThatAnotherMustPassIt) {
  Records records;
  Check fail;
  fail.number = 1, fail.device = "saw/stop", fail.machines = {"saw"}, fail.inspector = "Ada Example";
  fail.at = {kFirst, 3600, 60}, fail.result = Result::Fail;
  records.checks = {fail};
  Check pass = fail;
  pass.at.second += 60, pass.result = Result::Pass, pass.tested = {{Tried::Pressed, true}};
  const OnRecord on_record(records, {.retest_by_another = true}, {Now(pass.at), {{"saw/stop", {"saw"}}}});
  EXPECT_EQ(on_record.ifRecorded(pass).short_of->left_open, LeftOpen::SamePerson);
  pass.inspector = "";
  EXPECT_FALSE(on_record.ifRecorded(pass).after.failed);
  pass.inspector = "Bo Sample";
  EXPECT_FALSE(on_record.ifRecorded(pass).after.failed);
}

}  // namespace
}  // namespace stopwalk::inspection
