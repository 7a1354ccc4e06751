// The sample layouts through the program itself: each is as good or bad as it is meant to be.
#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "app/command_line/run.h"

namespace stopwalk::app {
namespace {

using nlohmann::json;
using Names = std::set<std::string>;

struct Outcome {
  int status = -1;
  std::string out;
  std::string err;
};

Outcome outcomeOf(const std::vector<std::string>& arguments, const std::string& input = "") {
  std::istringstream in(input);
  std::ostringstream out, err;
  const int status = run(arguments, Console{in, out, err});
  return {status, out.str(), err.str()};
}

std::string sample(const std::string& name) {
  return STOPWALK_ROOT "/sample-layouts/" + name + ".layout.yaml";
}

json auditOf(const std::string& name, const std::string& hours = "open") {
  return json::parse(outcomeOf({"audit", "--format", "json", "--hours", hours, sample(name)}).out);
}

Names rulesOf(const json& report, const std::string& severity) {
  Names rules;
  for (const json& f : report["findings"])
    if (f["severity"] == severity) rules.insert(f["rule"]);
  return rules;
}

Names subjectsOf(const json& report, const std::string& rule) {
  Names subjects;
  for (const json& f : report["findings"])
    if (f["rule"] == rule) subjects.insert(f["subject"]);
  return subjects;
}

const std::map<std::string, int> statuses = {
    {"scene-shop", 0}, {"school-wing", 1}, {"tram-depot", 1}, {"tram-depot-moved", 1}};

TEST(Samples, CheckSaysNothingAgainstThem) {
  for (const auto& [name, status] : statuses) {
    const Outcome check = outcomeOf({"check", sample(name)});
    EXPECT_EQ(check.status, 0) << name;
    EXPECT_EQ(check.err, "") << name;
  }
}

TEST(Samples, EndAnAuditAsTheyAreMeantTo) {
  for (const auto& [name, status] : statuses)
    EXPECT_EQ(outcomeOf({"audit", sample(name)}).status, status) << name;
}

TEST(Samples, SceneShopMeetsEverything) {
  for (const char* hours : {"open", "after"}) {
    const json report = auditOf("scene-shop", hours);
    EXPECT_EQ(report["findings"], json::array());
    EXPECT_FALSE(report["stations"].empty());
  }
}

TEST(Samples, SchoolWingHasAFewFaultsAmongSixtyMachines) {
  const json report = auditOf("school-wing");
  EXPECT_EQ(rulesOf(report, "fail"), (Names{"actuator-height", "phone-after-hours", "start-guard-missing",
                                            "stop-out-of-reach", "stop-too-far"}));
  EXPECT_EQ(subjectsOf(report, "stop-out-of-reach"), (Names{"laser/operator", "moulder/operator"}));
}

TEST(Samples, TramDepotBreaksTheRulesItIsMeantTo) {
  const json report = auditOf("tram-depot");
  EXPECT_EQ(rulesOf(report, "fail"), (Names{"actuator-height", "blocked-device", "phone-after-hours",
                                            "start-guard-missing", "stop-out-of-reach"}));
  EXPECT_EQ(subjectsOf(report, "blocked-device"), Names{"cnc-isolator"});
}

TEST(Samples, MovingBringsTheBeltSanderItsStopAndBlocksAPhone) {
  const json before = auditOf("tram-depot"), after = auditOf("tram-depot-moved");
  EXPECT_EQ(subjectsOf(before, "stop-out-of-reach").count("linisher/operator"), 1u);
  EXPECT_EQ(subjectsOf(after, "stop-out-of-reach").count("linisher/operator"), 0u);
  EXPECT_EQ(subjectsOf(before, "blocked-device").count("phone-bikes"), 0u);
  EXPECT_EQ(subjectsOf(after, "blocked-device").count("phone-bikes"), 1u);
}

Names linesOf(const std::string& text) {
  Names lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.insert(line);
  return lines;
}

std::string textOf(const std::string& file) {
  std::ostringstream text;
  text << std::ifstream(STOPWALK_ROOT "/" + file).rdbuf();
  return text.str();
}

// The layout comes by standard input, whose name is short wherever the tests run.
TEST(Readme, ExampleIsWhatTheProgramPrints) {
  const std::string layout = "sample-layouts/tram-depot.layout.yaml";
  const std::string fence = "\n```\n", text = textOf("README.md");
  const std::size_t begin = text.find(fence) + fence.size(), end = text.find(fence, begin);
  ASSERT_NE(end, std::string::npos);
  std::string example = text.substr(begin, end - begin);
  example.replace(example.find(layout), layout.size(), "-");

  const Names printed = linesOf(outcomeOf({"audit", "-"}, textOf(layout)).out);
  for (const std::string& line : linesOf(example))
    EXPECT_TRUE(line == "..." || printed.contains(line)) << line;
}

}  // namespace
}  // namespace stopwalk::app
