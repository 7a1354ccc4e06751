#include "core/audit/accepted.h"

#include <gtest/gtest.h>

#include "tests/core/audit/shop.h"

namespace stopwalk::audit {
namespace {

Finding finding(std::string rule, std::string subject) {
  Finding f;
  f.rule = std::move(rule);
  f.subject = std::move(subject);
  return f;
}

Finding oneOf(std::string rule, std::string subject, std::string which) {
  Finding f = finding(std::move(rule), std::move(subject));
  f.which = std::move(which);
  return f;
}

const layout::AcceptedFinding kAccepted{"hidden-stop", "saw",        "", "the screen moves in May",
                                        "A. Tester",   "2027-05-31", {}};

TEST(Accepted, MarksOnlyTheFindingOfThatRuleAndSubject) {
  SharedList<Finding> findings{finding("hidden-stop", "saw"), finding("hidden-stop", "drill"),
                               finding("no-stop", "saw")};
  markAccepted(findings, {kAccepted});
  ASSERT_TRUE(findings[0].accepted);
  EXPECT_EQ(acceptedText(*findings[0].accepted),
            "accepted by A. Tester until 2027-05-31: the screen moves in May");
  EXPECT_FALSE(findings[1].accepted);
  EXPECT_FALSE(findings[2].accepted);
}

TEST(Accepted, AfterItsLastDayIsNoLonger) {
  const auto on = [](const std::string& until, const std::string& today) {
    return acceptedText(Acceptance{"on order", "Ada Example", until}, *inspection::parseDate(today));
  };
  EXPECT_EQ(on("2026-12-31", "2026-12-31"), "accepted by Ada Example until 2026-12-31: on order");
  EXPECT_EQ(on("2026-12-31", "2027-01-01"),
            "no longer accepted: the last day has passed; it was accepted by Ada Example until 2026-12-31: "
            "on order");
  for (const std::string until : {"soon", "2026-02-30", ""})
    EXPECT_TRUE(on(until, "2026-01-01")
                    .starts_with("no longer accepted: its last day cannot be read: a day such as "))
        << until;
}

// It comes back under a `which` that the acceptance does not say.
TEST(Accepted, WhatIsIdleAndSaysNotWhichIsNotAcceptedAgain) {
  const inspection::Date today = *inspection::parseDate("2026-06-01");
  for (const char* rule : {"hidden-stop", "look-alike", "failed-check", "cut-off-at-exit"}) {
    layout::AcceptedFinding idle{rule, "saw/operator", "", "on order", "Ada Example", "2026-12-31", {}};
    EXPECT_EQ(idleState(idle, today), AcceptedState::Unclear) << rule;
    SharedList<Finding> back{oneOf(rule, "saw/operator", "cut-off")};
    markAccepted(back, {idle});
    EXPECT_EQ(acceptedState(back[0], today), AcceptedState::Unclear) << rule;
    idle.which = "cut-off";
    EXPECT_EQ(idleState(idle, today), AcceptedState::Yes) << rule;
  }
}

// Of a finding of 9.8 m where 5 is the limit, unless said otherwise.
struct Figures {
  std::optional<double> accepted, now;
  std::optional<double> limit = 5;
  std::string unit = "m";
  std::string rule = "stop-too-far";
};

Finding findingOf(const Figures& m) {
  Finding f = finding(m.rule, "saw/helper");
  f.measured = m.now, f.limit = m.limit, f.unit = m.unit;
  f.accepted = Acceptance{"on order", "Ada Example", "2026-12-31", m.accepted};
  return f;
}

AcceptedState stateOf(const Figures& m) {
  return acceptedState(findingOf(m), *inspection::parseDate("2026-06-01"));
}

TEST(Accepted, IsNoLongerWhatHasGrownWorse) {
  using enum AcceptedState;
  EXPECT_EQ(stateOf({5.2, 9.8}), Worse);
  EXPECT_EQ(stateOf({5.2, 5.2}), Yes);
  EXPECT_EQ(stateOf({5.2, 5.1}), Yes) << "better";
  EXPECT_EQ(stateOf({5.2, 5.2049}), Yes) << "people are told 5.2 m";
  EXPECT_EQ(stateOf({5.2, 5.21}), Worse);
  EXPECT_EQ(stateOf({std::nullopt, 9.8}), Yes) << "whatever is measured";
  EXPECT_EQ(stateOf({5.2, std::nullopt}), Worse) << "it may be anything";
  EXPECT_EQ(stateOf({16.0, 16.04, 15, "s", "helper-too-slow"}), Yes);
  EXPECT_EQ(stateOf({16.0, 16.1, 15, "s", "helper-too-slow"}), Worse);
  // Where less is worse.
  EXPECT_EQ(stateOf({0.6, 0.56, 0.61, "m", "narrow-passage"}), Worse);
  EXPECT_EQ(stateOf({0.56, 0.6, 0.61, "m", "narrow-passage"}), Yes);
  // Out of the band on either side.
  EXPECT_EQ(stateOf({1.8, 0.5, 0.6, "m", "actuator-height"}), Worse);
  EXPECT_EQ(stateOf({0.5, 1.8, 1.7, "m", "actuator-height"}), Worse);
  // A short walk to what is not at hand is within the reach.
  EXPECT_EQ(stateOf({0.7, 0.8, 0.65, "m", "stop-out-of-reach"}), Worse);
  EXPECT_EQ(stateOf({0.8, 0.7, 0.65, "m", "stop-out-of-reach"}), Yes);
  EXPECT_EQ(stateOf({0.4, 0.3, std::nullopt, "m", "look-alike"}), Worse) << "no limit says which is worse";
}

TEST(Accepted, SaysHowMuchWorseItIs) {
  const auto on = [](const Figures& m, const std::string& today) {
    return acceptedText(findingOf(m), *inspection::parseDate(today), layout::LengthUnit::Millimetre);
  };
  EXPECT_EQ(
      on({5.2, 9.8}, "2026-06-01"),
      "no longer accepted: accepted at 5.2 m, now 9.8 m; it was accepted by Ada Example until 2026-12-31: "
      "on order");
  EXPECT_NE(on({5.2, std::nullopt}, "2026-06-01").find("accepted at 5.2 m, now without a figure"),
            std::string::npos);
  EXPECT_NE(on({5.2, 9.8}, "2027-01-01").find("the last day has passed"), std::string::npos);
  EXPECT_EQ(on({5.2, 5.1}, "2026-06-01"), "accepted by Ada Example until 2026-12-31: on order");
}

TEST(Accepted, IsHeldAgainstTheFigureInTheLayout) {
  const auto state = [](const std::string& figure) {
    const Report report = auditOf(
        shopWith({{"at: [0, -400], height: 1000}", "at: [0, -400], height: 1000, run_down: 30}"},
                  {"stops: [shop]", "stops: [shop], run_down: 30"},
                  before("rooms:",
                         "accepted_findings:\n  - {rule: slow-run-down, subject: saw, which: \"saw/stop, "
                         "cut-off\", " +
                             figure + "reason: Invented, by: Ada Example, until: 2026-12-31}\n")}));
    return acceptedState(audit::findingOf(report, "slow-run-down"), *inspection::parseDate("2026-06-01"));
  };
  EXPECT_EQ(state(""), AcceptedState::Yes);
  EXPECT_EQ(state("measured: 30, "), AcceptedState::Yes);
  EXPECT_EQ(state("measured: 12.5, "), AcceptedState::Worse);
}

TEST(Accepted, OfSeveralFindingsOnlyTheOneThatIsMeant) {
  SharedList<Finding> findings{oneOf("hidden-stop", "saw", "bar"), oneOf("hidden-stop", "saw", "cord")};
  layout::AcceptedFinding meant = kAccepted;
  meant.which = "cord";
  markAccepted(findings, {meant});
  EXPECT_FALSE(findings[0].accepted || findings[0].unclear);
  EXPECT_TRUE(findings[1].accepted);

  meant.which = "paddle";
  markAccepted(findings, {meant});
  EXPECT_FALSE(findings[0].accepted || findings[1].accepted);
  EXPECT_EQ(notNeeded({meant}, findings).size(), 1u);
}

TEST(Accepted, ACheckByItsDayAloneIsUnclear) {
  SharedList<Finding> findings{oneOf("failed-check", "saw/bar", "(check 12, 2026-03-02)")};
  layout::AcceptedFinding of_the_day = kAccepted;
  of_the_day.rule = "failed-check", of_the_day.subject = "saw/bar", of_the_day.which = "2026-03-02";
  markAccepted(findings, {of_the_day});
  EXPECT_FALSE(findings[0].accepted);
  EXPECT_TRUE(findings[0].unclear);
}

// All faults of a door were called the same once.
TEST(Accepted, AFaultOfADoorByItsOldWordIsUnclear) {
  SharedList<Finding> findings{oneOf("drawing-fault", "d1", "(too wide)"),
                               oneOf("drawing-fault", "cut-off", "(wall)"),
                               oneOf("drawing-fault", "d1", "d2")};
  layout::AcceptedFinding once = kAccepted;
  once.rule = "drawing-fault", once.which = "(wall)";
  layout::AcceptedFinding device = once;
  once.subject = "d1", device.subject = "cut-off";
  markAccepted(findings, {once, device});
  EXPECT_TRUE(!findings[0].accepted && findings[0].unclear);
  EXPECT_TRUE(findings[1].accepted);
  EXPECT_FALSE(findings[2].accepted || findings[2].unclear) << "another door over it";
}

// Who let a stop stand that is too far did not let stand that there is none.
TEST(Accepted, NoStopAtAllIsAnotherFindingThanOneTooFar) {
  SharedList<Finding> findings{oneOf("stop-too-far", "saw/helper", "(none)")};
  layout::AcceptedFinding too_far = kAccepted;
  too_far.rule = "stop-too-far", too_far.subject = "saw/helper";
  markAccepted(findings, {too_far});
  EXPECT_FALSE(findings[0].accepted);
  EXPECT_TRUE(findings[0].unclear);
}

TEST(Accepted, WithoutSayingWhichOfSeveralAcceptsNoneAndSaysSo) {
  SharedList<Finding> findings{oneOf("hidden-stop", "saw", "bar"), oneOf("hidden-stop", "saw", "cord")};
  markAccepted(findings, {kAccepted});
  for (const Finding& f : findings) {
    EXPECT_FALSE(f.accepted);
    ASSERT_TRUE(f.unclear);
    EXPECT_EQ(
        unclearText(f),
        "not accepted: what A. Tester accepts until 2027-05-31 may be this finding or another of this rule "
        "about saw; to accept this one, the layout must say which: \"" +
            f.which + "\"");
  }
  EXPECT_TRUE(notNeeded({kAccepted}, findings).empty());

  layout::AcceptedFinding meant = kAccepted;
  meant.which = "bar";
  markAccepted(findings, {kAccepted, meant});
  EXPECT_TRUE(findings[0].accepted && !findings[0].unclear);
  EXPECT_TRUE(!findings[1].accepted && findings[1].unclear);

  findings.erase(1);
  markAccepted(findings, {kAccepted});
  EXPECT_TRUE(!findings[0].accepted && findings[0].unclear) << "alone today; tomorrow it may be another";
}

const std::string kNoWay =
    "accepted_findings:\n  - {rule: unreachable, subject: saw/operator, reason: Invented, by: Ada Example, "
    "until: 2027-12-31}\n";

std::vector<std::string> saidOf(const Report& report, const std::string& rule) {
  std::vector<std::string> said;
  for (const Finding& f : report.findings)
    if (f.rule == rule) said.push_back(f.which + (f.accepted ? " accepted" : f.unclear ? " unclear" : ""));
  return said;
}

// Accepted while no way led to the phone; then that is mended, and none leads to the stop any more.
TEST(Accepted, OfOneMatterIsNotOfTheNextOfTheSameRule) {
  const std::vector<Edit> no_phone = {
      {"phone, name: Phone, at: [0, 3000]", "phone, name: Phone, at: [-90, -90]"}};
  const std::vector<Edit> no_stop = {{"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                                      "{id: stop, kind: mushroom-button, at: [0, 9000], height: 1000}"},
                                     {"stops: [shop]", "stops: [drill]"}};
  const auto said = [](const std::string& which, const std::vector<Edit>& edits) {
    const std::string accepting = shopWith({before("rooms:", kNoWay), {"reason:", which + "reason:"}});
    return saidOf(auditOf(shopWith(edits, accepting)), "unreachable");
  };
  using Said = std::vector<std::string>;
  EXPECT_EQ(said("", no_phone).front(), "(phone) unclear");
  EXPECT_EQ(said("", no_stop), Said{"(stop) unclear"});
  EXPECT_EQ(said("which: (phone), ", no_phone).front(), "(phone) accepted");
  EXPECT_EQ(said("which: (phone), ", no_stop), Said{"(stop)"});
  EXPECT_EQ(said("which: phone, ", no_phone).front(), "(phone) unclear") << "as it was once written";
}

TEST(Accepted, OfAFailedCheckOnlyThatCheck) {
  const auto said = [](const std::string& which, std::size_t check) {
    const std::string text =
        shopWith({before("rooms:", "accepted_findings:\n  - {rule: failed-check, subject: saw/stop, " +
                                       which + "reason: Invented, by: Ada Example, until: 2027-12-31}\n")});
    const std::vector<inspection::FailedDevice> failed = {
        {"saw/stop", *inspection::parseDate("2026-03-02"), check, "Ada Example"}};
    return saidOf(auditOf(text, {}, floor::Hours::Open, failed), "failed-check").front();
  };
  const std::string seven = "which: \"(check 7, 2026-03-02)\", ";
  EXPECT_EQ(said("", 7), "(check 7, 2026-03-02) unclear");
  EXPECT_EQ(said(seven, 7), "(check 7, 2026-03-02) accepted");
  EXPECT_EQ(said(seven, 9), "(check 9, 2026-03-02)") << "on the same day";
  EXPECT_EQ(said("which: 2026-03-02, ", 7), "(check 7, 2026-03-02) unclear") << "as it was named once";
}

// Between braces too, where a comma would part it.
TEST(Accepted, TheLineThatIsToldIsOneToWrite) {
  const std::string slow =
      shopWith({{"at: [0, -400], height: 1000}", "at: [0, -400], height: 1000, run_down: 30}"},
                {"stops: [shop]", "stops: [shop], run_down: 30"}});
  const Report report = auditOf(slow);
  const Finding& f = findingOf(report, "slow-run-down");
  ASSERT_EQ(f.which, "saw/stop, cut-off");
  const std::string accepted = "accepted_findings:\n  - {rule: slow-run-down, subject: saw, " + whichLine(f) +
                               ", reason: Invented, by: Ada Example, until: 2027-12-31}\n";
  EXPECT_TRUE(findingOf(auditOf(shopWith({before("rooms:", accepted)}, slow)), "slow-run-down").accepted);
}

// One cut-off, after which two machines run on for longer: two matters.
TEST(Accepted, OfOneDeviceAndTwoMachinesOneIsAccepted) {
  const auto accepting = [](const std::string& which) {
    const Report report = auditOf(
        shopWith({{"stops: [shop]", "stops: [shop], run_down: 5"},
                  before("rooms:", "accepted_findings:\n  - {rule: cut-off-lengthens, subject: cut-off, " +
                                       which + "reason: Invented, by: Ada Example, until: 2027-12-31}\n")}));
    std::vector<std::string> of;
    for (const Finding& f : report.findings)
      if (f.rule == "cut-off-lengthens")
        of.push_back(f.which + (f.accepted ? " is accepted" : f.unclear ? " is unclear" : ""));
    return of;
  };
  EXPECT_EQ(accepting("which: drill, "), (std::vector<std::string>{"saw", "drill is accepted"}));
  EXPECT_EQ(accepting(""), (std::vector<std::string>{"saw is unclear", "drill is unclear"}));
}

// One that fails, and what is found of it.
class AcceptedStation : public testing::Test {
 protected:
  AcceptedStation() {
    StationReport station;
    station.id = "saw/helper";
    station.verdict = Verdict::Fails;
    report.stations.push_back(station);
  }
  Finding& add(const std::string& rule, const std::string& until) {
    Finding f = finding(rule, "saw/helper");
    if (!until.empty()) f.accepted = Acceptance{"on order", "Ada Example", until};
    report.findings.push_back(f);
    return report.findings.own(report.findings.size() - 1);
  }
  bool isAccepted() { return acceptedStations(report, *inspection::parseDate("2026-06-01")).at(0); }
  StationReport& station() { return report.stations.own(0); }

  Report report;
};

TEST_F(AcceptedStation, IsOneOfWhichAllThatCountsIs) {
  EXPECT_FALSE(isAccepted());
  add("stop-too-far", "2026-12-31");
  EXPECT_TRUE(isAccepted());
  add("hidden-stop", "").severity = Severity::Note;
  EXPECT_TRUE(isAccepted()) << "a note decides nothing";
  add("phone-too-far", "").severity = Severity::Warn;
  EXPECT_FALSE(isAccepted());
}

TEST_F(AcceptedStation, IsNoneOnceThatIsOver) {
  add("stop-too-far", "2026-05-31");
  EXPECT_FALSE(isAccepted());
}

TEST_F(AcceptedStation, IsNoneThatMeets) {
  add("stop-too-far", "2026-12-31").severity = Severity::Note;
  station().verdict = Verdict::Meets;
  EXPECT_FALSE(isAccepted());
}

// The rule that would say so is off: nobody accepted that.
TEST_F(AcceptedStation, IsNoneThatLacksAWayOfWhichNothingIsSaid) {
  add("standing-conflict", "2026-12-31");
  station().lacks_phone = true;
  EXPECT_FALSE(isAccepted());
  add("phone-too-far", "2026-12-31");
  EXPECT_TRUE(isAccepted());
  station().lacks_stop = true;
  EXPECT_FALSE(isAccepted());
  add("unreachable", "2026-12-31").which = "(phone)";
  EXPECT_FALSE(isAccepted());
  add("unreachable", "2026-12-31").which = "(stop)";
  EXPECT_TRUE(isAccepted());
}

// What else is found of it says nothing of a way that it lacks.
TEST_F(AcceptedStation, IsUntoldAsLongAsNothingSaysThatItLacksAWay) {
  station().lacks_phone = true;
  add("standing-conflict", "");
  add("stop-too-far", "");
  EXPECT_EQ(report.countUntold(), 1u);
  add("phone-too-far", "").severity = Severity::Note;
  EXPECT_EQ(report.countUntold(), 1u) << "a note decides nothing";
  add("phone-after-hours", "");
  EXPECT_EQ(report.countUntold(), 0u);
  station().lacks_stop = true;
  EXPECT_EQ(report.countUntold(), 0u);
}

TEST(Accepted, WhatNoFindingNeedsIsNamed) {
  EXPECT_TRUE(notNeeded({kAccepted}, {finding("hidden-stop", "saw")}).empty());
  EXPECT_EQ(notNeeded({kAccepted}, {finding("hidden-stop", "drill")}).size(), 1u);
}

TEST(Accepted, NeedsARuleThatThereIsAndALastDay) {
  EXPECT_EQ(troubleOf(kAccepted), "");
  layout::AcceptedFinding wrong = kAccepted;
  wrong.rule = "hiden-stop";
  EXPECT_NE(troubleOf(wrong).find("hidden-stop"), std::string::npos);
  wrong = kAccepted;
  wrong.measured = -1;
  EXPECT_NE(troubleOf(wrong).find("measured"), std::string::npos);
  wrong = kAccepted;
  wrong.until.clear();
  EXPECT_NE(troubleOf(wrong).find("until"), std::string::npos);
}

}  // namespace
}  // namespace stopwalk::audit
