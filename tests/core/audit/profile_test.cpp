#include "core/audit/profile.h"

#include <gtest/gtest.h>

#include "core/files/profile_reader.h"
#include "tests/core/audit/shop.h"

namespace stopwalk::audit {
namespace {

double limitOf(const Profile& p, const char* rule, std::size_t i = 0) {
  return p.of(*findRule(rule)).limits[i];
}

TEST(Limit, IsSetByRuleOrByRuleAndName) {
  Profile p = defaultProfile();
  EXPECT_EQ(applyLimit(p, "stop-too-far=4.5"), "");
  EXPECT_EQ(applyLimit(p, "actuator-height.max=1.5"), "");
  EXPECT_EQ(limitOf(p, "stop-too-far"), 4.5);
  EXPECT_EQ(limitOf(p, "actuator-height", 0), 0.6);
  EXPECT_EQ(limitOf(p, "actuator-height", 1), 1.5);
}

TEST(Limit, ThatIsChangedLosesItsSource) {
  Profile p = defaultProfile();
  EXPECT_EQ(applyLimit(p, "exit-width=0.711"), "");
  EXPECT_EQ(p.of(*findRule("exit-width")).basis.kind, BasisKind::Published);
  EXPECT_EQ(applyLimit(p, "exit-width=0.8"), "");
  EXPECT_EQ(p.of(*findRule("exit-width")).basis.kind, BasisKind::HouseRule);
}

TEST(Limit, SaysWhatIsWrong) {
  const auto wrong = [](const char* text) {
    Profile p = defaultProfile();
    const std::string said = applyLimit(p, text);
    EXPECT_EQ(p, defaultProfile()) << text;
    return said;
  };
  EXPECT_EQ(wrong("stop-to-far=4"), "there is no rule `stop-to-far`: did you mean `stop-too-far`?");
  EXPECT_EQ(wrong("stop-too-far"), "`stop-too-far` is not of the form RULE=VALUE");
  EXPECT_EQ(wrong("stop-too-far=4m"), "`4m` is not a number (in m)");
  EXPECT_EQ(wrong("stop-too-far=-1"), "a limit is a number that is not negative");
  EXPECT_EQ(wrong("stop-too-far=inf"), "a limit is a number that is not negative");
  EXPECT_EQ(wrong("stop-too-far="), "`` is not a number (in m)");
  EXPECT_EQ(wrong("unreachable=1"), "the rule `unreachable` has no limit");
  EXPECT_EQ(wrong("actuator-height=1"),
            "the rule `actuator-height` has several limits: name one of actuator-height.min and "
            "actuator-height.max");
  EXPECT_EQ(
      wrong("actuator-height.top=1"),
      "the rule `actuator-height` has no limit `top`: there is actuator-height.min and actuator-height.max");
  EXPECT_EQ(wrong("narrow-passage=0.7"), "the limit of `narrow-passage` can be at most 0.61 m");
}

files::Result<Profile> read(
    const std::string& text,
    const files::FileSource& files = [](const auto&, const auto&) { return std::nullopt; }) {
  return files::readProfile({"ours.yaml", text}, files);
}
const std::string kHead = "stopwalk_profile: 1\nid: ours\n";

TEST(ProfileFile, ChangesWhatItSays) {
  const auto r = read(
      kHead +
      "extends: strict\nrules:\n  stop-too-far: {limit: 3, severity: warn}\n  hidden-stop: {on: false}\n");
  ASSERT_TRUE(r.value);
  EXPECT_TRUE(r.diagnostics.empty());
  EXPECT_EQ(r.value->extends, "strict");
  EXPECT_EQ(limitOf(*r.value, "stop-too-far"), 3);
  EXPECT_EQ(r.value->of(*findRule("stop-too-far")).severity, Severity::Warn);
  EXPECT_FALSE(r.value->of(*findRule("hidden-stop")).on);
  EXPECT_EQ(limitOf(*r.value, "cut-off-too-far"), 9.14);  // of strict
}

TEST(ProfileFile, IsReadAgainAsItIsPrinted) {
  for (const std::string& name : files::bundledProfiles()) {
    const Profile p = *files::bundledProfile(name);
    const auto again = files::readProfile({"printed.yaml", profileText(p)},
                                          [](const auto&, const auto&) { return std::nullopt; });
    for (const auto& d : again.diagnostics) ADD_FAILURE() << files::format(d);
    ASSERT_TRUE(again.value);
    EXPECT_EQ(*again.value, p) << name;
  }
}

std::string errorOf(
    const std::string& text,
    const files::FileSource& files = [](const auto&, const auto&) { return std::nullopt; }) {
  const auto r = read(text, files);
  EXPECT_FALSE(r.value);
  EXPECT_FALSE(r.diagnostics.empty());
  return r.diagnostics.empty() ? "" : files::format(r.diagnostics.front());
}

TEST(ProfileFile, SaysWhereItIsWrong) {
  EXPECT_NE(errorOf(kHead + "extends: strickt\n").find("ours.yaml:3:10: error: there is no profile"),
            std::string::npos);
  EXPECT_NE(errorOf(kHead + "rules:\n  stop-too-far: {limit: far}\n").find("ours.yaml:4:25: error:"),
            std::string::npos);
  EXPECT_NE(errorOf(kHead + "rules:\n  stop-too-far: {limit: -2}\n").find("not negative"), std::string::npos);
  EXPECT_NE(errorOf(kHead + "rules:\n  stop-too-far: {severity: fatal}\n").find("ours.yaml:4:28: error:"),
            std::string::npos);
  EXPECT_NE(errorOf("id: ours\n").find("stopwalk_profile"), std::string::npos);
}

TEST(ProfileFile, SaysWhatIsWrongWithItsInspection) {
  const auto told = [](const std::string& inspection) {
    return errorOf(kHead + "inspection: " + inspection + "\n...\n");
  };
  for (const char* key : {"seen_days", "pressed_months", "full_months"})
    for (const char* bad : {"0", "-1", "1.5", "often", "\"\"", "[1]", "{}", "1e9", "~", "true"}) {
      const std::string said = told("{" + std::string(key) + ": " + bad + "}");
      EXPECT_NE(said.find("ours.yaml:3:" + std::to_string(std::string(key).size() + 16) + ": error: "),
                std::string::npos)
          << key << ": " << bad << "\n"
          << said;
      EXPECT_NE(said.find("number"), std::string::npos) << key << ": " << bad << "\n" << said;
    }
  for (const char* key : {"retest_by_another", "failed_stops_count"})
    for (const char* bad : {"yes", "1", "maybe", "[true]", "~"}) {
      const std::string said = told("{" + std::string(key) + ": " + bad + "}");
      EXPECT_NE(said.find(": error: "), std::string::npos) << key << ": " << bad;
      EXPECT_NE(said.find("true or false"), std::string::npos) << key << ": " << bad << "\n" << said;
    }
  for (const char* whole : {"monthly", "[1, 12]", "~"})
    EXPECT_NE(told(whole).find("ours.yaml:3:"), std::string::npos) << whole << "\n" << told(whole);
  EXPECT_NE(told("{pressed_months: 1, pressed_months: 2}").find("twice"), std::string::npos);
}

TEST(ProfileFile, TakesWhatItsInspectionSays) {
  const auto r =
      read(kHead +
           "inspection: {seen_days: 1, pressed_months: 3, full_months: 6, retest_by_another: true}\n...\n");
  ASSERT_TRUE(r.value);
  EXPECT_TRUE(r.diagnostics.empty());
  EXPECT_EQ(r.value->inspection,
            (inspection::Schedule{
                .seen_days = 1, .pressed_months = 3, .full_months = 6, .retest_by_another = true}));
  const auto misspelt = read(kHead + "inspection: {pressed_month: 3}\n...\n");
  ASSERT_FALSE(misspelt.diagnostics.empty());
  EXPECT_NE(files::format(misspelt.diagnostics.front()).find("pressed_months"), std::string::npos);
}

TEST(ProfileFile, UnknownRuleIsAWarning) {
  const auto r = read(kHead + "rules:\n  stop-to-far: {limit: 3}\n...\n");
  EXPECT_TRUE(r.value);
  ASSERT_EQ(r.diagnostics.size(), 1u);
  EXPECT_EQ(r.diagnostics[0].severity, files::Severity::Warning);
}

TEST(ProfileFile, MayNotExtendItself) {
  const files::FileSource two = [](const std::string& asked,
                                   const std::string&) -> std::optional<files::NamedText> {
    if (asked == "ours.yaml")
      return files::NamedText{"ours.yaml", "stopwalk_profile: 1\nid: ours\nextends: theirs.yaml\n"};
    if (asked == "theirs.yaml")
      return files::NamedText{"theirs.yaml", "stopwalk_profile: 1\nid: theirs\nextends: ours.yaml\n"};
    return std::nullopt;
  };
  const auto r = read(kHead + "extends: theirs.yaml\n", two);
  EXPECT_FALSE(r.value);
  ASSERT_FALSE(r.diagnostics.empty());
  EXPECT_EQ(r.diagnostics.front().file, "theirs.yaml");
  EXPECT_EQ(r.diagnostics.front().text, "the profile would extend itself");
}

TEST(BundledProfiles, AreReadAndNamedAsTheirFiles) {
  EXPECT_EQ(files::bundledProfiles(),
            (std::vector<std::string>{"eu-machinery", "strict", "teaching-shop", "us-workplace"}));
  for (const std::string& name : files::bundledProfiles()) {
    const auto p = files::bundledProfile(name);
    ASSERT_TRUE(p);
    EXPECT_EQ(p->id, name);
    for (const Rule* rule : rules())  // whoever changes a limit says where it is from
      EXPECT_TRUE(p->of(*rule).limits == rule->setting().limits ||
                  !p->of(*rule).basis.reference.starts_with("limit of the profile"))
          << name << ": " << rule->id;
  }
  EXPECT_EQ(files::bundledProfile("teaching-shop")->settings, defaultProfile().settings);
}

TEST(HouseRules, GoBeforeTheProfileAndByTheHousesName) {
  const Profile usual = defaultProfile();
  const Profile kept = withHouseRules(usual, {{"stop-too-far", "", 4, {}, {}, "", {}},
                                              {"hidden-stop", "", {}, Severity::Fail, {}, "", {}},
                                              {"look-alike", "", {}, {}, false, "", {}}});
  EXPECT_EQ(kept.of(*findRule("stop-too-far")).limit(), 4);
  EXPECT_EQ(kept.of(*findRule("stop-too-far")).basis.kind, BasisKind::HouseRule);
  EXPECT_EQ(kept.of(*findRule("hidden-stop")).severity, Severity::Fail);
  EXPECT_FALSE(kept.of(*findRule("look-alike")).on);
  EXPECT_EQ(kept.id, "teaching-shop+house-rules");
  EXPECT_EQ(withHouseRules(usual, {}), usual);
  EXPECT_EQ(withHouseRules(usual, {{"stop-too-far", "", 5, {}, {}, "", {}}}), usual);
}

TEST(HouseRules, OfWhatThereIsNotAreToldAndLeftOut) {
  const Profile usual = defaultProfile();
  for (const auto& [house, told] : std::vector<std::pair<layout::HouseRule, std::string>>{
           {{"stop-to-far", "", 4, {}, {}, "", {}}, "did you mean `stop-too-far`"},
           {{"stop-out-of-reach", "", 0.6, {}, {}, "", {}}, "has several limits"},
           {{"stop-out-of-reach", "arm", 0.6, {}, {}, "", {}}, "has no limit `arm`"},
           {{"stop-too-far", "", -1, {}, {}, "", {}}, "not negative"},
           {{"stop-out-of-reach", "hand", {}, {}, {}, "", {}}, "no `limit` is given"}}) {
    EXPECT_NE(troubleOf(house).find(told), std::string::npos) << troubleOf(house);
    EXPECT_EQ(withHouseRules(usual, {house}), usual);
  }
}

// Reports must not call a file by the name of a bundled profile alone.
TEST(Profile, OfAFileWithABundledProfilesIdIsCalledByTheFileAsWell) {
  const auto calledBy = [](const std::string& text) {
    const auto read = files::readProfile({"shop/ours.yaml", text}, [](const auto&, const auto&) {
      return std::optional<files::NamedText>({"shop/base.yaml", "stopwalk_profile: 1\nid: strict\n...\n"});
    });
    return read.value ? read.value->called() : "nothing";
  };
  EXPECT_EQ(calledBy("stopwalk_profile: 1\nid: teaching-shop\nrules: {hidden-stop: {on: false}}\n...\n"),
            "teaching-shop (ours.yaml)");
  EXPECT_EQ(calledBy("stopwalk_profile: 1\nid: ours\n...\n"), "ours");
  EXPECT_EQ(calledBy("stopwalk_profile: 1\nid: ours\nextends: base.yaml\n...\n"), "ours");
  EXPECT_EQ(files::bundledProfile("strict")->called(), "strict");
  const auto read = files::readProfile(
      {"a/ours.yaml", "stopwalk_profile: 1\nid: strict\nrules: {stop-too-far: {limit: 99}}\n...\n"},
      [](const auto&, const auto&) { return std::nullopt; });
  ASSERT_TRUE(read.value);
  EXPECT_EQ(read.value->of(*findRule("stop-too-far")).basis.reference,
            "limit of the profile strict (ours.yaml)");
  EXPECT_EQ(audit(layoutOf(kShop), files::bundledDeviceKinds(), *read.value).profile, "strict (ours.yaml)");
}

}  // namespace
}  // namespace stopwalk::audit
