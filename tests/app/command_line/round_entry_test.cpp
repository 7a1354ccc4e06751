// Rounds and checks that are entered after they were walked, such as from paper.
#include <cstdlib>
#include <ctime>
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"

namespace stopwalk::app {
namespace {

// A clock of the place that is put forward and back; and gone with the test.
class OnAClock {
 public:
  explicit OnAClock(const char* zone) {
    ::setenv("TZ", zone, 1);
    ::tzset();
  }
  ~OnAClock() {
    ::unsetenv("TZ");
    ::tzset();
  }
};
// As in the middle of Europe, by POSIX rules: forward on the last Sunday of March, back on that of October.
constexpr const char* kEurope = "CET-1CEST,M3.5.0,M10.5.0/3";

class RoundEntry : public RoundCommand {
 protected:
  void refuses(const Ran& ran, const std::string& why) const {
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find(why), std::string::npos) << ran.err;
    EXPECT_EQ(ran.out, "");
  }
  nlohmann::json last() const { return nlohmann::json::parse(lastLine(log())); }
};

TEST_F(RoundEntry, SaysWhoInspectedWhenAndWhenItWasEntered) {
  const OnAClock clock(kEurope);
  ASSERT_EQ(round({"new", "--by", "Ada Example", "--at", "2026-03-01 08:00"}).exit, kDone);
  EXPECT_EQ(last()["at"], "2026-03-01T08:00:00+01:00");
  EXPECT_EQ(last()["entered"], now);
  const Ran ran = record("saw/stop", "pass", {"--by", "Cy Example", "--at", "2026-03-01 08:20"});
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_NE(ran.out.find("saw/stop, pass, of 2026-03-01T08:20:00+01:00; on the disk"), std::string::npos)
      << ran.out;
  EXPECT_EQ(last()["inspector"], "Cy Example");
  EXPECT_EQ(last()["at"], "2026-03-01T08:20:00+01:00");
  EXPECT_EQ(last()["entered"], now);
  EXPECT_NE(round({"show"}).out.find("entered on 2026-03-02"), std::string::npos);
}

TEST_F(RoundEntry, ACheckThatIsGivenNoTimeHasThatOfItsPaperRound) {
  ASSERT_EQ(round({"new", "--by", "Ada Example", "--at", "2026-03-01T08:00Z"}).exit, kDone);
  const Ran ran = record("saw/stop", "fail");
  EXPECT_EQ(ran.exit, kDone);
  EXPECT_NE(
      ran.err.find("round 1 was walked on paper: this check is dated 2026-03-01T08:00:00+00:00, when "
                   "that was begun, and entered now; it may have failed any time between; else say --at"),
      std::string::npos)
      << ran.err;
  EXPECT_EQ(last()["inspector"], "Ada Example");
  EXPECT_EQ(last()["at"], "2026-03-01T08:00:00+00:00");
  EXPECT_EQ(last()["entered"], now);
  ASSERT_EQ(record("saw/stop", "fail", {"--corrects", "2"}).exit, kDone);
  EXPECT_EQ(last()["at"], now);
  EXPECT_FALSE(last().contains("entered")) << "a correction says something else of the same time";
}

TEST_F(RoundEntry, ARoundThatWasNotWalkedOnPaperFillsNothingIn) {
  open();
  now = "2026-03-02T10:15:00+01:00";
  EXPECT_EQ(record("saw/stop", "pass").err, "");
  EXPECT_EQ(last()["at"], now);
  EXPECT_FALSE(last().contains("entered"));
}

// Made in Tokyo, and read the same minute where it is still the day before.
TEST_F(RoundEntry, APassOfTheSameMinuteCountsByWhateverClockItIsRead) {
  now = "2026-03-03T08:15:00+09:00";
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  now = "2026-03-02T23:15:00+00:00";
  EXPECT_EQ(record("saw/stop", "pass").err, "");
  now = "2026-03-03T08:15:30+09:00";
  EXPECT_EQ(record("saw/stop", "pass").err, "");
  now = "2026-03-02T23:15:30+00:00";
  for (const char* told : {"show", "due"}) {
    const Ran ran = round({told});
    EXPECT_EQ(ran.out.find("still to come"), std::string::npos) << ran.out;
    EXPECT_EQ(ran.out.find("is still failed"), std::string::npos) << ran.out;
  }
}

TEST_F(RoundEntry, APaperPassThatIsGivenNoTimeClosesNoFailureOfToday) {
  ASSERT_EQ(round({"new", "--by", "Ada", "--at", "2026-03-01T08:00Z"}).exit, kDone);
  ASSERT_EQ(record("saw/stop", "fail", {"--at", "2026-03-02 07:00Z"}).exit, kDone);
  const Ran ran = record("saw/stop", "pass");
  EXPECT_NE(
      ran.err.find("saw/stop is still failed: by the times given it is not sure that this was after check 2"),
      std::string::npos)
      << ran.err;
  EXPECT_NE(round({"show"}).out.find("leaves the failure open"), std::string::npos) << round({"show"}).out;
}

TEST_F(RoundEntry, RefusesWhatCannotBe) {
  const OnAClock clock(kEurope);
  refuses(round({"new", "--by", "Ada", "--at", "2026-03-02 09:16"}),
          "that is still to come: it is now " + now);
  refuses(round({"new", "--by", "Ada", "--at", "yesterday"}), "a day and a time as \"2026-03-02 09:15\"");
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
  open();
  const std::string before = log();
  refuses(record("saw/stop", "pass", {"--at", "2026-03-02 10:00"}), "that is still to come");
  refuses(record("saw/stop", "pass", {"--at", "2026-03-02T08:15:01Z"}), "that is still to come");
  refuses(record("saw/stop", "pass", {"--at", "2026-03-01 10:00"}),
          "that is before round 1 was begun, 2026-03-02T09:15:00+01:00: a round that was walked earlier is "
          "opened with "
          "stopwalk round new --at; nothing was recorded");
  refuses(record("saw/stop", "pass", {"--at", "2026-03-02"}), "a day and a time");
  refuses(record("saw/stop", "pass", {"--at", ""}), "--at");
  refuses(record("saw/stop", "pass", {"--by", " "}), "a name is expected");
  EXPECT_EQ(log(), before);
  EXPECT_EQ(record("saw/stop", "pass", {"--at", "2026-03-02 09:15"}).exit, kDone) << "just now";
}

TEST_F(RoundEntry, AsksForTheZoneWhereTheClockSaysTooLittle) {
  const OnAClock clock(kEurope);
  now = "2026-11-01T12:00:00+01:00";
  refuses(round({"new", "--by", "Ada", "--at", "2026-03-29 02:30"}), "put forward over that time");
  refuses(round({"new", "--by", "Ada", "--at", "2026-10-25 02:30"}),
          "twice; say which, as 2026-10-25T02:30:00+01:00 or 2026-10-25T02:30:00+02:00");
  EXPECT_EQ(round({"new", "--by", "Ada", "--at", "2026-10-25 02:30+02:00"}).exit, kDone);
  EXPECT_EQ(last()["at"], "2026-10-25T02:30:00+02:00");
  EXPECT_EQ(round({"new", "--by", "Ada", "--at", "2026-07-01 12:00"}).exit, kDone);
  EXPECT_EQ(last()["at"], "2026-07-01T12:00:00+02:00");
}

TEST_F(RoundEntry, APaperPassOfYesterdayLeavesTodaysFailureOpen) {
  ASSERT_EQ(round({"new", "--by", "Ada", "--at", "2026-03-01T08:00Z"}).exit, kDone);
  ASSERT_EQ(record("saw/stop", "fail", {"--at", "2026-03-02T08:00Z"}).exit, kDone);
  ASSERT_EQ(record("saw/stop", "pass", {"--at", "2026-03-01T08:30Z"}).exit, kDone);
  const auto failed = [&] {
    return nlohmann::json::parse(runProgram({"audit", layout, "--format", "json"}).out)["records"]["failed"];
  };
  EXPECT_EQ(failed(), nlohmann::json({"saw/stop"}));
  EXPECT_NE(round({"due"}).out.find("saw/stop: failed on 2026-03-02"), std::string::npos);
  now = "2026-03-03T09:15:00+01:00";
  ASSERT_EQ(record("saw/stop", "pass", {"--at", "2026-03-02T10:00+01:00"}).exit, kDone);
  EXPECT_EQ(failed(), nlohmann::json::array());
}

TEST_F(RoundEntry, AClockBehindTheLastRecordIsToldOf) {
  open();
  now = "2020-01-01T00:00:10+01:00";
  const Ran ran = record("saw/stop", "fail");
  EXPECT_EQ(ran.exit, kDone) << "it is recorded all the same";
  EXPECT_NE(
      ran.err.find(
          "is the clock of this computer right? It says 2020-01-01T00:00:10+01:00, and there is a record "
          "that was written at 2026-03-02T09:15:00+01:00"),
      std::string::npos)
      << ran.err;
  now = "2026-03-02T09:15:00+01:00";
  EXPECT_EQ(record("saw/stop", "not-tested").err, "");
}

}  // namespace
}  // namespace stopwalk::app
