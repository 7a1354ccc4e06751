// What a shop manager and a safety engineer would say of cases beside the rules' middle: no false alarm,
// nothing missed.
#include "core/audit/wording.h"
#include "tests/core/audit/rule_cases.h"

namespace stopwalk::audit {
namespace {

const Edit kSawIsHandHeld = {"    run_down: 3\n", "    run_down: 3\n    hand_held: true\n"};
const Edit kSawHasTrigger = {"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                             "{id: trigger, kind: trigger, at: [0, 300]}"};
Edit sawHelper(const std::string& at) {
  return before("    devices:\n", "      - {id: helper, role: helper, at: " + at + "}\n");
}

TEST(Trigger, IsAtHandForItsHolderWhereverItIsDrawn) {
  const Report report = auditOf(shopWith({kSawHasTrigger}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::AtHand);
  EXPECT_EQ(stationOf(report, "saw/operator").stop.device, "saw/trigger");
  EXPECT_EQ(stationOf(report, "saw/operator").stop.walk_m, 0.0);
}

TEST(Trigger, CountsForNobodyElse) {
  const Report report = auditOf(shopWith({kSawHasTrigger, kCutOffOfDrillOnly, sawHelper("[1000, -710]")}));
  EXPECT_EQ(stationOf(report, "saw/helper").stop.status, Status::None);
  EXPECT_EQ(stationOf(report, "saw/helper").stop.device, "");
  EXPECT_TRUE(finds(report, "stop-too-far", "saw/helper"));
  EXPECT_EQ(stationOf(report, "saw/helper").verdict, Verdict::Fails);
}

TEST(Trigger, MayBeHeldByTheStationsNamed) {
  const Edit held = {"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                     "{id: trigger, kind: trigger, at: [0, 0], held_at: [helper]}"};
  const Report report = auditOf(shopWith({held, kCutOffOfDrillOnly, sawHelper("[1000, -710]")}));
  EXPECT_EQ(stationOf(report, "saw/helper").stop.status, Status::AtHand);
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::None);
}

TEST(HandHeldMachine, IsStoppedByItsTriggerOnly) {
  const Report report = auditOf(shopWith({kSawIsHandHeld}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::None);
  EXPECT_TRUE(finds(report, "no-stop", "saw"));
}

TEST(HandHeldMachine, WithItsTriggerIsInOrder) {
  const Report report = auditOf(shopWith({kSawIsHandHeld, kSawHasTrigger, sawHelper("[1000, -710]")}));
  EXPECT_EQ(report.findings.size(), 0u);
}

TEST(GuardedStart, IsNoStop) {
  const Report report = auditOf(shopWith({kSawStopIsNone}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.device, "cut-off");
  EXPECT_EQ(subjects(report, "blocked-device"), Subjects{});
}

TEST(NoEmergencyStop, DeviceMaySayThatItIsOne) {
  const auto with = [](const std::string& emergency) {
    return auditOf(shopWith(
        {{"kind: mushroom-button, at: [0, -400]", "kind: horizontal-switch, at: [0, -400]" + emergency},
         kCutOffOfDrillOnly}));
  };
  EXPECT_TRUE(finds(with(""), "no-emergency-stop", "saw"));
  EXPECT_FALSE(finds(with(", emergency: true"), "no-emergency-stop", "saw"));
}

TEST(StopOutOfReach, HazardBetweenIsNotReachedAcross) {
  const Edit hazard = {
      "    run_down: 3\n",
      "    run_down: 3\n    hazard: [[-100, -550], [100, -550], [100, -450], [-100, -450]]\n"};
  const Report report = auditOf(shopWith({hazard}));
  EXPECT_TRUE(finds(report, "stop-out-of-reach", "saw/operator"));
  EXPECT_NE(findingOf(report, "stop-out-of-reach").text.find("crosses a hazard outline"), std::string::npos);
}

TEST(StopOutOfReach, SaysThatAStopFacesTheOtherWay) {
  const auto said = [](const std::string& faces) {
    const Edit post = before("phones:\n", "  - {id: post, kind: mushroom-button, at: [2300, 3290], faces: " + faces +
                                              ", height: 1000, stops: [saw]}\n");
    return auditOf(shopWith({kSawStopIsNone, kCutOffOfDrillOnly, post}));
  };
  EXPECT_EQ(subjects(said("180"), "stop-out-of-reach"), Subjects{});
  EXPECT_NE(findingOf(said("0"), "stop-out-of-reach").text.find("is only 0.3 m away, but faces the other way;"),
            std::string::npos)
      << findingOf(said("0"), "stop-out-of-reach").text;
}

TEST(StopOutOfReach, OnlyOperatorsMustHaveOneAtHand) {
  EXPECT_FALSE(finds(auditOf(shopWith({sawHelper("[1500, -710]")})), "stop-out-of-reach", "saw/helper"));
}

// A house may let its operators rely on stops a few metres off. None at all is another matter.
TEST(StopTooFar, NamesTheOperatorWithoutAnyStopWhereReachIsNotAsked) {
  const auto with = [](const std::string& house) {
    const layout::Layout layout = layoutOf(shopWith({kSawStopIsNone, kCutOffOfDrillOnly}));
    const Rule& reach = *findRule("stop-out-of-reach");
    Profile profile = defaultProfile();
    if (house == "off") profile.of(reach).on = false;
    if (house == "note") profile.of(reach).severity = Severity::Note;
    return audit(layout, files::bundledDeviceKinds(), profile, floor::Hours::Open);
  };
  EXPECT_FALSE(finds(with("as it is"), "stop-too-far", "saw/operator"));
  EXPECT_EQ(stationOf(with("as it is"), "saw/operator").verdict, Verdict::Fails);
  for (const std::string house : {"off", "note"}) {
    EXPECT_TRUE(finds(with(house), "stop-too-far", "saw/operator")) << house;
    EXPECT_EQ(stationOf(with(house), "saw/operator").verdict, Verdict::Fails) << house;
    EXPECT_FALSE(finds(with(house), "stop-too-far", "drill/operator")) << house;
  }
}

TEST(StopTooFar, NamesTheOperatorOfATriggerThatAnotherHoldsWhereReachIsNotAsked) {
  const Edit held = {"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                     "{id: trigger, kind: trigger, at: [0, 0], held_at: [helper]}"};
  const layout::Layout layout = layoutOf(shopWith({held, kCutOffOfDrillOnly, sawHelper("[1000, -710]")}));
  Profile profile = defaultProfile();
  profile.of(*findRule("stop-out-of-reach")).on = false;
  const Report report = audit(layout, files::bundledDeviceKinds(), profile, floor::Hours::Open);
  EXPECT_EQ(subjects(report, "stop-too-far"), Subjects{"saw/operator"});
}

// A full class in a store, none of whom gets to a stop of the saw; in the office one is near its cut-off as the
// crow flies, behind a screen, another is nearer to walk.
TEST(HelperTooSlow, IsTheQuickestHoweverManyAskedBeforeHaveNoWay) {
  std::string pupils;
  for (int i = 0; i < 40; ++i)
    pupils += "      - {id: p" + std::to_string(i) + ", role: helper, at: [" + std::to_string(700 * (i % 8)) + ", " +
              std::to_string(-700 - 700 * (i / 8)) + "]}\n";
  const std::string shop = R"(stopwalk_layout: 1
units: mm
site: {name: Two rooms}
rooms:
  - {id: store, outline: [[0, 0], [10000, 0], [10000, 8000], [0, 8000]]}
  - {id: office, outline: [[20000, 0], [30000, 0], [30000, 8000], [20000, 8000]]}
fixtures:
  - {id: bin, at: [1500, 6300], footprint: {width: 2000, depth: 1000}}
  - {id: screen, at: [25600, 2000], footprint: {width: 20, depth: 4000}}
machines:
  - id: saw
    name: Saw
    at: [1500, 7300]
    footprint: {width: 1000, depth: 1000}
    stations: [{id: operator, role: operator, at: [-900, -2500]}]
    devices: [{id: stop, kind: mushroom-button, at: [0, -500], height: 1000}]
  - id: tables
    name: Tables
    at: [3500, 6000]
    footprint: {width: 500, depth: 500}
    stations:
)" + pupils + R"(
  - id: desk
    name: Desk
    at: [28000, 7000]
    footprint: {width: 1000, depth: 800}
    stations: [{id: near, role: helper, at: [-1800, -6550]}, {id: quick, role: instructor, at: [-3000, -4550]}]
devices:
  - {id: cut-off, kind: room-cut-off, at: [25000, 0], faces: 90, height: 1200, stops: [saw]}
phones:
  - {id: phone, at: [0, 3000], faces: 0, height: 1200}
...
)";
  const Report report = auditOf(shop, {"helper-too-slow=0.1"});
  ASSERT_TRUE(finds(report, "helper-too-slow", "saw"));
  EXPECT_NE(findingOf(report, "helper-too-slow").text.find("(Desk, instructor)"), std::string::npos)
      << findingOf(report, "helper-too-slow").text;
  EXPECT_NEAR(findingOf(report, "helper-too-slow").measured.value_or(0), 1.5 + 2 / 1.067, 1e-3);
}

// Whoever sets the saw up does so when nobody works at it.
TEST(HelperTooSlow, ASetterOfTheSameMachineIsNobodysHelper) {
  const auto with = [](const std::string& role) {
    const Edit second = before("    devices:\n", "      - {id: second, role: " + role + ", at: [300, -710]}\n");
    return findingOf(auditOf(shopWith({second}), {"helper-too-slow=0.1"}), "helper-too-slow").text;
  };
  EXPECT_NE(with("helper").find("(Saw, helper)"), std::string::npos);
  EXPECT_NE(with("instructor").find("(Saw, instructor)"), std::string::npos);
  EXPECT_NE(with("setter").find("(Drill, operator)"), std::string::npos);
}

TEST(HelperTooSlow, HoldsATriggerWhereverItIsDrawn) {
  const Edit held = {"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                     "{id: trigger, kind: trigger, at: [0, 300], held_at: [operator, helper]}"};
  const Report report = auditOf(shopWith({held, sawHelper("[5700, -3000]")}), {"helper-too-slow=0.1"});
  EXPECT_NEAR(findingOf(report, "helper-too-slow").measured.value_or(0), 1.5 + 3, 1e-9);
}

// A store behind a wall of 900 mm, whose doorway people stand in by day.
const Edit kStoreBehindADoorway = before(
    "doors:\n", "  - {id: store, name: Store, outline: [[8900, 0], [12000, 0], [12000, 6000], [8900, 6000]]}\n");
const Edit kDoorway = before(
    "machines:\n", "  - {id: deep, joins: [shop, store], at: [8000, 3000], width: 1000, locked: after-hours}\n");

TEST(TapeDisagrees, AskedAfterHoursADeviceIsUsedFromWhereItIsByDay) {
  const Edit on_jamb = before(
      "phones:\n", "  - {id: jamb, kind: isolator, at: [8090, 2500], faces: 90, height: 1200, stops: [drill]}\n");
  const Edit tape = before(
      "...\n", "tape_checks:\n  - {id: t1, from: drill/operator, to: jamb, taped: 2612, date: 2026-03-02, by: Ada Example}\n");
  const std::string shop = shopWith({kStoreBehindADoorway, kDoorway, on_jamb, tape});
  for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After}) {
    const Report report = auditOf(shop, {}, hours);
    EXPECT_EQ(subjects(report, "tape-disagrees"), Subjects{}) << word(hours);
    EXPECT_EQ(finds(report, "blocked-device", "jamb"), hours == floor::Hours::After);
  }
}

TEST(PhoneAfterHours, IsLostByWhoeverStandsInADoorwayThatIsShutThen) {
  const std::string shop = shopWith({kStoreBehindADoorway, kDoorway, sawHelper("[6450, -1000]")});
  for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After}) {
    const Report report = auditOf(shop, {}, hours);
    EXPECT_EQ(subjects(report, "phone-after-hours"), Subjects{"saw/helper"}) << word(hours);
    EXPECT_NE(findingOf(report, "phone-after-hours").text.find("doorway that is shut after hours"), std::string::npos);
  }
}

TEST(StationOffTheFloor, IsAFaultAndNotMeasured) {
  const Report report = auditOf(shopWith({{"role: operator, at: [0, -710]", "role: operator, at: [0, 0]"}}));
  const StationReport& s = stationOf(report, "saw/operator");
  EXPECT_EQ(s.stop.status, Status::Unmeasured);
  EXPECT_EQ(s.phone.status, Status::Unmeasured);
  EXPECT_EQ(s.stop.walk_m, std::nullopt);
  EXPECT_EQ(s.stop.seconds, std::nullopt);
  EXPECT_TRUE(finds(report, "drawing-fault", "saw/operator"));
  EXPECT_FALSE(finds(report, "stop-out-of-reach", "saw/operator"));
  EXPECT_EQ(s.verdict, Verdict::Fails);
}

TEST(Phone, NoneAtAllIsTooFarForEveryone) {
  const std::string shop =
      shopWith({{"phones:\n  - {id: phone, name: Phone, at: [0, 3000], faces: 0, height: 1200}\n", ""}});
  const Report report = auditOf(shop);
  EXPECT_EQ(subjects(report, "phone-too-far"), (Subjects{"saw/operator", "drill/operator"}));
  EXPECT_EQ(findingOf(report, "phone-too-far").measured, std::nullopt);
  EXPECT_EQ(stationOf(report, "saw/operator").phone.status, Status::None);
}

TEST(Phone, UnreachableIsNeitherZeroNorALargeNumber) {
  const Report report = auditOf(shopWith({kWithStore, kPhoneInStore}));
  const Nearest& phone = stationOf(report, "saw/operator").phone;
  EXPECT_EQ(phone.status, Status::Unreachable);
  EXPECT_EQ(phone.device, "");
  EXPECT_EQ(phone.walk_m, std::nullopt);
  EXPECT_EQ(phone.clear_width_m, std::nullopt);
  EXPECT_EQ(subjects(report, "phone-too-far"), Subjects{});
}

TEST(NarrowPassage, GivesTheClearWidth) {
  const Report report = auditOf(shopWith({kGap590}));
  const Nearest& phone = stationOf(report, "saw/operator").phone;
  EXPECT_EQ(phone.status, Status::Narrow);
  EXPECT_DOUBLE_EQ(phone.clear_width_m.value_or(0), 0.59);
  EXPECT_DOUBLE_EQ(findingOf(report, "narrow-passage").measured.value_or(0), 0.59);
}

TEST(BlockedDevice, IsNotReportedWhereSomebodyHasItAtHand) {
  // A shelf where one would come to from afar to use the stop of the saw; its operator stands between.
  const Edit shelf = before(
      "machines:\n",
      "fixtures:\n  - {id: shelf, at: [2000, 2800], footprint: {width: 3000, depth: 700}, height: 900}\n");
  const Report report = auditOf(shopWith({shelf}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::AtHand);
  EXPECT_EQ(subjects(report, "blocked-device"), Subjects{});
}

TEST(LookAlike, OneThatStopsThisMachineTooIsNone) {
  const Edit post = before("  - {id: cut-off",
                           "  - {id: post, kind: mushroom-button, at: [2300, 3290], faces: 180, height: "
                           "1000, stops: [drill, saw]}\n");
  EXPECT_EQ(subjects(auditOf(shopWith({post})), "look-alike"), Subjects{});
}

TEST(LookAlike, NearerToWalkToThanTheOwnStop) {
  const Edit post = before(
      "  - {id: cut-off",
      "  - {id: post, kind: mushroom-button, at: [3300, 3290], faces: 180, height: 1000, stops: [drill]}\n");
  const Report report = auditOf(shopWith({kSawStopIsNone, post}));
  EXPECT_TRUE(finds(report, "look-alike", "saw/operator"));
  EXPECT_DOUBLE_EQ(findingOf(report, "look-alike").measured.value_or(0), 0.85);  // 3300 - 450 - 2000
  EXPECT_EQ(subjects(auditOf(shopWith({post})), "look-alike"), Subjects{});      // the own stop is at hand
}

TEST(HelperTooSlow, HelperAtTheSameMachineCounts) {
  const std::vector<Edit> slow = {{"run_down: 3", "run_down: 12"}};
  EXPECT_TRUE(finds(auditOf(shopWith(slow)), "helper-too-slow", "saw"));
  EXPECT_FALSE(finds(auditOf(shopWith({slow[0], sawHelper("[400, -710]")}), {"standing-conflict=0.3"}),
                     "helper-too-slow", "saw"));
}

TEST(HelperTooSlow, SecondsAreReactionWalkAndRunDown) {
  // From the drill's operator straight along y = 3290 to the saw's standing place at (2000, 3150), past
  // nothing.
  const Report report = auditOf(kShop, {"helper-too-slow=0"});
  const double walk_m = std::hypot(3.5, 0.14);
  EXPECT_NEAR(findingOf(report, "helper-too-slow").measured.value_or(0), 1.5 + walk_m / 1.067 + 3, 1e-6);
}

TEST(HelperTooSlow, IsSaidWhereNobodyElseCanStopIt) {
  const Report report = auditOf(shopWith({kSawHasTrigger, kCutOffOfDrillOnly}));
  EXPECT_TRUE(finds(report, "helper-too-slow", "saw"));
  EXPECT_EQ(findingOf(report, "helper-too-slow").measured, std::nullopt);
}

// Forty machines and their operators in the shop, the saw shut away in the store with nobody else.
TEST(HelperTooSlow, IsSaidWhereManyAreNearAndNoneHasAWay) {
  std::string crowd;
  for (int i = 0; i < 40; ++i)
    crowd += "  - {id: m" + std::to_string(i) + ", at: [" + std::to_string(500 + 700 * (i % 10)) + ", " +
             std::to_string(900 + 1200 * (i / 10)) +
             "], footprint: {width: 100, depth: 100}, stations: [{id: op, role: operator, at: [0, -400]}]}\n";
  const std::string shop = shopWith({kWithStore,
                                     {"at: [2000, 4000]", "at: [10000, 4000]"},
                                     kCutOffOfDrillOnly,
                                     {"at: [5500, 4000]", "at: [7500, 5500]"},
                                     before("devices:\n  - {id: cut-off", crowd)});
  const Report report = auditOf(shop);
  const auto saw = std::ranges::find_if(
      report.findings, [](const Finding& f) { return f.rule == "helper-too-slow" && f.subject == "saw"; });
  ASSERT_NE(saw, report.findings.end());
  EXPECT_EQ(saw->measured, std::nullopt);
}

TEST(StandingConflict, SetterTakesTurnsWithTheOperator) {
  const Edit setter = before("    devices:\n", "      - {id: setter, role: setter, at: [500, -710]}\n");
  EXPECT_EQ(subjects(auditOf(shopWith({setter})), "standing-conflict"), Subjects{});
}

TEST(StandingConflict, InFrontOfTheExitIsInTheWay) {
  const Report report =
      auditOf(shopWith({sawHelper("[2000, -3800]")}));  // (4000, 200), the door is at (4000, 0)
  EXPECT_TRUE(finds(report, "standing-conflict", "saw/helper"));
}

TEST(StandingConflict, WallBetweenKeepsThemApart) {
  const Edit machine = before("devices:\n  - {id: cut-off",
                              "  - id: press\n    at: [8700, 3300]\n    turn: 270\n    footprint: {width: "
                              "400, depth: 400}\n    run_down: 1\n"
                              "    stations:\n      - {id: operator, role: operator, at: [0, -400]}\n");
  const std::string shop =
      shopWith({kWithStore, {"role: operator, at: [0, -710]", "role: operator, at: [5800, -710]"}, machine});
  EXPECT_EQ(subjects(auditOf(shop), "standing-conflict"), Subjects{});
}

TEST(IncompleteRecord, NamesWhatIsUnknown) {
  const Report report = auditOf(shopWith({{"    run_down: 3\n", ""}}));
  EXPECT_EQ(subjects(report, "incomplete-record"), Subjects{"saw"});
  const Nearest& stop = stationOf(report, "saw/operator").stop;
  EXPECT_EQ(stop.run_down_s, std::nullopt);
  EXPECT_DOUBLE_EQ(stop.seconds.value_or(0), 1.5);
  EXPECT_TRUE(finds(auditOf(shopWith({{"stops: [shop]", "stops: []"}})), "incomplete-record", "cut-off"));
}

TEST(PhoneAfterHours, LeavesThoseAloneWhoKeepTheirs) {
  const Edit door =
      before("machines:\n",
             "  - {id: side, joins: [shop, outside], at: [0, 5000], width: 1000, locked: after-hours}\n");
  EXPECT_EQ(subjects(auditOf(shopWith({door})), "phone-after-hours"), Subjects{});
}

TEST(DeviceOfARoom, StopsEveryMachineWhoseOriginIsInIt) {
  const Report report = auditOf(shopWith({kSawStopIsNone, kWithStore, {"stops: [shop]", "stops: [store]"}}));
  EXPECT_EQ(stationOf(report, "saw/operator").stop.status, Status::None);
  EXPECT_TRUE(finds(report, "no-room-cut-off", "shop"));
}

TEST(Ties, GoToTheOrderOfTheText) {
  const Edit twin = {
      "  - {id: cut-off, kind: room-cut-off, at: [3200, 0], faces: 90, height: 1200, stops: [shop]}\n",
      "  - {id: b, kind: room-cut-off, at: [3200, 0], faces: 90, height: 1200, stops: [shop]}\n"
      "  - {id: a, kind: room-cut-off, at: [3200, 0], faces: 90, height: 1200, stops: [shop]}\n"};
  EXPECT_EQ(stationOf(auditOf(shopWith({kSawStopIsNone, twin})), "saw/operator").stop.device, "b");
}

TEST(Findings, StandWorstFirstThenByRoomAndThing) {
  const Report report = auditOf(shopWith(
      {{"height: 1000", "height: 1800"}, {"height: 1001", "height: 1801"}, {"run_down: 3", "run_down: 11"}}));
  std::vector<std::pair<std::string, std::string>> order;
  for (const Finding& f : report.findings) order.emplace_back(f.rule, f.subject);
  const std::vector<std::pair<std::string, std::string>> expected = {
      {"actuator-height", "saw/stop"},
      {"actuator-height", "drill/stop"},
      {"slow-run-down", "saw"},
      {"actuator-height-access", "saw/stop"},
      {"actuator-height-access", "drill/stop"}};
  std::erase_if(order, [](const auto& f) { return f.first == "helper-too-slow"; });
  EXPECT_EQ(order, expected);
}

}  // namespace
}  // namespace stopwalk::audit
