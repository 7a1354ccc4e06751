// The inspection walk from the command line.
#include <nlohmann/json.hpp>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

const std::string kDepot = STOPWALK_SOURCE_DIR "/sample-layouts/tram-depot.layout.yaml";

nlohmann::json walkOf(std::vector<std::string> more) {
  std::vector<std::string> args = {"walk", kDepot, "--format", "json"};
  args.insert(args.end(), more.begin(), more.end());
  return nlohmann::json::parse(runProgram(args).out);
}

TEST(Walk, ListsItsStopsWithLengthsThatAddUp) {
  const auto json = walkOf({"--closed"});
  double length_m = json["back_m"];
  for (const auto& stop : json["stops"]) length_m += stop["leg_m"].get<double>();
  EXPECT_GT(json["stops"].size(), 3u);
  EXPECT_NEAR(json["length_m"], length_m, 1e-6);
  EXPECT_LE(json["bound_m"], json["length_m"]);
}

TEST(Walk, LegsAreThoseThatMeasureGives) {
  const auto stops = walkOf({})["stops"];
  for (std::size_t i = 1; i < stops.size(); ++i) {
    const Ran ran = runProgram(
        {"measure", kDepot, "--from", stops[i - 1]["id"], "--to", stops[i]["id"], "--format", "json"});
    // Along a bar `measure` takes the nearest place, the walk the middle.
    EXPECT_GE(stops[i]["leg_m"].get<double>(), nlohmann::json::parse(ran.out)["walk_m"].get<double>() - 1e-6);
  }
}

TEST(Walk, BeginsAtAStationThatIsAskedFor) {
  const auto json = walkOf({"--start", "lathe-1/operator"});
  EXPECT_EQ(json["stops"][0]["id"], "lathe-1/operator");
  EXPECT_GE(json["length_m"], walkOf({})["length_m"]);
}

TEST(Walk, SaysWhatItCouldNotReach) {
  const Ran ran = runProgram({"walk", "-"}, shop());
  EXPECT_EQ(ran.out.find("Not on the walk") != std::string::npos, ran.exit == 1) << ran.out;
  EXPECT_NE(ran.out.find("The walk is"), std::string::npos);
  EXPECT_NE(ran.out.find("licensed people come first"), std::string::npos);
}

TEST(Walk, UnknownStartIsToldWithTheNearest) {
  const Ran ran = runProgram({"walk", kDepot, "--start", "lathe-1/operater"});
  EXPECT_EQ(ran.exit, 2);
  EXPECT_NE(ran.err.find("there is no such place"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("lathe-1/operator"), std::string::npos) << ran.err;
  EXPECT_TRUE(ran.out.empty());
}

class WalkOfRound : public InFolder {};

TEST_F(WalkOfRound, RoundListsItsDevicesInTheOrderOfTheWalk) {
  const std::string layout = write("depot.layout.yaml", textOf(kDepot));
  const auto round = nlohmann::json::parse(
      runProgram({"round", "new", layout, "--by", "Ada Example", "--format", "json"}).out);
  const auto walk = walkOf({});
  std::vector<std::string> expected;
  for (const auto& stop : walk["stops"]) expected.push_back(stop["id"]);
  for (const auto& left : walk["left_out"]) expected.push_back(left["id"]);
  EXPECT_EQ(round["devices"], nlohmann::json(expected)) << round;
  // Nothing is recorded: all are due.
  EXPECT_EQ(nlohmann::json::parse(runProgram({"walk", layout, "--due", "--format", "json"}).out), walk);
}

}  // namespace
}  // namespace stopwalk::app
