#include "app/plan/changes.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/plan/catalogue.h"
#include "core/audit/audit.h"
#include "core/layout/which.h"
#include "tests/support/random.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::plan {
namespace {

audit::Report report(audit::Verdict verdict, std::optional<double> stop_m, double phone_m) {
  audit::StationReport station;
  station.id = "saw/operator";
  station.name = "Saw, operator";
  station.verdict = verdict;
  station.stop.status = stop_m ? audit::Status::Walk : audit::Status::Unreachable;
  station.stop.walk_m = stop_m;
  station.phone.status = audit::Status::Walk;
  station.phone.walk_m = phone_m;
  audit::Report r;
  r.stations.push_back(station);
  return r;
}

using audit::Verdict;

TEST(Changes, OfLessThanACentimetreAreNone) {
  EXPECT_TRUE(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3.009, 9)).empty());
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3.011, 9)).size(), 1u);
}

TEST(Changes, AreJudgedByTheVerdictBeforeTheWalk) {
  const auto change = changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Fails, 2, 9)).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: now fails; stop 3 m → 2 m");
}

TEST(Changes, OfTheWalkToThePhoneCountWhereTheStopIsTheSame) {
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3, 8)).at(0).turn,
            Turn::Better);
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3, 10)).at(0).turn,
            Turn::Worse);
}

TEST(Changes, ALostWayIsWorseThanAnyWalk) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 90, 9), report(Verdict::Fails, {}, 9)).at(0).turn,
            Turn::Worse);
  EXPECT_EQ(changesBetween(report(Verdict::Fails, {}, 9), report(Verdict::Fails, 90, 9)).at(0).turn,
            Turn::Better);
}

TEST(Changes, NoStopAtAllIsNotAStopWithoutAWay) {
  audit::Report after = report(Verdict::Fails, {}, 9);
  const auto text = [&] {
    return changesBetween(report(Verdict::Fails, 3, 9), after).at(0).text.toStdString();
  };
  EXPECT_EQ(text(), "Saw, operator: stop 3 m → no way");
  after.stations.own(0).stop.status = audit::Status::None;
  EXPECT_EQ(text(), "Saw, operator: stop 3 m → none");
}

TEST(Changes, NearerHereAndFartherThereIsNeitherBetterNorWorse) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), report(Verdict::Fails, 1, 10)).at(0).turn,
            Turn::Other);
  audit::Report lost = report(Verdict::Fails, 1, 9);
  lost.stations.own(0).phone.walk_m.reset();
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), lost).at(0).turn, Turn::Worse);
}

TEST(Changes, OfTheSecondsAloneAreTold) {
  audit::Report before = report(Verdict::Meets, 0, 9), after = before;
  for (audit::Report* r : {&before, &after}) r->stations.own(0).stop.status = audit::Status::AtHand;
  before.stations.own(0).stop.seconds = 4;
  after.stations.own(0).stop.seconds = 7.5;
  const auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop 4.0 s → 7.5 s");
}

TEST(Changes, AWayThatIsLostIsWorseWhateverTheVerdict) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), report(Verdict::Warns, {}, 9)).at(0).turn,
            Turn::Worse);
}

TEST(Changes, OfSecondsThatAreNotKnownAreNeitherBetterNorWorse) {
  audit::Report known = report(Verdict::Meets, 3, 9), unknown = known;
  known.stations.own(0).stop.seconds = 4;
  EXPECT_EQ(changesBetween(known, unknown).at(0).turn, Turn::Other);
  EXPECT_EQ(changesBetween(unknown, known).at(0).turn, Turn::Other);
}

TEST(Changes, OfStationsThatCameOrWentAreNone) {
  EXPECT_TRUE(changesBetween(audit::Report(), report(Verdict::Meets, 3, 9)).empty());
}

TEST(Changes, OfANarrowWayThatIsNarrowerAreTold) {
  audit::Report before = report(Verdict::Warns, 3, 9), after = before;
  for (audit::Report* r : {&before, &after}) r->stations.own(0).stop.status = audit::Status::Narrow;
  before.stations.own(0).stop.clear_width_m = 0.7;
  after.stations.own(0).stop.clear_width_m = 0.55;
  auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop narrowest 0.7 m → 0.55 m");
  EXPECT_EQ(changesBetween(after, before).at(0).turn, Turn::Better);
  change = changesBetween(report(Verdict::Warns, 3, 9), after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop narrowest wide → 0.55 m");
}

TEST(Changes, OfANarrowWayThatIsLostSayNothingOfItsWidth) {
  audit::Report before = report(Verdict::Warns, 3, 9);
  before.stations.own(0).stop.status = audit::Status::Narrow;
  before.stations.own(0).stop.clear_width_m = 0.59;
  EXPECT_EQ(changesBetween(before, report(Verdict::Fails, {}, 9)).at(0).text.toStdString(),
            "Saw, operator: now fails; stop 3 m → no way");
}

TEST(Changes, ToAnotherStopAsFarAwayNameBoth) {
  audit::Report before = report(Verdict::Meets, 3, 9), after = before;
  before.stations.own(0).stop.name = "foot bar";
  before.stations.own(0).stop.device = "saw/bar";
  after.stations.own(0).stop.name = "paddle";
  after.stations.own(0).stop.device = "saw/paddle";
  const auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Other);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop foot bar → paddle");
}

audit::Finding finding(const std::string& rule, const std::string& subject, audit::Severity severity) {
  audit::Finding f;
  f.rule = rule;
  f.subject = subject;
  f.severity = severity;
  return f;
}

TEST(Changes, OfTheVerdictSayByWhichRule) {
  const audit::Report before = report(Verdict::Meets, 3, 9);
  audit::Report after = report(Verdict::Warns, 3, 9);
  after.findings = {finding("cut-off-too-far", "saw/operator", audit::Severity::Warn),
                    finding("hidden-stop", "saw/helper", audit::Severity::Warn)};
  EXPECT_EQ(changesBetween(before, after).at(0).text.toStdString(),
            "Saw, operator: now warns: room cut-off too far");
}

// Else "now fails: stop too far; stop 4.9 m → 5 m", where 5 m may be walked.
TEST(Changes, TellTheFigureOfWhatFailsFromItsLimit) {
  const audit::Report before = report(Verdict::Meets, 4.9, 9);
  audit::Report after = report(Verdict::Fails, 5.003, 9);
  audit::Finding far = finding("stop-too-far", "saw/operator", audit::Severity::Fail);
  far.measured = 5.003, far.limit = 5, far.unit = "m";
  after.findings = {far};
  EXPECT_TRUE(changesBetween(before, after).at(0).text.endsWith("; stop 4.9 m → 5.003 m"))
      << changesBetween(before, after).at(0).text.toStdString();
  EXPECT_TRUE(changesBetween(after, before).at(0).text.endsWith("; stop 5.003 m → 4.9 m"));
  audit::Report slow = report(Verdict::Fails, 4.9, 9), fast = before;
  fast.stations.own(0).stop.seconds = 8;
  slow.stations.own(0).stop.seconds = 10.04;
  far.measured = 10.04, far.limit = 10, far.unit = "s";
  slow.findings = {far};
  EXPECT_TRUE(changesBetween(fast, slow).at(0).text.endsWith("; stop 8.0 s → 10.04 s"))
      << changesBetween(fast, slow).at(0).text.toStdString();
}

TEST(Changes, OfAWayThatIsLostSayToWhat) {
  const audit::Report before = report(Verdict::Meets, 3, 9);
  audit::Report after = report(Verdict::Fails, 3, 9);
  audit::Finding lost = finding("unreachable", "saw/operator", audit::Severity::Fail);
  lost.which = layout::whichWord("phone");
  after.findings = {lost};
  EXPECT_EQ(changesBetween(before, after).at(0).text.toStdString(),
            "Saw, operator: now fails: no way to a phone");
  lost.which = layout::whichWord("stop");
  after.findings.push_back(lost);
  EXPECT_EQ(changesBetween(before, after).at(0).text.toStdString(),
            "Saw, operator: now fails: no way to a phone, no way to a stop");
}

TEST(Changes, OfAStationThatFailsAlreadyAreTheOtherRulesThatItBreaks) {
  audit::Report before = report(Verdict::Fails, 3, 9), after = report(Verdict::Fails, 2, 9);
  before.findings = {finding("phone-too-far", "saw/operator", audit::Severity::Fail)};
  after.findings = before.findings;
  EXPECT_EQ(changesBetween(before, after).at(0).turn, Turn::Better);
  after.findings.push_back(finding("standing-conflict", "saw/operator", audit::Severity::Fail));
  after.findings.push_back(finding("hidden-stop", "saw/operator", audit::Severity::Warn));
  const auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(),
            "Saw, operator: fails now also: two stand in one place, or one in a doorway; stop 3 m → 2 m");
}

TEST(Changes, StandGravestFirst) {
  const auto change = [](const Verdict was, std::optional<double> stop_m, const Verdict is,
                         std::optional<double> to_m) {
    return changesBetween(report(was, stop_m, 9), report(is, to_m, 9)).at(0);
  };
  audit::Report unmeasured = report(Verdict::Warns, {}, 9);
  unmeasured.stations.own(0).stop.status = audit::Status::Unmeasured;
  std::vector<StationChange> changes{
      change(Verdict::Meets, 3, Verdict::Meets, 2),  // better
      change(Verdict::Meets, 3, Verdict::Meets, 4),
      change(Verdict::Meets, 3, Verdict::Meets, 7),
      changesBetween(report(Verdict::Warns, 3, 9), unmeasured).at(0),
      change(Verdict::Meets, 3, Verdict::Warns, 3.5),
      change(Verdict::Fails, 3, Verdict::Fails, {}),  // no way any more
      change(Verdict::Meets, 3, Verdict::Fails, 3.5),
  };
  std::vector<QString> wanted;
  for (const StationChange& c : changes) wanted.insert(wanted.begin(), c.text);
  sortGravestFirst(changes);
  std::vector<QString> told;
  for (const StationChange& c : changes) told.push_back(c.text);
  EXPECT_EQ(told, wanted);
}

// The same report, none of it shared with another.
audit::Report unshared(audit::Report report) {
  for (std::size_t i = 0; i < report.stations.size(); ++i) report.stations.own(i);
  for (std::size_t i = 0; i < report.findings.size(); ++i) report.findings.own(i);
  return report;
}

TEST(Changes, AreTheSameOfReportsThatShareWhatStayed) {
  const layout::DeviceKinds kinds = bundledCatalogue().kinds;
  layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  audit::Auditor auditor;
  const audit::Report before = auditor.audit(layout, kinds, audit::defaultProfile());
  support::Random random(7);
  std::size_t changes = 0, shared = 0;
  for (int i = 0; i < 40; ++i) {
    const auto m = static_cast<std::size_t>(random.below(static_cast<int>(layout.machines.size())));
    const geometry::Point by{random.between(-1200, 1200), random.between(-1200, 1200)};
    layout.machines[m].at = layout.machines[m].at + by;
    const audit::Report after = auditor.audit(layout, kinds, audit::defaultProfile());
    for (std::size_t s = 0; s < after.stations.size(); ++s)
      shared += after.stations.entry(s) == before.stations.entry(s);
    const auto of_shared = changesBetween(before, after), of_own = changesBetween(before, unshared(after));
    const auto same = [](const StationChange& a, const StationChange& b) {
      return a.station == b.station && a.turn == b.turn && a.text == b.text && a.gravity == b.gravity &&
             a.by_m == b.by_m;
    };
    ASSERT_TRUE(std::ranges::equal(of_shared, of_own, same)) << i;
    changes += of_shared.size();
  }
  EXPECT_GT(changes, 20u);
  EXPECT_GT(shared, 20u) << "stations that no move touched";
}

}  // namespace
}  // namespace stopwalk::plan
