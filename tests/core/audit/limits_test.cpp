// What is exactly at a limit meets it; what is beyond does not.
#include "tests/core/audit/rule_cases.h"

namespace stopwalk::audit {
namespace {

Report withHeight(const std::string& height) {
  return auditOf(shopWith({{"height: 1000", "height: " + height}}));
}

TEST(ActuatorHeight, BandIncludesItsEnds) {
  EXPECT_FALSE(finds(withHeight("600"), "actuator-height", "saw/stop"));
  EXPECT_FALSE(finds(withHeight("1700"), "actuator-height", "saw/stop"));
  EXPECT_TRUE(finds(withHeight("599"), "actuator-height", "saw/stop"));
  EXPECT_TRUE(finds(withHeight("1701"), "actuator-height", "saw/stop"));
}

TEST(ActuatorHeight, NamesTheEndThatIsBroken) {
  EXPECT_EQ(findingOf(withHeight("500"), "actuator-height").limit, 0.6);
  EXPECT_EQ(findingOf(withHeight("1800"), "actuator-height").limit, 1.7);
}

TEST(ActuatorHeight, FootBarsHaveNone) {
  const Report report = auditOf(shopWith({{"kind: mushroom-button, at: [0, -400], height: 1000",
                                           "kind: foot-bar, at: [0, -400], length: 800, height: 150"}}));
  EXPECT_EQ(report.findings.size(), 0u);
}

TEST(ActuatorHeightAccess, EndsAtItsLimit) {
  EXPECT_FALSE(finds(withHeight("1220"), "actuator-height-access", "saw/stop"));
  EXPECT_TRUE(finds(withHeight("1221"), "actuator-height-access", "saw/stop"));
}

// The stop straight ahead of the operator, so many millimetres away; the machine is drawn that much smaller.
Report withStopAhead(const std::string& kind, double away) {
  const std::string y = std::to_string(-710 + away);
  return auditOf(
      shopWith({{"footprint: {width: 1000, depth: 800}", "footprint: {width: 1000, depth: 40}"},
                {"kind: mushroom-button, at: [0, -400]", "kind: " + kind + ", at: [0, " + y + "]"}}));
}

// In a shop drawn in feet, the sentence reads as the verdict does.
TEST(ActuatorHeight, InFeetALimitReadsAsBrokenWhereItIs) {
  const auto said = [](const std::string& inches) {
    const std::string shop = R"(stopwalk_layout: 1
units: in
site: {name: Feet}
rooms:
  - {id: shop, name: Shop, outline: [[0, 0], [360, 0], [360, 240], [0, 240]]}
machines:
  - id: saw
    name: Saw
    at: [180, 144]
    footprint: {width: 36, depth: 36}
    stations:
      - {id: operator, role: operator, at: [0, -36]}
    devices:
      - {id: stop, kind: mushroom-button, at: [0, -18], height: )" +
                             inches + "}\n...\n";
    return findingOf(auditOf(shop), "actuator-height").text;
  };
  EXPECT_EQ(
      said("67"),
      "The mushroom button of Saw: its actuator is 5' 7\" above the floor; the rule asks for 1' 11 1/2\" to "
      "5' 6 15/16\".");
  EXPECT_EQ(said("23.5"),
            "The mushroom button of Saw: its actuator is 1' 11 1/2\" above the floor; the rule asks for 1' "
            "11 5/8\" "
            "to 5' 7\".");
}

TEST(StopOutOfReach, HandReachesSixHundredAndFifty) {
  EXPECT_FALSE(finds(withStopAhead("mushroom-button", 650), "stop-out-of-reach", "saw/operator"));
  EXPECT_TRUE(finds(withStopAhead("mushroom-button", 651), "stop-out-of-reach", "saw/operator"));
}

// A short walk brings one before a stop that no arm reaches: what is measured is the reach.
TEST(StopOutOfReach, SaysTheReachThatIsTooFar) {
  const Report report = withStopAhead("mushroom-button", 651);
  const Finding& f = findingOf(report, "stop-out-of-reach");
  EXPECT_DOUBLE_EQ(f.measured.value_or(0), 0.651);
  EXPECT_EQ(f.limit, 0.65);
  EXPECT_EQ(f.text,
            "Saw, operator: nearest stop is its own mushroom button, 0.2 m to walk and 0.651 m in a straight "
            "line; the rule asks for one at hand (0.65 m).");
}

// One that is near enough and prevented from being at hand breaks no limit.
TEST(StopOutOfReach, HasNoLimitWhereSomethingStandsBetween) {
  const Report report = auditOf(
      shopWith({{"    run_down: 3\n",
                 "    run_down: 3\n    hazard: [[-100, -550], [100, -550], [100, -450], [-100, -450]]\n"}}));
  const Finding& f = findingOf(report, "stop-out-of-reach");
  EXPECT_DOUBLE_EQ(f.measured.value_or(0), 0.31);
  EXPECT_EQ(f.limit, std::nullopt);
  EXPECT_NE(f.text.find("is only 0.31 m away, but the reach to it crosses"), std::string::npos) << f.text;
}

// Whatever is found: no finding measures less than the limit that it is said to break.
TEST(StopOutOfReach, WhatIsMeasuredIsBeyondTheLimit) {
  for (const RuleCase& c : kRuleCases)
    for (const Finding& f : auditOf(shopWith(c.edits), c.limits, floor::Hours::Open, c.failed).findings)
      if (f.rule == "stop-out-of-reach" && f.measured && f.limit) {
        EXPECT_GT(*f.measured, *f.limit) << f.text;
      }
}

TEST(StopOutOfReach, FootReachesFiveHundred) {
  EXPECT_FALSE(finds(withStopAhead("foot-bar, length: 200", 500), "stop-out-of-reach", "saw/operator"));
  EXPECT_TRUE(finds(withStopAhead("foot-bar, length: 200", 501), "stop-out-of-reach", "saw/operator"));
}

TEST(StopOutOfReach, ProfileMayAskForLessOrMore) {
  const std::string near = shopWith({});
  EXPECT_FALSE(finds(auditOf(near, {"stop-out-of-reach.hand=0.31"}), "stop-out-of-reach", "saw/operator"));
  const Report report = auditOf(near, {"stop-out-of-reach.hand=0.309"});
  EXPECT_TRUE(finds(report, "stop-out-of-reach", "saw/operator"));
  EXPECT_DOUBLE_EQ(findingOf(report, "stop-out-of-reach").measured.value_or(0), 0.31);
  const std::string far = shopWith({{"at: [0, -400], height: 1000", "at: [300, -10], height: 1000"}});
  EXPECT_TRUE(finds(auditOf(far), "stop-out-of-reach", "saw/operator"));
  EXPECT_FALSE(finds(auditOf(far, {"stop-out-of-reach.hand=0.8"}), "stop-out-of-reach", "saw/operator"));
}

TEST(SlowRunDown, TenSecondsAreTenOrLess) {
  EXPECT_EQ(subjects(auditOf(shopWith({{"run_down: 3", "run_down: 10"}})), "slow-run-down"), Subjects{});
  EXPECT_EQ(subjects(auditOf(shopWith({{"run_down: 3", "run_down: 10.01"}})), "slow-run-down"),
            Subjects{"saw"});
}

Report withHelperAt(int right_mm) {
  return auditOf(shopWith({before("    devices:\n", "      - {id: helper, role: helper, at: [" +
                                                        std::to_string(right_mm) + ", -710]}\n")}));
}

TEST(StandingConflict, CirclesMayTouch) {
  EXPECT_EQ(subjects(withHelperAt(600), "standing-conflict"), Subjects{});
  EXPECT_EQ(subjects(withHelperAt(599), "standing-conflict"), Subjects{"saw/operator"});
}

TEST(CutOffAtExit, ReachesItsLimit) {
  EXPECT_EQ(subjects(auditOf(shopWith({{"at: [3200, 0]", "at: [2000, 0]"}})), "cut-off-at-exit"), Subjects{});
  EXPECT_EQ(subjects(auditOf(shopWith({{"at: [3200, 0]", "at: [1999, 0]"}})), "cut-off-at-exit"),
            Subjects{"shop"});
}

// A cord of 6 m along the wall that begins beside the door is at the door, though its middle is not.
TEST(CutOffAtExit, OfACordTheNearestPointCounts) {
  const auto with = [](const std::string& length) {
    return subjects(auditOf(shopWith({{"kind: room-cut-off, at: [3200, 0], faces: 90",
                                       "kind: pull-cord, length: " + length + ", at: [400, 0], faces: 90"}})),
                    "cut-off-at-exit");
  };
  EXPECT_EQ(with("100"), Subjects{"shop"});
  EXPECT_EQ(with("3199"), Subjects{"shop"});
  EXPECT_EQ(with("3200"), Subjects{});  // its end at 2000, the opening's at 3500
}

TEST(CutOffAtExit, OneThatIsBlockedIsNone) {
  const Edit bin = before("machines:\n",
                          "fixtures:\n  - {id: bin, at: [3000, 400], footprint: {width: 900, depth: 800}}\n");
  EXPECT_EQ(subjects(auditOf(shopWith({bin})), "cut-off-at-exit"), Subjects{"shop"});
}

TEST(ExitWidth, DoorMayBeExactlyAsWide) {
  const auto with = [](const std::string& width) {
    return auditOf(shopWith({{"width: 1000}\nmachines", "width: " + width + "}\nmachines"}}));
  };
  EXPECT_EQ(subjects(with("711"), "exit-width"), Subjects{});
  EXPECT_EQ(subjects(with("710"), "exit-width"), (Subjects{"saw/operator", "drill/operator"}));
}

// Timber across the shop below both machines, with one gap.
std::string withGapToTheExit(double gap) {
  const double left = 4000 - gap / 2;
  const auto bar = [&](const char* id, double from, double to) {
    return "  - {id: " + std::string(id) + ", at: [" + std::to_string((from + to) / 2) +
           ", 2000], footprint: {width: " + std::to_string(to - from) + ", depth: 100}, height: 800}\n";
  };
  return shopWith(
      {before("machines:\n", "fixtures:\n" + bar("west", 0, left) + bar("east", left + gap, 8000))});
}

TEST(ExitWidth, WayMayBeExactlyAsWide) {
  EXPECT_EQ(subjects(auditOf(withGapToTheExit(711)), "exit-width"), Subjects{});
  EXPECT_EQ(subjects(auditOf(withGapToTheExit(710.9)), "exit-width"),
            (Subjects{"saw/operator", "drill/operator"}));
}

// A bench along the wall so near before the door, which is 1000 wide, that nobody of the width gets out: it
// is not to be stepped through.
std::string withBenchBeforeTheExit(double from_wall) {
  return shopWith(
      {before("machines:\n", "fixtures:\n  - {id: bench, at: [4000, " + std::to_string(from_wall + 150) +
                                 "], footprint: {width: 2600, depth: 300}, height: 900}\n")});
}

TEST(ExitWidth, ABenchBeforeTheDoorIsNotSteppedThrough) {
  EXPECT_EQ(subjects(auditOf(withBenchBeforeTheExit(300)), "exit-width"),
            (Subjects{"saw/operator", "drill/operator"}));
  EXPECT_EQ(subjects(auditOf(withBenchBeforeTheExit(715)), "exit-width"), Subjects{});
}

// Out through a wall of 200 mm to a yard; a crate so far before the door, out there.
std::string withYard(const std::string& fixtures) {
  return shopWith({before("doors:\n",
                          "  - {id: yard, name: Yard, outdoors: true, outline: [[0, -4200], [8000, -4200], "
                          "[8000, -200], [0, -200]]}\n"),
                   {"joins: [shop, outside]", "joins: [shop, yard]"},
                   before("machines:\n", "fixtures:\n" + fixtures)});
}
std::string crate(double x, double y, double width, double depth) {
  return "  - {id: crate-" + std::to_string(static_cast<int>(x - y)) + ", at: [" + std::to_string(x) + ", " +
         std::to_string(y) + "], footprint: {width: " + std::to_string(width) +
         ", depth: " + std::to_string(depth) + "}, height: 900}\n";
}

TEST(ExitWidth, WhatStandsInTheDoorwayOrBeyondItIsInTheWay) {
  const Subjects all{"saw/operator", "drill/operator"};
  const auto without = [](const std::string& fixtures) {
    return subjects(auditOf(withYard(fixtures)), "exit-width");
  };
  const std::string far_off = crate(7000, -3500, 400, 400);
  EXPECT_EQ(without(far_off), Subjects{});
  EXPECT_EQ(without(crate(4000, -100, 400, 100)), all);                // in the doorway
  EXPECT_EQ(without(crate(3600, -100, 180, 100)), Subjects{});         // there, and 711 mm are left
  EXPECT_EQ(without(crate(4000, -600, 2000, 800)), all);               // across the door, out in the yard
  EXPECT_EQ(without(crate(4000, -912 - 400, 2000, 800)), Subjects{});  // a body's width farther off
  EXPECT_EQ(without(crate(4000, 355, 2000, 700)), all);                // before the door, in the shop
}

// As docs/rules.md has it: 716 mm are left between its corner and the jamb, yet not straight before the door.
TEST(ExitWidth, ASlantingWayServesToAYardAndNotToWhatIsNotDrawn) {
  const std::string beside = crate(4600, 500, 800, 700);
  EXPECT_EQ(subjects(auditOf(withYard(beside)), "exit-width"), Subjects{});
  EXPECT_EQ(subjects(auditOf(shopWith({before("machines:\n", "fixtures:\n" + beside)})), "exit-width"),
            (Subjects{"saw/operator", "drill/operator"}));
}

TEST(ExitWidth, AYardIsDeeperThanTheLimit) {
  const auto with = [](int depth) {
    std::string text = withYard(crate(7000, 5000, 100, 100));
    const std::string deep = "-4200";
    for (std::size_t at; (at = text.find(deep)) != std::string::npos;)
      text.replace(at, deep.size(), std::to_string(-200 - depth));
    return subjects(auditOf(text), "exit-width");
  };
  EXPECT_EQ(with(710), (Subjects{"saw/operator", "drill/operator"}));
  EXPECT_EQ(with(714), Subjects{});
}

TEST(ExitWidth, WhatIsPushedBeforeTheDoorOutThereIsFollowed) {
  layout::Layout layout = layoutOf(withYard(crate(7000, -3000, 2000, 800)));
  Auditor auditor;
  for (const double y : {-3000.0, -600.0, -620.0, -3000.0, -700.0, -1300.0, -1312.0, -1320.0}) {
    layout.fixtures[0].at = {4000, y};
    const Report anew = audit(layout, files::bundledDeviceKinds(), defaultProfile(), floor::Hours::Open);
    EXPECT_EQ(
        subjects(auditor.audit(layout, files::bundledDeviceKinds(), defaultProfile(), floor::Hours::Open),
                 "exit-width"),
        subjects(anew, "exit-width"))
        << y;
    EXPECT_EQ(subjects(anew, "exit-width").empty(), y < -1311) << y;
  }
}

Report withTape(double taped) {
  return auditOf(shopWith(
      {before("...\n", "tape_checks:\n  - {id: tape, from: saw/operator, to: drill/operator, taped: " +
                           std::to_string(taped) + "}\n")}));
}

TEST(TapeDisagrees, OnlyBeyondBothLimits) {
  // 3.5 m apart: 5 % is 0.175 m.
  EXPECT_EQ(subjects(withTape(3675), "tape-disagrees"), Subjects{});
  EXPECT_EQ(subjects(withTape(3325), "tape-disagrees"), Subjects{});
  EXPECT_EQ(subjects(withTape(3676), "tape-disagrees"), Subjects{"tape"});
  EXPECT_EQ(subjects(withTape(3324), "tape-disagrees"), Subjects{"tape"});
}

// For each rule about a walk or a time: at what was measured it is met, a millimetre or millisecond below it
// is not.
class Measuring : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(Measuring, LimitIsMetExactlyAndBrokenJustBelow) {
  const auto [rule, subject] = GetParam();
  const std::string shop =
      shopWith({before("    devices:\n", "      - {id: helper, role: helper, at: [2200, -1500]}\n")});
  const auto with = [&](double limit) {
    return auditOf(shop, {std::string(rule) + "=" + std::to_string(limit)});
  };
  const Report all = with(0);
  const auto found = std::ranges::find_if(
      all.findings, [&](const Finding& f) { return f.rule == rule && f.subject == subject; });
  ASSERT_NE(found, all.findings.end());
  const double measured = found->measured.value_or(0);
  ASSERT_GT(measured, 0.1);
  EXPECT_FALSE(finds(with(measured + 1e-6), rule, subject));
  EXPECT_TRUE(finds(with(measured - 1e-3), rule, subject));
}
INSTANTIATE_TEST_SUITE_P(Rules, Measuring,
                         testing::Values(std::pair("stop-too-far", "saw/helper"),
                                         std::pair("phone-too-far", "drill/operator"),
                                         std::pair("cut-off-too-far", "drill/operator"),
                                         std::pair("helper-too-slow", "drill"),
                                         std::pair("slow-run-down", "saw")));

// Both seconds are told apart, and neither is the other's rounding.
TEST(CutOffLengthens, TellsTheTwoRunDownsApart) {
  const Report report = auditOf(shopWith(
      {{"run_down: 3", "run_down: 12"}, {"stops: [shop]", "stops: [shop], run_down: {saw: 12.04}"}}));
  EXPECT_NE(findingOf(report, "cut-off-lengthens")
                .text.find("runs on for 12.04 s after it, but only 12 s after its own stop"),
            std::string::npos)
      << findingOf(report, "cut-off-lengthens").text;
}

TEST(Counts, OfSeveralAreInTheirNumber) {
  const auto said = [](const std::string& rule, const std::string& limit) {
    return findingOf(auditOf(shopWith({}), {rule + "=" + limit}), rule).text;
  };
  EXPECT_EQ(said("no-stop", "3"), "Saw: only 2 devices stop this machine; the rule asks for at least 3.");
  EXPECT_EQ(said("no-emergency-stop", "3"),
            "Saw: of the devices that stop it, only 2 count as emergency stops; the rule asks for 3.");
  EXPECT_EQ(said("no-room-cut-off", "2"),
            "Shop: only 1 device stops every machine in the room (2); the rule asks for 2.");
  const std::string two = shopWith({before(
      "phones:\n",
      "  - {id: other, kind: room-cut-off, at: [5200, 0], faces: 90, height: 1200, stops: [shop]}\n")});
  EXPECT_EQ(findingOf(auditOf(two, {"no-room-cut-off=3"}), "no-room-cut-off").text,
            "Shop: only 2 devices stop every machine in the room (2); the rule asks for 3.");
}

}  // namespace
}  // namespace stopwalk::audit
