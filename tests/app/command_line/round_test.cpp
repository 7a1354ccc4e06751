// Inspection rounds from the command line.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"

namespace stopwalk::app {
namespace {

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

TEST_F(RoundCommand, APassThatLeavesATestDueSaysForWantOfWhat) {
  open();
  const auto pass = [&](const std::vector<std::string>& said, std::vector<std::string> more = {}) {
    for (const std::string& check : said) more.insert(more.end(), {"--check", check});
    const Ran ran = record("saw/stop", "pass", more);
    EXPECT_EQ(ran.exit, kDone) << ran.err;
    return ran;
  };
  const std::string full = "The full test of saw/stop is still due, for want of ";
  EXPECT_TRUE(pass({"clear=yes", "pressed=no"})
                  .out.ends_with("\nThe test by hand of saw/stop is still due, for want of pressed (no)\n" +
                                 full +
                                 "legible, pressed-running, stays-stopped-when-released, "
                                 "stays-stopped-when-power-returns\n"));
  std::vector<std::string> all = {"seen=yes", "pressed=yes", "stays-stopped-when-released=yes",
                                  "stays-stopped-when-power-returns=yes"};
  const Ran one_missing = pass(all);
  EXPECT_TRUE(one_missing.out.ends_with("\n" + full + "pressed-running\n")) << one_missing.out;
  const Ran as_json = pass(all, {"--format", "json"});
  EXPECT_EQ(nlohmann::json::parse(as_json.out)["n"], 4);
  EXPECT_EQ(as_json.err, "stopwalk: " + full + "pressed-running\n");
  all.push_back("pressed-running=yes");
  EXPECT_EQ(pass(all).out.find("still due"), std::string::npos);
  EXPECT_EQ(pass({}).out.find("still due"), std::string::npos) << "not yet";
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
  told(record("saw/stp", "pass"), "there is no such device: did you mean `saw/stop` (Mushroom button)?");
  for (const char* number : {"-1", "0", "one", "1.5", "99999999999999999999"}) {
    const std::string expected =
        "the number of a round is expected, a whole one from 1, as stopwalk round show has "
        "it, not `" +
        std::string(number) + "`";
    told(round({"record", "--round", number, "--device", "saw/stop", "--result", "pass"}), expected);
    told(round({"show", "--round", number}), expected);
    told(round({"sheet", "--round", number, "--out", path("sheet.pdf")}), expected);
    told(record("saw/stop", "pass", {"--corrects", number}), "the number of a check is expected");
  }
  told(record("saw/stop", "passed"), "--result");
  told(record("saw/stop", "pass", {"--check", "prodded=yes"}), "NAME one of seen, clear, legible, pressed,");
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
  EXPECT_NE(round({"show"}).err.find(
                "jsonl:3: a record that was never finished, or cut or changed later, is left out"),
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

// It may have held a failure.
TEST_F(RoundCommand, OfAnEmptyLogTheAuditDoesNotSayThatNothingIsFailed) {
  write("shop.inspections.jsonl", "");
  const Ran ran = runProgram({"audit", layout});
  EXPECT_NE(ran.err.find("0 inspection records taken into account; no device is known to be failed"),
            std::string::npos)
      << ran.err;
  EXPECT_NE(ran.out.find("The file of inspection records is empty"), std::string::npos) << ran.out;
}

TEST_F(RoundCommand, AuditShowsTheNextStopOfOneThatFailed) {
  const auto audited = [&] { return runProgram({"audit", layout, "--format", "json"}); };
  EXPECT_EQ(audited().err.find("inspection record"), std::string::npos);
  EXPECT_FALSE(nlohmann::json::parse(audited().out).contains("records"));
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  const Ran ran = audited();
  EXPECT_NE(ran.err.find("2 inspection records taken into account; 1 device failed and not passed since"),
            std::string::npos)
      << ran.err;
  const auto json = nlohmann::json::parse(ran.out);
  EXPECT_EQ(json["records"]["failed"], nlohmann::json({"saw/stop"}));
  EXPECT_EQ(json["records"]["records"], 2);
  EXPECT_EQ(json["stations"][0]["id"], "saw/operator");
  EXPECT_EQ(json["stations"][0]["stop"]["device"], "cut-off");
  const auto& findings = json["findings"];
  const auto found = std::ranges::find(findings, "failed-check", [](const auto& f) { return f["rule"]; });
  ASSERT_NE(found, findings.end());
  EXPECT_EQ((*found)["subject"], "saw/stop");
  EXPECT_NE((*found)["text"].get<std::string>().find("2026-03-02"), std::string::npos);
  EXPECT_NE(runProgram({"audit", layout}).out.find("failed and not passed since: saw/stop"),
            std::string::npos);
  EXPECT_NE(runProgram({"measure", layout, "--from", "saw/stop", "--to", "cut-off"})
                .err.find("and has not passed since"),
            std::string::npos);

  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  EXPECT_EQ(nlohmann::json::parse(audited().out)["stations"][0]["stop"]["device"], "saw/stop");
}

TEST_F(RoundCommand, ANameHasLettersAndNothingUnseen) {
  for (const char* blank : {"\xC2\xA0", "\xE2\x80\x8B", "\x01", "Ada\nExample"}) {
    const Ran ran = round({"new", "--by", blank});
    EXPECT_EQ(ran.exit, kWrong) << blank;
    EXPECT_NE(ran.err.find("a name is expected"), std::string::npos) << ran.err;
  }
  ASSERT_EQ(round({"new", "--by", " Ada \xC2\xA0 Example "}).exit, kDone);
  EXPECT_EQ(nlohmann::json::parse(lastLine(log()))["by"], "Ada Example");
  ASSERT_EQ(record("saw/stop", "pass", {"--by", "Bo  Example", "--second", "Cy\tExample"}).exit, kDone);
  EXPECT_EQ(nlohmann::json::parse(lastLine(log()))["inspector"], "Bo Example");
  EXPECT_EQ(nlohmann::json::parse(lastLine(log()))["second"], "Cy Example");
}

// Kept when nothing was recorded yet, or of a log that was emptied since.
TEST_F(RoundCommand, AnEmptyLogIsHeldAgainstAHeadThatWasKept) {
  write("shop.inspections.jsonl", "");
  const std::string none(64, '0'), other(64, 'a');
  EXPECT_NE(round({"verify"}).out.find("it is empty: nothing was recorded yet"), std::string::npos);
  const Ran as_kept = round({"verify", "--head", none});
  EXPECT_EQ(as_kept.exit, kDone) << as_kept.out;
  const Ran gone = round({"verify", "--head", other});
  EXPECT_EQ(gone.exit, kFailed);
  EXPECT_NE(
      gone.out.find("jsonl:1: the log is empty: all that was recorded up to the head that was kept is gone"),
      std::string::npos)
      << gone.out;
  open();
  const Ran since = round({"verify", "--head", none});
  EXPECT_EQ(since.exit, kDone);
  EXPECT_NE(since.out.find("1 record since"), std::string::npos) << since.out;
}

// Of what is left of a line.
TEST_F(RoundCommand, AFailureWithoutATimeThatCanBeReadIsToldSo) {
  write("shop.inspections.jsonl", "{\"device\": \"saw/stop\", \"result\": \"fail\"}\n");
  EXPECT_NE(round({"due"}).out.find("saw/stop: failed on a day that cannot be read"), std::string::npos)
      << round({"due"}).out;
  const std::string shown = round({"show"}).out;
  EXPECT_NE(shown.find("failed since a day that cannot be read"), std::string::npos) << shown;
  EXPECT_EQ(shown.find("1970"), std::string::npos) << shown;
  const auto json = nlohmann::json::parse(round({"show", "--format", "json"}).out);
  EXPECT_TRUE(json["failed"][0]["on"].is_null());
  EXPECT_TRUE(json["checks"][0]["at"].is_null());
  EXPECT_EQ(runProgram({"audit", layout}).out.find("1970"), std::string::npos);
  open();
  const std::string line = log();
  write("shop.inspections.jsonl", line + "{\"device\": \"cut-off\", \"result\": \"fail\"}\n");
  EXPECT_NE(round({"due"}).out.find("cut-off: failed on a day that cannot be read"), std::string::npos)
      << "when the line before was written says nothing of it";
}

TEST_F(RoundCommand, ProfileSaysWhoMayCloseAFailureAndWhetherItCounts) {
  write("ours.yaml",
        "stopwalk_profile: 1\nid: ours\ninspection: {retest_by_another: true, failed_stops_count: "
        "true}\n...\n");
  std::string text = shop();
  write("shop.layout.yaml", text.insert(text.find("\nunits:"), "\nprofile: ours.yaml"));
  open();
  record("saw/stop", "fail");
  record("saw/stop", "pass");
  const auto json = nlohmann::json::parse(runProgram({"audit", layout, "--format", "json"}).out);
  EXPECT_EQ(json["records"]["failed"], nlohmann::json({"saw/stop"}));
  EXPECT_EQ(json["stations"][0]["stop"]["device"], "saw/stop");
}

TEST_F(RoundCommand, DueFollowsFromTheRecords) {
  EXPECT_EQ(round({"due"}).exit, kFailed) << "what was never recorded is overdue";
  open();
  for (const char* device : {"saw/stop", "cut-off"})
    ASSERT_EQ(record(device, "pass",
                     {"--check", "seen=yes", "--check", "pressed-running=yes", "--check",
                      "stays-stopped-when-released=yes", "--check", "stays-stopped-when-power-returns=yes"})
                  .exit,
              kDone);
  EXPECT_EQ(round({"due"}).out, "On 2026-03-02: 0 due, 0 of them overdue; next on 2026-04-02\n");
  EXPECT_EQ(round({"due", "--on", "2026-04-02"}).exit, kDone);
  const Ran late = round({"due", "--on", "2026-04-04"});
  EXPECT_EQ(late.exit, kFailed);
  EXPECT_NE(late.out.find("saw/stop: pressed, due 2026-04-02 (overdue by 2 days)\n"), std::string::npos)
      << late.out;
  const auto json = nlohmann::json::parse(round({"due", "--on", "2026-04-02", "--format", "json"}).out);
  EXPECT_EQ(json["due"].size(), 2u);
  EXPECT_EQ(json["due"][0]["overdue"], false);
  EXPECT_EQ(round({"due", "--on", "soon"}).exit, kWrong);
  EXPECT_EQ(round({"new", "--by", "Ada", "--due"}).exit, kFailed) << "nothing is due";
  now = "2026-04-02T09:15:00+02:00";
  EXPECT_EQ(round({"new", "--by", "Ada", "--due"}).exit, kDone);
}

TEST_F(RoundCommand, BundleHoldsThePeriod) {
  open();
  record("saw/stop", "fail", {"--corrective", "change it, all", "--owner", "Bo", "--second", "Cy Example"});
  now = "2026-05-02T09:15:00+02:00";
  record("saw/stop", "pass", {"--note", "later"});
  const std::string out = path("records.csv");
  const Ran ran = round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", out});
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  const std::string csv = textOf(out);
  EXPECT_NE(
      csv.find("check,2,1,2026-03-02T09:15:00+01:00,saw,saw/stop,shop,Ada Example; Cy Example,Ada Example,"),
      std::string::npos)
      << csv;
  EXPECT_NE(csv.find("\"change it, all\",Bo,"), std::string::npos);
  EXPECT_NE(csv.find("\r\naudit,"), std::string::npos);
  EXPECT_NE(csv.find(lastLine(round({"verify"}).out).substr(0, 64)), std::string::npos);
  EXPECT_EQ(csv.find("later"), std::string::npos);
  EXPECT_EQ(csv.find("open-action"), std::string::npos) << "the device has passed since";
  EXPECT_EQ(round({"bundle", "--from", "2026-03-31", "--to", "2026-03-01", "--out", out}).exit, kWrong);
  EXPECT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", path("a.txt")}).exit,
            kWrong);
}

// A pass that is still to come by the clock that is asked closes no failure, of an audit either.
TEST_F(RoundCommand, AuditAsksTheClockOfTheRounds) {
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  now = "2026-03-04T09:15:00+01:00";
  std::vector<std::string> passed = {"--by", "Ben Example"};
  for (const char* check : {"seen", "pressed", "pressed-running", "stays-stopped-when-released",
                            "stays-stopped-when-power-returns", "latches", "legible", "clear"})
    passed.insert(passed.end(), {"--check", std::string(check) + "=yes"});
  ASSERT_EQ(record("saw/stop", "pass", passed).exit, kDone);
  const auto told = [&] {
    std::istringstream in;
    std::ostringstream out, err;
    Console console{in, out, err};
    console.now = [this] { return *inspection::parseMoment(now); };
    run({"audit", layout}, console);
    return err.str();
  };
  EXPECT_NE(told().find("no device is failed"), std::string::npos) << told() << log();
  now = "2026-03-03T09:15:00+01:00";
  EXPECT_NE(told().find("1 device failed and not passed since"), std::string::npos) << told();
}

}  // namespace
}  // namespace stopwalk::app
