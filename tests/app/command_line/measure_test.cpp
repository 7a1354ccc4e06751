#include <nlohmann/json.hpp>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

Ran measure(const std::string& from, const std::string& to, std::vector<std::string> more = {}) {
  std::vector<std::string> args = {"measure", "-", "--from", from, "--to", to, "--format", "json"};
  args.insert(args.end(), more.begin(), more.end());
  return runProgram(args, shop());
}

nlohmann::json jsonOf(const Ran& ran) {
  return nlohmann::json::parse(ran.out);
}

TEST(Measure, StraightWalkBetweenPoints) {
  const Ran ran = measure("1000,1000", "4000,1000");
  EXPECT_EQ(ran.exit, 0);
  const auto json = jsonOf(ran);
  EXPECT_EQ(json["status"], "walk");
  EXPECT_DOUBLE_EQ(json["walk_m"], 3.0);
  EXPECT_DOUBLE_EQ(json["clear_width_m"], 0.61);
  EXPECT_EQ(json["path_m"], nlohmann::json::parse("[[1.0,1.0],[4.0,1.0]]"));
  EXPECT_EQ(ran.out.rfind(R"({"from":"1000,1000","to":"4000,1000","status":)", 0), 0u);
}

TEST(Measure, DeviceStandsForWhereItsUserStands) {
  EXPECT_NEAR(jsonOf(measure("saw/operator", "phone"))["walk_m"], std::hypot(1.55, 0.29), 1e-6);
  EXPECT_DOUBLE_EQ(jsonOf(measure("3200,1450", "cut-off"))["walk_m"], 1.0);
}

TEST(Measure, AtZeroClearanceOneCutsTheCorner) {
  const double wide = jsonOf(measure("1000,3000", "2000,5000"))["walk_m"],
               tight = jsonOf(measure("1000,3000", "2000,5000", {"--clearance", "0"}))["walk_m"];
  EXPECT_NEAR(tight, std::hypot(0.5, 1.4) + std::hypot(0.5, 0.6),
              1e-6);  // by the saw's corner at (1500, 4400)
  EXPECT_GT(wide, tight);
}

TEST(Measure, NarrowWayGivesItsClearWidth) {
  const auto json = jsonOf(measure("press/operator", "phone"));
  EXPECT_EQ(json["status"], "narrow");
  EXPECT_DOUBLE_EQ(json["clear_width_m"], 0.59);
}

TEST(Measure, SaysWhyThereIsNoWalk) {
  const Ran shut = measure("caged/operator", "phone");
  EXPECT_EQ(shut.exit, 1);
  EXPECT_EQ(jsonOf(shut)["status"], "unreachable");
  EXPECT_TRUE(jsonOf(shut)["walk_m"].is_null());
  const Ran off = measure("2000,4000", "phone");
  EXPECT_EQ(off.exit, 1);
  EXPECT_EQ(jsonOf(off)["status"], "unmeasured");
  EXPECT_NE(off.err.find("the point given is not on the floor"), std::string::npos);
  EXPECT_NE(measure("caged/inside", "phone").err.find("`caged/inside` is not on the floor"),
            std::string::npos);
}

TEST(Measure, BlockedDeviceIsUnreachableAndSaysSo) {
  std::string text = shop();
  const std::string fixtures = "fixtures:\n";
  text.replace(text.find(fixtures), fixtures.size(),
               fixtures + "  - {id: bin, at: [600, 3000], footprint: {width: 1200, depth: 1200}}\n");
  const Ran ran =
      runProgram({"measure", "-", "--from", "saw/operator", "--to", "phone", "--format", "json"}, text);
  EXPECT_EQ(ran.exit, 1);
  EXPECT_EQ(jsonOf(ran)["status"], "unreachable");
  EXPECT_NE(ran.err.find("`phone` cannot be walked to: "), std::string::npos);
}

TEST(Measure, CoordinatesMayBeNegative) {
  for (const char* from : {"-5,1000", "-.5,1000"}) {
    const Ran ran = measure(from, "phone");
    EXPECT_EQ(ran.exit, 1) << ran.err;
    EXPECT_EQ(jsonOf(ran)["status"], "unmeasured");
  }
}

TEST(Measure, SuggestsTheNearestName) {
  EXPECT_NE(measure("saw/operater", "phone").err.find("did you mean `saw/operator`?"), std::string::npos);
}

}  // namespace
}  // namespace stopwalk::app
