// A guarded start stops nothing: it is looked at, and never pressed.
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"
#include "tests/app/poster/pdf_words.h"

namespace stopwalk::app {
namespace {

class RoundLookedAt : public RoundCommand {
 protected:
  RoundLookedAt() {
    std::string text = shop();
    const std::string stop = "      - {id: stop, ";
    text.insert(text.find(stop), "      - {id: start, kind: guarded-start, at: [300, -400], pin: fitted}\n");
    write("shop.layout.yaml", text);
    open();
  }
  std::vector<std::string> dueOf(const std::string& device) const {
    std::vector<std::string> what;
    const auto json = nlohmann::json::parse(round({"due", "--format", "json"}).out);
    for (const auto& due : json["due"])
      if (due["device"] == device) what.push_back(due["what"]);
    return what;
  }
  void refuses(const std::vector<std::string>& more, const std::string& why,
               const std::string& result = "pass") const {
    const std::string before = log();
    const Ran ran = record("saw/start", result, more);
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find(why), std::string::npos) << ran.err;
    EXPECT_EQ(log(), before);
  }
};

TEST_F(RoundLookedAt, IsDueToBeSeenAndTakesNoOtherTest) {
  EXPECT_EQ(dueOf("saw/start"), std::vector<std::string>{"seen"});
  EXPECT_EQ(dueOf("saw/stop"), (std::vector<std::string>{"pressed", "full"}));
  for (const char* test : {"pressed", "pressed-running", "latches", "stays-stopped-when-released"})
    refuses({"--check", std::string(test) + "=yes"},
            "--check " + std::string(test) +
                ": saw/start stops nothing and is only looked at: record it with --check seen=yes");
  refuses({"--check", "pressed=yes"},
          "is only looked at: say what is not so with --check clear=no or --check legible=no, all else with "
          "--note",
          "fail");
  refuses({"--check", "pressed=yes"}, "is only looked at: leave that out", "not-tested");
  refuses({"--check", "legible=no"}, "`legible=no` is a failure: record it with --result fail");
  refuses({"--check", "clear=yes"}, "it is not said that all was looked at");
  refuses({"--run-down", "2.5"}, "--run-down: saw/start stops nothing");
  refuses({"--check", "seen=no"}, "`seen=no` says that it was not looked at");
  EXPECT_EQ(record("saw/start", "pass", {"--check", "seen=yes"}).exit, kDone);
  EXPECT_TRUE(dueOf("saw/start").empty());
}

// Whichever is nearest, and so that nobody takes it for a stop.
TEST_F(RoundLookedAt, IsOfferedWithItsKindBesideTheStopThatMayBeMeant) {
  const std::string both =
      "there is no such device: did you mean `saw/start` (Guarded start with pin) or `saw/stop` (Mushroom "
      "button)?";
  EXPECT_NE(record("saw/stat", "pass").err.find(both), std::string::npos) << record("saw/stat", "pass").err;
  EXPECT_NE(round({"show", "--device", "saw/stat"}).err.find(both), std::string::npos);
  EXPECT_NE(record("lathe/bar", "pass").err.find("no such device; known are"), std::string::npos);
}

// So that it is no press if that id is a stop one day.
TEST_F(RoundLookedAt, APassSaysThatItWasSeenAlsoWhereThatIsLeftOut) {
  ASSERT_EQ(record("saw/start", "pass").exit, kDone);
  EXPECT_NE(log().find(R"("tested":{"seen":true})"), std::string::npos) << log();
}

TEST_F(RoundLookedAt, PassesAgainOnceItIsSeenToBeWhole) {
  ASSERT_EQ(record("saw/start", "fail", {"--note", "pin missing"}).exit, kDone);
  EXPECT_EQ(dueOf("saw/start"), (std::vector<std::string>{"retest", "seen"}));
  const Ran ran = record("saw/start", "pass", {"--check", "seen=yes"});
  EXPECT_EQ(ran.err, "");
  EXPECT_TRUE(dueOf("saw/start").empty());
  const Ran audit = runProgram({"audit", layout});
  EXPECT_NE(audit.err.find("no device is failed"), std::string::npos) << audit.err;
}

TEST_F(RoundLookedAt, AFailureSaysWhatWasSeenToBeNotSo) {
  for (const char* not_so : {"clear=no", "legible=no", "seen=yes"})
    EXPECT_EQ(record("saw/start", "fail", {"--check", not_so}).exit, kDone) << not_so;
  EXPECT_EQ(record("saw/start", "pass", {"--check", "clear=yes", "--check", "legible=yes"}).exit, kDone);
  EXPECT_TRUE(dueOf("saw/start").empty());
}

// The layout no longer says what it was: the records do.
TEST_F(RoundLookedAt, StaysPassedOnceItIsTakenOffThePlan) {
  ASSERT_EQ(record("saw/start", "fail").exit, kDone);
  ASSERT_EQ(record("saw/start", "pass", {"--check", "seen=yes"}).exit, kDone);
  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  EXPECT_EQ(nlohmann::json::parse(lastLine(log())).count("no_stop"), 0u) << "only written where it is so";
  const std::string with = textOf(layout);
  write("shop.layout.yaml", shop());
  const auto shown = nlohmann::json::parse(round({"show", "--format", "json"}).out);
  EXPECT_EQ(shown["failed"].size(), 0u);
  EXPECT_EQ(shown["checks"][0]["no_stop"], true);
  EXPECT_EQ(runProgram({"audit", layout}).err.find("saw/start"), std::string::npos);
  EXPECT_EQ(round({"verify"}).exit, kDone);
  std::string as_stop = with;
  as_stop.replace(as_stop.find("kind: guarded-start"), 19, "kind: mushroom-button");
  as_stop.replace(as_stop.find(", pin: fitted"), 13, "");
  write("shop.layout.yaml", as_stop);
  EXPECT_EQ(dueOf("saw/start"), (std::vector<std::string>{"retest", "pressed", "full"}))
      << "a stop is pressed, whatever was written";
}

TEST_F(RoundLookedAt, ThatItWasNoStopIsSaidOfItWhenItIsTakenAwayToo) {
  ASSERT_EQ(record("saw/start", "fail").exit, kDone);
  write("shop.layout.yaml", shop());
  EXPECT_EQ(nlohmann::json::parse(round({"due", "--format", "json"}).out)["gone"].size(), 1u);
  ASSERT_EQ(record("saw/start", "not-tested", {"--removed"}).exit, kDone);
  EXPECT_EQ(nlohmann::json::parse(lastLine(log()))["no_stop"], true);
}

TEST_F(RoundLookedAt, HasOneBoxOnThePaperAndNothingToTime) {
  const std::string out = path("round.pdf");
  ASSERT_EQ(round({"sheet", "--out", out}).exit, kDone);
  const QString text = poster::textOfPdf(QString::fromStdString(out)).simplified();
  EXPECT_EQ(text.count("In its place, with its pin if it has one"), 1) << text.toStdString();
  EXPECT_EQ(text.count("Pressed, and it worked"), 2) << "of the stop and the cut-off";
  EXPECT_EQ(text.count("Run-down, seconds"), 2);
}

}  // namespace
}  // namespace stopwalk::app
