#include "core/files/report_csv.h"

#include <gtest/gtest.h>

namespace stopwalk::files {
namespace {

std::string rowsOf(std::vector<audit::Finding> findings) {
  FiledReport filed{"shop.layout.yaml", "", {}};
  filed.report.findings = std::move(findings);
  return findingsCsv(filed);
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
  EXPECT_EQ(
      findingsCsvHead(),
      "layout,rule,severity,subject,which,room,measured,limit,unit,text,basis,basis_reference,accepted_by,"
      "accepted_until,accepted_reason\r\n");
  EXPECT_EQ(rowsOf({tooFar()}),
            "shop.layout.yaml,stop-too-far,fail,saw-2/helper,,wood,7.25,5,m,"
            "\"Saw 2, helper: 7.25 m, and 5 m is the limit.\",house-rule,\"walked, not run\",,,\r\n");
}

TEST(FindingsCsv, SaysWhoLetsAFindingStandUntilWhen) {
  audit::Finding finding = tooFar();
  finding.accepted = audit::Acceptance{"moved in May", "R. Invented", "2026-05-31"};
  EXPECT_TRUE(rowsOf({finding}).ends_with(",R. Invented,2026-05-31,moved in May\r\n")) << rowsOf({finding});
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
