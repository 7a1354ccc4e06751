// What does not do what it seems to, and is told on the command line.
#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"

namespace stopwalk::app {
namespace {

class RoundDoubts : public RoundCommand {};

TEST_F(RoundDoubts, WhatIsDueOfAPastDayIsNotKnown) {
  open();
  const Ran ran = round({"due", "--on", "2026-03-01"});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("--on 2026-03-01: that day is past"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("2026-03-02 or a day to come is expected"), std::string::npos) << ran.err;
}

TEST_F(RoundDoubts, WhatIsStillToBeDoneFallsDueToo) {
  open();
  record("cut-off", "not-accessible",
         {"--corrective", "clear it", "--owner", "Bo", "--fix-by", "2026-03-20"});
  EXPECT_NE(round({"due"}).out.find("; next on 2026-03-20\n"), std::string::npos) << round({"due"}).out;
  EXPECT_NE(round({"due", "--on", "2026-03-20"}).out.find("cut-off: clear it, by Bo, due 2026-03-20\n"),
            std::string::npos);
}

// What was to be done by then may have been done since.
TEST_F(RoundDoubts, AFailureIsCorrectedAfterItsDayHasGoneBy) {
  open();
  const std::vector<std::string> told = {"--corrective", "mend", "--owner", "Bo", "--fix-by", "2026-03-09"};
  ASSERT_EQ(record("saw/stop", "fail", told).exit, kDone);
  now = "2026-03-20T09:15:00+01:00";
  EXPECT_EQ(record("saw/stop", "fail", told).exit, kWrong) << "that is another failure";
  std::vector<std::string> correction = told;
  correction.insert(correction.end(), {"--corrects", "2"});
  const Ran ran = record("saw/stop", "fail", correction);
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  correction = {"--tagged-out-by", "Bo", "--tagged-out-until", "2026-03-01", "--corrects", "3"};
  const Ran before = record("saw/stop", "fail", correction);
  EXPECT_EQ(before.exit, kWrong);
  EXPECT_NE(before.err.find("--tagged-out-until 2026-03-01: that is before the check that is corrected"),
            std::string::npos)
      << before.err;
}

TEST_F(RoundDoubts, WhatDoesNotStayInHasNotPassedIfItsKindDoes) {
  open();
  const std::string before = log();
  const Ran ran = record("saw/stop", "pass", {"--check", "pressed=yes", "--check", "latches=no"});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_NE(ran.err.find("`latches=no` is a failure"), std::string::npos) << ran.err;
  EXPECT_EQ(log(), before);
}

TEST_F(RoundDoubts, APassThatClosesNothingSaysWhy) {
  write("ours.yaml", "stopwalk_profile: 1\nid: ours\ninspection: {retest_by_another: true}\n...\n");
  std::string text = shop();
  write("shop.layout.yaml", text.insert(text.find("\nunits:"), "\nprofile: ours.yaml"));
  open();
  record("saw/stop", "fail");
  now = "2026-03-04T09:15:00+01:00";
  record("saw/stop", "fail");
  const auto err = [&](const std::vector<std::string>& more) { return record("saw/stop", "pass", more).err; };
  EXPECT_EQ(
      err({"--by", "ADA example"}),
      "stopwalk: saw/stop is still failed: another person than Ada Example, who found it, is to pass it\n");
  EXPECT_EQ(err({"--by", "Cy", "--check", "seen=yes"}),
            "stopwalk: saw/stop is still failed: it was not pressed, or did not stay in, or what it stops "
            "did not stop or "
            "stay stopped\n");
  EXPECT_EQ(err({"--by", "Cy", "--corrects", "2"}),
            "stopwalk: saw/stop is still failed: a correction undoes no failure\n");
  std::string shown = round({"show"}).out;
  std::ranges::replace(shown, '\n', ' ');
  EXPECT_NE(shown.find("saw/stop: failed since 2026-03-02, and last on 2026-03-04 (3, Ada Example); failed "
                       "until it passes a check of its own, made by another person than Ada Example."),
            std::string::npos)
      << shown;
  const auto json = nlohmann::json::parse(round({"show", "--format", "json"}).out)["failed"][0];
  EXPECT_EQ(json["since"], "2026-03-02");
  EXPECT_EQ(json["on"], "2026-03-04");
  EXPECT_EQ(err({"--by", "Cy"}), "");
  EXPECT_NE(round({"show", "--device", "saw/stop"}).out.find("Nothing is open of saw/stop.\n"),
            std::string::npos);
}

// What failed by a line that cannot be read is not known.
TEST_F(RoundDoubts, NothingIsCalledGoodByRecordsOfWhichALineCannotBeRead) {
  open();
  record("saw/stop", "fail");
  std::string text = log();
  text.replace(text.find("\"device\""), 8, "\"devise\"");
  write("shop.inspections.jsonl", text);
  EXPECT_NE(round({"show"}).out.find("saw/stop: failed since"), std::string::npos) << "it is named";
  text.replace(text.find("saw/stop\",\"machines"), 8, "sxw/stop");
  write("shop.inspections.jsonl", text);
  const Ran audit = runProgram({"audit", path("shop.layout.yaml")});
  EXPECT_EQ(audit.out.find("no device is failed"), std::string::npos) << audit.out;
  EXPECT_NE(audit.out.find("no device is known to be failed"), std::string::npos) << audit.out;
  EXPECT_NE(audit.out.find("line 2"), std::string::npos) << audit.out;
  EXPECT_EQ(audit.err.find("no device is failed"), std::string::npos) << audit.err;
  EXPECT_EQ(round({"show"}).out.find("Nothing is open"), std::string::npos);
}

TEST_F(RoundDoubts, APassThatCountsForNothingIsShownSo) {
  open();
  record("saw/stop", "pass");
  record("cut-off", "fail");
  EXPECT_EQ(round({"show"}).out.find("counts for"), std::string::npos);
  std::string changed = log();
  changed.replace(changed.rfind("\"Ada"), 4, "\"Bea");
  write("shop.inspections.jsonl", changed);
  const std::string shown = round({"show", "--device", "saw/stop"}).out;
  EXPECT_NE(shown.find("counts for"), std::string::npos) << shown;
}

TEST_F(RoundDoubts, WhatNobodyCanReadMayHaveBeenAFailure) {
  open();
  record("saw/stop", "fail");
  EXPECT_EQ(round({"show"}).err, "");
  const std::string whole = log();
  std::string text = whole;
  text.replace(text.rfind("\"result\":\"fail"), 14, "\"result\"{\"fxil");
  write("shop.inspections.jsonl", text);
  EXPECT_NE(round({"due"}).out.find("saw/stop: failed"), std::string::npos)
      << "what it came to cannot be read: " << round({"due"}).out;
  write("shop.inspections.jsonl", whole.substr(0, whole.find('\n') + 1) + "what was here is gone\n");
  EXPECT_NE(round({"show"}).err.find("One line can no longer be read: it may have been a failure."),
            std::string::npos)
      << round({"show"}).err;
  EXPECT_NE(round({"due"}).out.find("it may have been a failure"), std::string::npos);
}

TEST_F(RoundDoubts, ADeviceThatTheRoundDoesNotListIsToldOf) {
  open();
  std::string text = shop();
  text.insert(text.find("phones:"),
              "  - {id: new, kind: room-cut-off, at: [3200, 0], faces: 90, stops: [shop]}\n");
  write("shop.layout.yaml", text);
  EXPECT_NE(record("new", "pass").err.find("round 1 does not list new: it is recorded there all the same"),
            std::string::npos);
  EXPECT_EQ(record("cut-off", "pass").err, "");
}

TEST_F(RoundDoubts, ADeviceThatIsRemovedIsTellable) {
  open();
  record("cut-off", "fail", {"--corrective", "mend", "--owner", "Bo", "--fix-by", "2026-03-02"});
  const std::string removed_not = record("cut-off", "not-tested", {"--removed"}).err;
  EXPECT_NE(removed_not.find("the layout has it"), std::string::npos) << removed_not;
  const std::string with = shop();
  std::string without = with;
  const std::size_t at = without.find("devices:\n  - {id: cut-off");
  without.erase(at, without.find("phones:") - at);
  write("shop.layout.yaml", without);
  const auto gone = [&] { return nlohmann::json::parse(round({"due", "--format", "json"}).out)["gone"]; };
  ASSERT_EQ(gone().size(), 1u);
  const std::string shown = round({"show"}).out;
  EXPECT_EQ(shown.find("cut-off: failed"), shown.rfind("cut-off: failed")) << "told once";
  EXPECT_NE(record("cut-off", "pass").err.find("the layout has it no more"), std::string::npos);
  EXPECT_EQ(record("cut-off", "pass", {"--removed"}).exit, kWrong);
  EXPECT_EQ(record("cut-out", "not-tested", {"--removed"}).exit, kWrong);
  const Ran ran = record("cut-off", "not-tested", {"--removed"});
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_EQ(nlohmann::json::parse(lastLine(log()))["removed"], true);
  EXPECT_EQ(gone(), nlohmann::json::array());
  EXPECT_EQ(round({"due"}).out.find("cut-off"), std::string::npos) << round({"due"}).out;
  EXPECT_NE(round({"show"}).out.find("Nothing is open."), std::string::npos) << round({"show"}).out;
  EXPECT_EQ(runProgram({"audit", layout}).err.find("cut-off"), std::string::npos);
  write("shop.layout.yaml", with);
  EXPECT_NE(round({"due"}).out.find("cut-off: failed on 2026-03-02"), std::string::npos)
      << "it is there again, and failed as before";
  EXPECT_NE(round({"due"}).out.find("cut-off: mend"), std::string::npos);
}

// Such as a new one in its place: what was tested was another.
TEST_F(RoundDoubts, WhatStandsUnderTheIdOfOneThatWasTakenAwayIsToBeTested) {
  open();
  ASSERT_EQ(record("cut-off", "pass").exit, kDone);
  const std::string with = shop();
  std::string without = with;
  const std::size_t at = without.find("devices:\n  - {id: cut-off");
  without.erase(at, without.find("phones:") - at);
  write("shop.layout.yaml", without);
  ASSERT_EQ(record("cut-off", "not-tested", {"--removed"}).exit, kDone);
  write("shop.layout.yaml", with);
  const auto due = [&] { return round({"due"}).out; };
  EXPECT_NE(
      due().find("cut-off: pressed, to be done again (overdue); check 2 of 2026-03-02 does not count: it "
                 "was made before the device was recorded as taken away\n"),
      std::string::npos)
      << due();
  ASSERT_EQ(record("cut-off", "pass").exit, kDone);
  EXPECT_EQ(due().find("cut-off: pressed"), std::string::npos) << due();
}

// As of one that only has another id now.
TEST_F(RoundDoubts, ThatADeviceWasRemovedByMistakeIsCorrectedWhereTheLayoutHasItNoMore) {
  open();
  record("cut-off", "fail");
  std::string without = shop();
  without.replace(without.find("id: cut-off"), 11, "id: cutoff2");
  write("shop.layout.yaml", without);
  ASSERT_EQ(record("cut-off", "not-tested", {"--removed"}).exit, kDone);
  const auto gone = [&](const char* command) {
    return nlohmann::json::parse(round({command, "--format", "json"}).out)["gone"].size();
  };
  EXPECT_EQ(gone("due"), 0u);
  EXPECT_EQ(record("cut-off", "pass", {"--corrects", "3"}).exit, kWrong) << "nobody can have pressed it";
  EXPECT_EQ(record("cut-off", "not-tested", {"--corrects", "2"}).exit, kWrong) << "that one is no removal";
  const std::string how = record("cut-off", "not-tested").err;
  EXPECT_NE(how.find("correct it with --result not-tested --corrects and its number"), std::string::npos)
      << how;
  const Ran ran = record("cut-off", "not-tested", {"--corrects", "3", "--note", "it has another id"});
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_EQ(gone("due"), 1u);
  EXPECT_EQ(gone("show"), 1u) << "and the list of the records says so too";
}

// A failure that is dated by the paper may be of any time until it was entered.
TEST_F(RoundDoubts, ADeviceIsRemovedNowInARoundFromPaperTooOrItIsToldThatItIsStillFailed) {
  ASSERT_EQ(round({"new", "--by", "Ada Example", "--at", "2026-03-01T08:00Z"}).exit, kDone);
  record("cut-off", "fail");
  std::string without = shop();
  const std::size_t at = without.find("devices:\n  - {id: cut-off");
  without.erase(at, without.find("phones:") - at);
  write("shop.layout.yaml", without);
  const auto removed = [&](std::vector<std::string> more) {
    more.push_back("--removed");
    return record("cut-off", "not-tested", more);
  };
  const Ran early = removed({"--at", "2026-03-01T08:00Z"});
  EXPECT_NE(early.err.find("cut-off still counts as failed: by the times given"), std::string::npos)
      << early.err;
  EXPECT_NE(early.err.find("after check 2"), std::string::npos) << early.err;
  const Ran correction = removed({"--corrects", "2"});
  EXPECT_NE(correction.err.find("still counts as failed: a correction undoes no failure"), std::string::npos)
      << correction.err;
  EXPECT_EQ(round({"show"}).out.find("Nothing is open."), std::string::npos);

  const Ran ran = removed({});
  EXPECT_EQ(ran.exit, kDone);
  EXPECT_EQ(ran.err, "");
  const auto last = nlohmann::json::parse(lastLine(log()));
  EXPECT_EQ(last["at"], now);
  EXPECT_FALSE(last.contains("entered"));
  EXPECT_NE(round({"show"}).out.find("Nothing is open."), std::string::npos) << round({"show"}).out;
}

// The log is moved away while a check is made.
TEST_F(RoundDoubts, NoLogIsBegunInPlaceOfTheOneThatWasRead) {
  open();
  const std::string file = path("shop.inspections.jsonl");
  std::istringstream in;
  std::ostringstream out, err;
  Console console{in, out, err};
  console.now = [&] {
    if (std::filesystem::exists(file)) std::filesystem::rename(file, file + ".away");
    return *inspection::parseMoment(now);
  };
  EXPECT_EQ(
      run({"round", "record", layout, "--round", "1", "--device", "saw/stop", "--result", "pass"}, console),
      kNoFile);
  EXPECT_NE(err.str().find("not recorded"), std::string::npos) << err.str();
  EXPECT_FALSE(std::filesystem::exists(file));
}

}  // namespace
}  // namespace stopwalk::app
