// Inspection rounds from the command line.
#include <nlohmann/json.hpp>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

constexpr int kDone = 0, kFailed = 1, kWrong = 2, kNoFile = 3;

class RoundCommand : public InFolder {
 protected:
  // Runs `round` on the sample shop, on a day that the test chooses.
  Ran round(std::vector<std::string> args) const {
    std::istringstream in;
    std::ostringstream out, err;
    args.insert(args.begin(), "round");
    args.insert(args.begin() + 2, layout);
    Console console{in, out, err};
    console.now = [this] { return *inspection::parseMoment(now); };
    const int exit = run(args, console);
    return {exit, out.str(), err.str()};
  }
  Ran record(const std::string& device, const std::string& result, std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"record", "--round", "1", "--device", device, "--result", result};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  void open() const { ASSERT_EQ(round({"new", "--by", "Ada Example"}).exit, kDone); }
  std::string log() const { return textOf(path("shop.inspections.jsonl")); }

  std::string layout = write("shop.layout.yaml", shop());
  std::string now = "2026-03-02T09:15:00+01:00";
};

std::string lastLine(const std::string& text) {
  const std::size_t at = text.rfind('\n', text.size() - 2);
  return text.substr(at == std::string::npos ? 0 : at + 1);
}

TEST_F(RoundCommand, CheckIsRecordedShownAndVerified) {
  const Ran opened = round({"new", "--by", "Ada Example"});
  EXPECT_EQ(opened.exit, kDone) << opened.err;
  EXPECT_EQ(lastLine(opened.out), "1\n");
  const Ran recorded = record("saw/stop", "pass", {"--run-down", "2.4,2.6", "--second", "Bo Example"});
  EXPECT_EQ(recorded.exit, kDone) << recorded.err;
  EXPECT_NE(recorded.out.find("Recorded as 2: saw/stop, pass, run-down 2.5 s (mean of 2)"), std::string::npos)
      << recorded.out;

  const Ran shown = round({"show"});
  EXPECT_EQ(shown.exit, kDone);
  EXPECT_NE(shown.out.find("1 of 2 devices checked"), std::string::npos) << shown.out;
  EXPECT_NE(shown.out.find("Bo Example"), std::string::npos) << shown.out;
  const Ran verified = round({"verify"});
  EXPECT_EQ(verified.exit, kDone);
  EXPECT_TRUE(lastLine(verified.out).ends_with(" 2\n")) << verified.out;
  EXPECT_EQ(round({"verify", "--head", lastLine(verified.out).substr(0, 64)}).exit, kDone);
}

TEST_F(RoundCommand, RecordHoldsWhatIsKnownOfTheDay) {
  open();
  ASSERT_EQ(record("saw/stop", "fail",
                   {"--note", "does not latch", "--check", "latches=no", "--action", "locked off",
                    "--corrective", "change it", "--owner", "Bo", "--fix-by", "2026-03-09"})
                .exit,
            kDone);
  const auto json = nlohmann::json::parse(lastLine(log()));
  EXPECT_EQ(json["device"], "saw/stop");
  EXPECT_EQ(json["machines"], nlohmann::json({"saw"}));
  EXPECT_EQ(json["room"], "shop");
  EXPECT_EQ(json["at"], now);
  EXPECT_EQ(json["inspector"], "Ada Example");
  EXPECT_EQ(json["tested"], nlohmann::json({{"latches", false}}));
  EXPECT_EQ(json["result"], "fail");
  EXPECT_EQ(json["action"], "locked off");
  EXPECT_EQ(json["corrective"],
            nlohmann::json({{"what", "change it"}, {"owner", "Bo"}, {"due", "2026-03-09"}}));
  EXPECT_EQ(json["layout"]["revision"], 4);
  EXPECT_EQ(json["layout"]["sha256"].get<std::string>().size(), 64u);
}

TEST_F(RoundCommand, JsonIsOneObject) {
  const auto opened = nlohmann::json::parse(round({"new", "--by", "Ada", "--format", "json"}).out);
  EXPECT_EQ(opened["n"], 1);
  std::vector<std::string> json = {"--format", "json"};
  EXPECT_EQ(nlohmann::json::parse(record("saw/stop", "fail", json).out)["n"], 2);
  const auto shown = nlohmann::json::parse(round({"show", "--format", "json"}).out);
  EXPECT_EQ(shown["rounds"].size(), 1u);
  EXPECT_EQ(shown["checks"][0]["result"], "fail");
  EXPECT_EQ(shown["failed"][0]["device"], "saw/stop");
  const auto verified = nlohmann::json::parse(round({"verify", "--format", "json"}).out);
  EXPECT_EQ(verified["records"], 2);
  EXPECT_EQ(verified["unchanged"], true);
}

TEST_F(RoundCommand, WrongInputIsToldAndRecordsNothing) {
  const auto told = [&](const Ran& ran, const std::string& what) {
    EXPECT_EQ(ran.exit, kWrong) << what;
    EXPECT_NE(ran.err.find(what), std::string::npos) << ran.err;
    EXPECT_EQ(ran.out, "");
  };
  told(record("saw/stop", "pass"), "there is no round yet: open one with stopwalk round new");
  told(round({"new", "--by", " "}), "a name is expected");
  told(round({"new", "--by", "Ada", "--room", "shp"}), "there is no such room: did you mean `shop`?");
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
  open();
  const std::string before = log();
  told(round({"record", "--round", "7", "--device", "saw/stop", "--result", "pass"}), "the last is 1");
  told(record("saw/stp", "pass"), "there is no such device: did you mean `saw/stop`?");
  told(record("saw/stop", "passed"), "--result");
  told(record("saw/stop", "pass", {"--check", "prodded=yes"}), "NAME one of seen, pressed,");
  told(record("saw/stop", "pass", {"--check", "seen"}), "yes or no is expected");
  told(record("saw/stop", "pass", {"--check", "seen=yes", "--check", "seen=no"}), "said twice");
  told(record("saw/stop", "pass", {"--check", "stays-stopped-when-released=no"}),
       "record it with --result fail");
  for (const char* run_down : {"-1", "two", "nan", "inf", "1e9", "2.4,,2.5"})
    told(record("saw/stop", "pass", {"--run-down=" + std::string(run_down)}), "--run-down");
  told(record("saw/stop", "fail", {"--owner", "Bo"}), "say with --corrective");
  told(record("saw/stop", "fail", {"--corrective", "mend"}), "say with --owner");
  told(record("saw/stop", "fail", {"--corrective", "mend", "--owner", "Bo", "--fix-by", "2026-02-30"}),
       "a date as 2026-03-02 is expected");
  told(record("saw/stop", "pass", {"--corrects", "1"}), "there is no check of that number");
  EXPECT_EQ(log(), before);
}

TEST_F(RoundCommand, CorrectionTakesThePlaceOfACheckOfTheSameDeviceOnce) {
  open();
  ASSERT_EQ(record("saw/stop", "not-tested").exit, kDone);
  EXPECT_EQ(record("cut-off", "pass", {"--corrects", "2"}).exit, kWrong);
  EXPECT_EQ(record("saw/stop", "pass", {"--corrects", "2"}).exit, kDone);
  EXPECT_NE(record("saw/stop", "pass", {"--corrects", "2"}).err.find("corrected already, by 3"),
            std::string::npos);
  EXPECT_NE(round({"show"}).out.find("corrected by 3"), std::string::npos);
}

TEST_F(RoundCommand, FirstLineThatWasChangedIsNamed) {
  open();
  record("saw/stop", "fail");
  record("cut-off", "pass");
  std::string text = log();
  text.replace(text.find("\"fail\""), 6, "\"pass\"");
  write("shop.inspections.jsonl", text);
  const Ran ran = round({"verify"});
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_NE(ran.out.find("shop.inspections.jsonl:2: it was changed after it was written"), std::string::npos)
      << ran.out;
  EXPECT_NE(round({"show"}).err.find("jsonl:2: it was changed"), std::string::npos);
  EXPECT_EQ(record("saw/stop", "pass").exit, kDone) << "people go on recording";
}

TEST_F(RoundCommand, CutEndIsFoundWithTheHead) {
  open();
  record("saw/stop", "fail");
  const std::string head = lastLine(round({"verify"}).out).substr(0, 64);
  write("shop.inspections.jsonl", log().substr(0, log().find('\n') + 1));
  EXPECT_EQ(round({"verify"}).exit, kDone);
  const Ran ran = round({"verify", "--head", head});
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_NE(ran.out.find("jsonl:2: no line has the head hash that was kept"), std::string::npos) << ran.out;
}

TEST_F(RoundCommand, TornLineIsPutAsideByTheNextRecord) {
  open();
  record("saw/stop", "pass");
  const std::string whole = log(), torn = "{\"stopwalk_inspections\":1,\"n\":3,\"befo";
  write("shop.inspections.jsonl", whole + torn);
  EXPECT_EQ(round({"verify"}).exit, kFailed);
  EXPECT_NE(round({"show"}).err.find("jsonl:3: a record that was never finished is left out"),
            std::string::npos);
  const Ran ran = record("cut-off", "pass");
  EXPECT_EQ(ran.exit, kDone);
  EXPECT_NE(ran.err.find("is kept in "), std::string::npos) << ran.err;
  EXPECT_EQ(textOf(path("shop.inspections.jsonl.torn")), torn + "\n");
  EXPECT_TRUE(log().starts_with(whole));
  EXPECT_EQ(round({"verify"}).exit, kDone);
}

TEST_F(RoundCommand, StandardInputHasNoRecords) {
  const Ran ran = runProgram({"round", "show", "-"}, shop());
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_NE(ran.err.find("records stand beside a layout file"), std::string::npos);
}

TEST_F(RoundCommand, NoRecordsToVerifyIsToldAsNoFile) {
  EXPECT_EQ(round({"verify"}).exit, kNoFile);
  EXPECT_EQ(round({"show"}).exit, kDone);
}

}  // namespace
}  // namespace stopwalk::app
