// How rounds and sheets are walked, what is said of their order, and of what no way leads to.
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"
#include "tests/app/poster/pdf_words.h"

namespace stopwalk::app {
namespace {

// The sample in which a bench stands before one device, and a door is locked after hours.
class RoundWalk : public RoundCommand {
 protected:
  RoundWalk() {
    write("shop.layout.yaml", textOf(STOPWALK_SOURCE_DIR "/sample-layouts/tram-depot.layout.yaml"));
  }

  Ran open(std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"new", "--by", "Ada Example"};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  nlohmann::json opened(std::vector<std::string> more = {}) const {
    more.insert(more.end(), {"--format", "json"});
    return nlohmann::json::parse(open(more).out);
  }
  Ran sheet(std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"sheet", "--out", out};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  bool has(const std::string& what) const {
    return poster::textOfPdf(QString::fromStdString(out)).simplified().toStdString().find(what) !=
           std::string::npos;
  }
  nlohmann::json recorded() const { return nlohmann::json::parse(lastLine(log())); }

  const std::string out = path("round.pdf");
};

bool tells(const Ran& ran, const std::string& what) {
  return ran.out.find(what) != std::string::npos;
}

TEST_F(RoundWalk, ANewRoundSaysItsGapAndWhatNoWayLeadsTo) {
  const Ran ran = open();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_TRUE(tells(ran, "The walk is ")) << ran.out;
  EXPECT_TRUE(tells(ran, ", doors as in opening hours. No order is shorter by more than ")) << ran.out;
  EXPECT_TRUE(tells(ran, "Not on the walk: cnc-isolator: ")) << ran.out;
  EXPECT_EQ(lastLine(ran.out), "1\n");
  const auto json = opened();
  const auto& order = json["order"];
  EXPECT_LE(order["bound_m"], order["length_m"]);
  EXPECT_FALSE(order["shortest"]);
  ASSERT_EQ(order["left_out"].size(), 1u);
  EXPECT_EQ(order["left_out"][0]["id"], "cnc-isolator");
  EXPECT_EQ(json["devices"].back(), "cnc-isolator");
  EXPECT_FALSE(recorded().contains("walk")) << "the usual walk is not written down";
}

TEST_F(RoundWalk, OfFewDevicesNoOrderIsShorter) {
  const Ran ran = open({"--room", "smithy"});
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_TRUE(tells(ran, "No order is shorter.\n")) << ran.out;
}

TEST_F(RoundWalk, IsWalkedAsItIsAskedForAndThatIsRecorded) {
  const auto usual = opened();
  const auto json = opened({"--start", "lathe-1/operator", "--closed", "--hours", "after"});
  EXPECT_EQ(json["order"]["stops"][0]["id"], "lathe-1/operator");
  EXPECT_EQ(json["order"]["hours"], "after");
  EXPECT_GT(json["order"]["back_m"], 0);
  EXPECT_EQ(json["devices"].size(), usual["devices"].size()) << "where it begins is no device of it";
  const nlohmann::json how = {{"hours", "after"}, {"start", "lathe-1/operator"}, {"closed", true}};
  EXPECT_EQ(recorded()["walk"], how);
  EXPECT_EQ(json["walk"], how);
  EXPECT_GT(json["order"]["left_out"].size(), usual["order"]["left_out"].size())
      << "the door to the smithy is locked by night";
  const auto shown = nlohmann::json::parse(round({"show", "--format", "json"}).out);
  EXPECT_EQ(shown["rounds"][1]["walk"], how);
  EXPECT_EQ(round({"verify"}).exit, kDone);
}

TEST_F(RoundWalk, AWrongStartOpensNoRoundAndMakesNoSheet) {
  for (const Ran& ran : {open({"--start", "lathe-1/operater"}), sheet({"--start", "lathe-1/operater"})}) {
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find("--start lathe-1/operater: there is no such place: did you mean"),
              std::string::npos)
        << ran.err;
  }
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
  EXPECT_EQ(sheet({"--start", "cnc-isolator"}).exit, kWrong) << "nobody can stand there";
}

TEST_F(RoundWalk, TheSheetSaysTheSameAndNamesTheDeviceThatNoWayLeadsTo) {
  const Ran ran = sheet();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_TRUE(tells(ran, "Sheet of ") && tells(ran, " pages, written to " + out + "\n")) << ran.out;
  EXPECT_TRUE(tells(ran, "No order is shorter by more than ")) << ran.out;
  EXPECT_TRUE(tells(ran, "Not on the walk: cnc-isolator: ")) << ran.out;
  EXPECT_TRUE(has("doors as in opening hours. No order is shorter by more than"));
  EXPECT_TRUE(has("On the plan no way leads to: "));
  EXPECT_TRUE(has("no way leads here."));
  ASSERT_EQ(sheet({"--start", "lathe-1/operator", "--closed", "--hours", "after"}).exit, kDone);
  EXPECT_TRUE(has("doors as after hours. It begins at lathe-1/operator. It leads back to where it began."));
}

TEST_F(RoundWalk, TheSheetOfARoundIsWalkedAsTheRoundAndSaysIfThePlanIsAnother) {
  ASSERT_EQ(open({"--hours", "after", "--closed"}).exit, kDone);
  ASSERT_EQ(sheet({"--round", "1"}).exit, kDone);
  EXPECT_TRUE(has("doors as after hours. It leads back to where it began. No order is shorter"));
  EXPECT_EQ(sheet({"--round", "1", "--closed"}).exit, kWrong);
  std::string moved = textOf(layout);
  const std::string id = "id: cnc-isolator, kind: isolator, at: [14000, 2000]";
  ASSERT_NE(moved.find(id), std::string::npos);
  moved.replace(moved.find(id), id.size(), "id: isolator-2, kind: isolator, at: [14000, 2000]");
  write("shop.layout.yaml", moved);
  const Ran ran = sheet({"--round", "1"});
  ASSERT_EQ(ran.exit, kDone);
  EXPECT_TRUE(has("The order is that of the round: on the plan as it is now another may be shorter."));
  EXPECT_TRUE(tells(ran, "The order is that of the round")) << ran.out;
}

TEST_F(RoundWalk, WhatIsWrittenIsToldInASentenceOrAsJson) {
  const auto json = nlohmann::json::parse(sheet({"--room", "smithy", "--format", "json"}).out);
  EXPECT_EQ(json["file"], out);
  EXPECT_EQ(json["of"], "smithy");
  EXPECT_GE(json["pages"], 1);
  EXPECT_TRUE(json["order"]["shortest"]);
  const Ran piped = round({"sheet", "--room", "smithy", "--out", "-"});
  EXPECT_TRUE(piped.out.starts_with("%PDF") && !tells(piped, "written to")) << "nothing but the sheet";
  ASSERT_EQ(open().exit, kDone);
  ASSERT_EQ(record("cnc-isolator", "fail").exit, kDone);
  const std::vector<std::string> args = {"bundle",     "--from", "2026-03-01", "--to",
                                         "2026-03-31", "--out",  path("r.csv")};
  EXPECT_EQ(
      round(args).out,
      "Bundle of 2026-03-01 to 2026-03-31: 1 round, 1 check; failed and open now: 1, still to be done: 0. "
      "Written to " +
          path("r.csv") + "\n");
  auto as_json = args;
  as_json.insert(as_json.end(), {"--format", "json"});
  const auto bundle = nlohmann::json::parse(round(as_json).out);
  EXPECT_EQ(bundle["checks"], 1);
  EXPECT_EQ(bundle["failed"], 1);
  EXPECT_EQ(bundle["file"], path("r.csv"));
}

// Machine, date, people and inspector.
TEST_F(RoundWalk, ARowOfABundleOfWhatFailedHasTheFourFields) {
  ASSERT_EQ(open().exit, kDone);
  ASSERT_EQ(record("cnc-isolator", "fail", {"--second", "Bo Example"}).exit, kDone);
  now = "2026-05-02T09:15:00+02:00";  // the check is of no such period
  ASSERT_EQ(round({"bundle", "--from", "2026-05-01", "--to", "2026-05-31", "--out", path("r.csv")}).exit,
            kDone);
  const std::string csv = textOf(path("r.csv"));
  const std::string head = csv.substr(0, csv.find_first_of("\r\n"));
  EXPECT_TRUE(head.starts_with("kind,number,round,date,machine,device,room,people,inspector,")) << head;
  EXPECT_NE(csv.find("failed,2,,2026-03-02,cnc-mill,cnc-isolator,"), std::string::npos) << csv;
  EXPECT_NE(csv.find(",Ada Example; Bo Example,Ada Example,"), std::string::npos) << csv;
}

}  // namespace
}  // namespace stopwalk::app
