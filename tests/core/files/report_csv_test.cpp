#include "core/files/report_csv.h"

#include <gtest/gtest.h>

namespace stopwalk::files {
namespace {

std::string rowsOf(std::vector<audit::Finding> findings) {
  FiledReport filed{"shop.layout.yaml", "", {}};
  filed.report.findings = std::move(findings);
  return findingsCsv(filed, *inspection::parseDate("2026-03-02"));
}

audit::Finding tooFar() {
  audit::Finding finding;
  finding.rule = "stop-too-far";
  finding.severity = audit::Severity::Fail;
  finding.subject = "saw-2/helper";
  finding.room = "wood";
  finding.measured = 7.25;
  finding.limit = 5;
  finding.unit = "m";
  finding.text = "Saw 2, helper: 7.25 m, and 5 m is the limit.";
  finding.basis = {audit::BasisKind::HouseRule, "walked, not run"};
  return finding;
}

TEST(FindingsCsv, HoldsAllThatIsSaidOfAFinding) {
  EXPECT_EQ(findingsCsvHead(),
            "layout,rule,severity,subject,which,room,measured,limit,unit,text,basis,basis_reference,accepted,"
            "accepted_by,accepted_until,accepted_reason,accepted_measured\r\n");
  EXPECT_EQ(rowsOf({tooFar()}),
            "shop.layout.yaml,stop-too-far,fail,saw-2/helper,,wood,7.25,5,m,"
            "\"Saw 2, helper: 7.25 m, and 5 m is the limit.\",house-rule,\"walked, not run\",,,,,\r\n");
}

TEST(FindingsCsv, SaysWhoLetsAFindingStandUntilWhen) {
  audit::Finding finding = tooFar();
  finding.accepted = audit::Acceptance{"moved in May", "R. Invented", "2026-05-31", 7.25};
  EXPECT_TRUE(rowsOf({finding}).ends_with(",yes,R. Invented,2026-05-31,moved in May,7.25\r\n"))
      << rowsOf({finding});
}

// Who accepted it once is no sign that it is accepted.
TEST(FindingsCsv, SaysWhatIsAcceptedNoLonger) {
  audit::Finding finding = tooFar();
  for (const audit::Acceptance& over : {audit::Acceptance{"moved", "R. Invented", "2026-03-01"},
                                        audit::Acceptance{"moved", "R. Invented", "soon"},
                                        audit::Acceptance{"moved", "R. Invented", "2026-12-31", 5.2}}) {
    finding.accepted = over;
    EXPECT_NE(rowsOf({finding}).find(",no longer,R. Invented,"), std::string::npos) << rowsOf({finding});
  }
  finding.unclear = std::exchange(finding.accepted, std::nullopt);
  EXPECT_NE(rowsOf({finding}).find(",unclear,R. Invented,"), std::string::npos) << rowsOf({finding});
}

TEST(ReportJson, TellsWhatIsAcceptedFromWhatWasOrMayBe) {
  FiledReport filed{"shop.layout.yaml", "", {}};
  const auto json = [&](const audit::Finding& finding) {
    filed.report.findings = {finding};
    return reportJson(filed, *inspection::parseDate("2026-03-02"));
  };
  const auto holds = [](const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
  };
  audit::Finding finding = tooFar();
  finding.accepted = audit::Acceptance{"moved", "R. Invented", "2026-12-31", 7.25};
  const std::string in_force =
      R"("accepted":{"reason":"moved","by":"R. Invented","until":"2026-12-31","measured":7.25})";
  EXPECT_TRUE(holds(json(finding), in_force)) << json(finding);
  finding.accepted->measured = 5.2;
  EXPECT_TRUE(holds(json(finding), R"("no_longer_accepted":{)")) << json(finding);
  EXPECT_TRUE(holds(json(finding), R"("why":"accepted at 5.2 m, now 7.25 m")")) << json(finding);
  EXPECT_FALSE(holds(json(finding), R"("accepted":{)"));
  finding.accepted->until = "2026-03-01";
  EXPECT_TRUE(holds(json(finding), R"("why":"the last day has passed")")) << json(finding);
  finding.unclear = std::exchange(finding.accepted, std::nullopt);
  EXPECT_TRUE(holds(json(finding), R"("unclear_acceptance":{)")) << json(finding);
}

TEST(StationsCsv, SaysOfWhichStationsAllIsAccepted) {
  FiledReport filed{"shop.layout.yaml", "", {}};
  audit::StationReport station;
  station.id = "saw-2/helper";
  station.verdict = audit::Verdict::Fails;
  filed.report.stations = {station};
  const auto row = [&] { return reportCsv(filed, *inspection::parseDate("2026-03-02")); };
  EXPECT_TRUE(csvHead().ends_with(",verdict,accepted\r\n"));
  EXPECT_TRUE(row().ends_with(",fails,\r\n")) << row();
  filed.report.findings = {tooFar()};
  filed.report.findings.own(0).accepted = audit::Acceptance{"moved", "R. Invented", "2026-12-31"};
  EXPECT_TRUE(row().ends_with(",fails,yes\r\n")) << row();
}

// By which it can be accepted.
TEST(FindingsCsv, TellsTwoOfARuleAboutOneThingApart) {
  audit::Finding finding = tooFar();
  finding.rule = "slow-run-down";
  finding.which = "saw-2/stop, cut-off";
  EXPECT_NE(rowsOf({finding}).find(",saw-2/helper,\"saw-2/stop, cut-off\",wood,"), std::string::npos)
      << rowsOf({finding});
}

TEST(FindingsCsv, LeavesEmptyWhatIsNotMeasured) {
  audit::Finding finding = tooFar();
  finding.measured.reset();
  finding.limit.reset();
  EXPECT_NE(rowsOf({finding}).find(",wood,,,m,"), std::string::npos) << rowsOf({finding});
}

}  // namespace
}  // namespace stopwalk::files
