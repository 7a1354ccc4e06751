// What a finding has drawn is what it speaks of: the same number, from the same place.
#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "tests/core/audit/rule_cases.h"
#include "tests/support/furnished.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

using Kind = MeasuredLine::Kind;

constexpr double kSame_m = 1e-9;
constexpr double kWalk_m = 2e-6;  // walks are found to 0.001 mm, and so is where on a bar they end
// Arcs are drawn as chords of 5 degrees or finer: shorter by (t - 2 sin(t / 2)) / t at most. Derived.
constexpr double kChords = 3.2e-4;

double lengthOf(const MeasuredLine& line) {
  double length = 0;
  for (std::size_t i = 1; i < line.line_m.size(); ++i)
    length += geometry::distance(line.line_m[i - 1], line.line_m[i]);
  return length;
}

// Rules whose number is the length of the first line, of findings that have a number.
const std::set<std::string> kLengths = {"stop-out-of-reach", "stop-too-far",    "phone-too-far",
                                        "look-alike",        "cut-off-too-far", "standing-conflict",
                                        "phone-after-hours"};
// Rules that measure from where the subject stands.
const std::set<std::string> kFromStation = {"stop-out-of-reach", "stop-too-far",      "phone-too-far",
                                            "look-alike",        "cut-off-too-far",   "narrow-passage",
                                            "hidden-stop",       "phone-after-hours", "standing-conflict"};
// What can be drawn of every finding of these.
const std::set<std::string> kAlways = {"blocked-device",    "cut-off-at-exit",  "cut-off-too-far",
                                       "hidden-stop",       "look-alike",       "narrow-passage",
                                       "phone-after-hours", "standing-conflict"};

void expectTrue(const MeasuredLine& line) {
  ASSERT_GE(line.line_m.size(), line.kind == Kind::Place ? 1u : 2u);
  for (const geometry::Point p : line.line_m) EXPECT_TRUE(std::isfinite(p.x) && std::isfinite(p.y));
  const bool may_have_length = line.kind != Kind::Place;
  const bool must_have_length = line.kind == Kind::Route || line.kind == Kind::Width;
  EXPECT_TRUE(line.length_m ? may_have_length : !must_have_length);
  if (!line.length_m) return;
  const bool is_walk = line.kind == Kind::Route;
  const double drawn = lengthOf(line), same_m = is_walk ? kWalk_m : kSame_m;
  EXPECT_LE(drawn, *line.length_m + same_m);
  EXPECT_GE(drawn, *line.length_m * (is_walk ? 1 - kChords : 1) - same_m);
}

void expectFromStation(const MeasuredLine& line, geometry::Point at_m) {
  if (line.kind == Kind::Place) return;
  EXPECT_NEAR(geometry::distance(line.line_m.front(), at_m), 0, kSame_m);
}

void expectHelpers(const Finding& f) {
  ASSERT_EQ(f.lines.size(), f.measured ? 1u : 0u);
  if (!f.measured) return;
  const bool at_hand = f.lines[0].kind == Kind::Straight;
  // 1.5 s and 1.067 m/s: core/audit/context.h names the sources; the rest is the run-down.
  EXPECT_GE(*f.measured, 1.5 + (at_hand ? 0 : *f.lines[0].length_m) / 1.067 - kSame_m);
}

void expectTrue(const Finding& f, const Report& report) {
  SCOPED_TRACE(f.rule + " of " + f.subject + ": " + f.text);
  if (kAlways.contains(f.rule)) {
    ASSERT_FALSE(f.lines.empty());
  }
  if (kLengths.contains(f.rule) && f.measured) {
    ASSERT_EQ(f.lines.at(0).length_m, f.measured);
  }
  if (f.rule == "helper-too-slow") expectHelpers(f);
  for (const MeasuredLine& line : f.lines) {
    expectTrue(line);
    if (kFromStation.contains(f.rule)) expectFromStation(line, stationOf(report, f.subject).at_m);
    if (f.rule == "exit-width" && line.length_m) {
      EXPECT_LT(*line.length_m, *f.limit);
    }
    if (f.rule == "cut-off-at-exit" && line.length_m) {
      EXPECT_GT(*line.length_m, *f.limit);
    }
  }
}

const Finding& lineCase(const std::string& rule, Report& report) {
  const auto c = std::ranges::find(kRuleCases, rule, &RuleCase::rule);
  EXPECT_NE(c, kRuleCases.end());
  report = auditOf(shopWith(c->edits), c->limits, floor::Hours::Open, c->failed);
  for (const Finding& f : report.findings)
    if (f.rule == rule && f.subject == c->subject) return f;
  return findingOf(report, "none of " + rule);
}

std::vector<Kind> kindsOf(const Finding& f) {
  std::vector<Kind> kinds;
  for (const MeasuredLine& line : f.lines) kinds.push_back(line.kind);
  return kinds;
}

// Of each rule that measures something somewhere, what is drawn in a shop where it finds something.
const std::map<std::string, std::vector<Kind>> kDrawn = {{"stop-out-of-reach", {Kind::Straight, Kind::Route}},
                                                         {"stop-too-far", {Kind::Route}},
                                                         {"phone-too-far", {Kind::Route}},
                                                         {"unreachable", {Kind::Place}},
                                                         {"blocked-device", {Kind::Place}},
                                                         {"narrow-passage", {Kind::Route}},
                                                         {"exit-width", {Kind::Width}},
                                                         {"look-alike", {Kind::Straight}},
                                                         {"helper-too-slow", {Kind::Route}},
                                                         {"cut-off-too-far", {Kind::Route}},
                                                         {"cut-off-at-exit", {Kind::Straight}},
                                                         {"hidden-stop", {Kind::Straight}},
                                                         {"standing-conflict", {Kind::Straight}},
                                                         {"phone-after-hours", {Kind::Place}},
                                                         {"tape-disagrees", {Kind::Route}}};

TEST(MeasuredLines, EachRuleHasDrawnWhatItMeasures) {
  for (const Rule* rule : rules()) {
    SCOPED_TRACE(rule->id);
    Report report;
    const Finding& f = lineCase(rule->id, report);
    const auto wanted = kDrawn.find(rule->id);
    EXPECT_EQ(kindsOf(f), wanted == kDrawn.end() ? std::vector<Kind>{} : wanted->second) << f.text;
    expectTrue(f, report);
  }
}

TEST(MeasuredLines, AnExitsWidthIsThatOfItsOpening) {
  Report report;
  const Finding& f = lineCase("exit-width", report);
  EXPECT_NEAR(f.lines.at(0).length_m.value_or(0), 0.7, kSame_m);
  EXPECT_NEAR(geometry::distance(f.lines[0].line_m.front(), {3.65, 0}), 0, kSame_m);
  EXPECT_NEAR(geometry::distance(f.lines[0].line_m.back(), {4.35, 0}), 0, kSame_m);
}

TEST(MeasuredLines, AHelpersWalkIsThatOfTheOther) {
  Report report;
  const Finding& f = lineCase("helper-too-slow", report);
  EXPECT_EQ(f.lines.at(0).line_m.front(), stationOf(report, "drill/operator").at_m);
  // The saw runs on for 14 s.
  EXPECT_NEAR(*f.measured, 1.5 + *f.lines[0].length_m / 1.067 + 14, kSame_m);
}

// A tape's number is the difference to what is drawn.
TEST(MeasuredLines, ATapesWalkIsTheOneComputed) {
  Report report;
  const Finding& f = lineCase("tape-disagrees", report);
  EXPECT_NEAR(*f.measured, std::abs(3 - *f.lines.at(0).length_m), kSame_m);
}

// By day the phone is near, behind the door; after hours it is the other one, across the shop.
TEST(MeasuredLines, AfterHoursTheWalkIsThatOfAfterHours) {
  const std::string shop = shopWith({kWithStore,
                                     {"at: [0, 3000], faces: 0", "at: [8600, 6000], faces: 270"},
                                     before("machines:\n",
                                            "  - {id: between, joins: [shop, store], at: [8000, 3000], "
                                            "width: 1000, locked: after-hours}\n"),
                                     before("...\n", "  - {id: other, at: [450, 6000], faces: 270}\n")});
  for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After}) {
    const Report report = auditOf(shop, {"phone-after-hours=5.3"}, hours);
    const auto found = std::ranges::find_if(report.findings, [](const Finding& f) {
      return f.rule == "phone-after-hours" && f.subject == "drill/operator";
    });
    ASSERT_NE(found, report.findings.end());
    ASSERT_EQ(kindsOf(*found), std::vector<Kind>{Kind::Route});
    EXPECT_LT(found->lines[0].line_m.back().x, 1) << "goes to the other phone";
    expectTrue(*found, report);
  }
}

// A stop that is near, but on the other side of what is sharp, is drawn beside the one that is walked to.
TEST(MeasuredLines, AStopThatSomethingPreventsIsDrawnAsWell) {
  const Report report = auditOf(
      shopWith({before("devices:\n  - {id: cut-off",
                       "fixtures:\n  - {id: screen, at: [2000, 3440], footprint: {width: 1500, depth: 50}, "
                       "height: 1800}\n")}));
  const auto found = std::ranges::find_if(report.findings, [](const Finding& f) {
    return f.rule == "stop-out-of-reach" && f.subject == "saw/operator";
  });
  ASSERT_NE(found, report.findings.end());
  ASSERT_EQ(kindsOf(*found), (std::vector{Kind::Straight, Kind::Route, Kind::Straight}));
  EXPECT_NEAR(*found->lines[2].length_m, 0.31, kSame_m);
}

layout::Layout sample(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(STOPWALK_SOURCE_DIR "/sample-layouts/" + name + ".layout.yaml").rdbuf();
  return layoutOf(text.str());
}

// Limits under which most of what is measured is a finding.
Profile strict() {
  Profile profile = defaultProfile();
  for (const char* limit :
       {"phone-too-far=3", "stop-too-far=1", "cut-off-too-far=2", "helper-too-slow=2", "exit-width=0.95",
        "standing-conflict=1.2", "cut-off-at-exit=0.2", "phone-after-hours=6"})
    EXPECT_EQ(applyLimit(profile, limit), "");
  return profile;
}

TEST(MeasuredLines, AgreeWithTheNumbersInSamplesAndDrawnShops) {
  std::vector<layout::Layout> layouts = {sample("tram-depot"), sample("scene-shop"), sample("school-wing")};
  for (std::uint64_t seed = 0; seed < 25; ++seed)
    layouts.push_back(support::furnished(support::randomLayout(seed, {.narrow = seed % 3 == 0}), seed));
  std::map<std::string, int> drawn;
  for (const layout::Layout& layout : layouts)
    for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After}) {
      const Report report = audit(layout, files::bundledDeviceKinds(), strict(), hours);
      for (const Finding& f : report.findings) {
        expectTrue(f, report);
        drawn[f.rule] += !f.lines.empty();
      }
      ASSERT_FALSE(testing::Test::HasFailure()) << layout.site.name;
    }
  for (const auto& [rule, kinds] : kDrawn) EXPECT_GT(drawn[rule], 0) << rule;
}

}  // namespace
}  // namespace stopwalk::audit
