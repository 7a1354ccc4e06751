#include "app/edits/accept_finding.h"

#include "app/edits/edited_layout.h"
#include "core/audit/accepted.h"
#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using layout::AcceptedFinding;
using layout::Layout;

const audit::Acceptance kAcceptance = {"the phone is on order: \"in May\"", "Ada Example", "2027-12-31"};

audit::Finding found(const std::string& which) {
  audit::Finding finding;
  finding.rule = "unreachable";
  finding.subject = "saw/operator";
  finding.which = which;
  return finding;
}

AcceptedFinding accepted(const std::string& which) {
  return {"unreachable", "saw/operator", which, kAcceptance.reason, kAcceptance.by, kAcceptance.until, {}};
}

TEST(AcceptFinding, SaysWhichAndIsUndone) {
  EditedLayout edited;
  edited.reset(benchShop());
  ASSERT_TRUE(edited.apply(acceptFinding(edited.layout(), found("(phone)"), {}, kAcceptance)));
  EXPECT_EQ(edited.layout().accepted_findings, std::vector{accepted("(phone)")});
  EXPECT_EQ(edited.history().undoText(), "Accept unreachable about saw/operator");
  expectReadable(edited.layout());
  edited.history().undo();
  EXPECT_EQ(edited.layout(), benchShop());
}

// So that it is not accepted any more once it has grown worse.
TEST(AcceptFinding, KeepsTheFigureThatIsAccepted) {
  EditedLayout edited;
  edited.reset(benchShop());
  audit::Finding finding = found("");
  finding.rule = "stop-too-far";
  finding.measured = 5.20349;
  ASSERT_TRUE(edited.apply(acceptFinding(edited.layout(), finding, {}, kAcceptance)));
  EXPECT_EQ(edited.layout().accepted_findings.at(0).measured, 5.203);
  expectReadable(edited.layout());
  ASSERT_TRUE(edited.apply(acceptFinding(edited.layout(), found("(phone)"), {}, kAcceptance)));
  EXPECT_FALSE(edited.layout().accepted_findings.at(1).measured);
}

TEST(AcceptFinding, GoesInThePlaceOfWhatMayHaveMeantItAndNoOther) {
  Layout layout = benchShop();
  AcceptedFinding other = accepted("(stop)");
  AcceptedFinding elsewhere = accepted("");
  elsewhere.subject = "lathe/operator";
  layout.accepted_findings = {accepted(""), other, accepted("phone"), accepted("(phone)"), elsewhere};
  EXPECT_EQ(acceptFinding(layout, found("(phone)"), {}, kAcceptance).after.accepted_findings,
            (std::vector{other, elsewhere, accepted("(phone)")}));
}

TEST(AcceptFinding, LeavesWhatIsUnclearWhereItMayMeanAnother) {
  Layout layout = benchShop();
  layout.accepted_findings = {accepted("")};
  audit::Finding stop = found("(stop)"), phone = found("(phone)");
  phone.unclear = stop.unclear = kAcceptance;
  const auto after = [&] { return acceptFinding(layout, phone, {stop, phone}, kAcceptance).after; };
  EXPECT_EQ(after().accepted_findings, (std::vector{accepted(""), accepted("(phone)")}));
  stop.accepted = std::exchange(stop.unclear, std::nullopt);
  EXPECT_EQ(after().accepted_findings, std::vector{accepted("(phone)")}) << "that one needs it no more";
  stop.subject = "lathe/operator", stop.accepted.reset();
  EXPECT_EQ(after().accepted_findings, std::vector{accepted("(phone)")});
}

TEST(AcceptFinding, IsTakenBackAloneWhereItIsClear) {
  Layout layout = benchShop();
  layout.accepted_findings = {accepted(""), accepted("(phone)")};
  audit::Finding stop = found("(stop)"), phone = found("(phone)");
  phone.accepted = kAcceptance;
  EXPECT_EQ(takeAcceptanceBack(layout, phone, {stop, phone}).after.accepted_findings,
            std::vector{accepted("")});
  phone.unclear = std::exchange(phone.accepted, std::nullopt);
  layout.accepted_findings = {accepted("")};
  EXPECT_TRUE(takeAcceptanceBack(layout, phone, {stop, phone}).after.accepted_findings.empty())
      << "it accepts neither, and is asked to go";
}

TEST(AcceptFinding, IsTakenBackWithAllThatMayMeanIt) {
  Layout layout = benchShop();
  layout.accepted_findings = {accepted("(stop)"), accepted(""), accepted("(phone)")};
  const Edit edit = takeAcceptanceBack(layout, found("(phone)"), {});
  EXPECT_EQ(edit.after.accepted_findings, std::vector{accepted("(stop)")});
  EXPECT_EQ(edit.name, "No longer accept unreachable about saw/operator");
}

}  // namespace
}  // namespace stopwalk::edits
