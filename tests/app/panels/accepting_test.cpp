#include "app/panels/findings/accepting.h"

#include <gtest/gtest.h>

#include <QDate>
#include <QPointer>
#include <QTimer>
#include <functional>

#include "app/panels/findings/accept_dialog.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {
namespace {

audit::Finding noWayToThePhone() {
  audit::Finding finding;
  finding.rule = "unreachable";
  finding.subject = "saw-1/operator";
  finding.which = "(phone)";
  finding.text = "Table saw 1, operator: there is a phone, but no way to it from here.";
  return finding;
}

QString day(int from_today) {
  return QDate::currentDate().addDays(from_today).toString(Qt::ISODate);
}

audit::Finding farFromAStop(double walk_m) {
  audit::Finding finding;
  finding.rule = "stop-too-far";
  finding.subject = "saw-1/operator";
  finding.measured = walk_m;
  finding.limit = 5;
  finding.unit = "m";
  finding.text = "Table saw 1, operator: " + std::to_string(static_cast<int>(walk_m)) + " m to a stop.";
  return finding;
}

std::shared_ptr<const audit::Report> reportOf(const std::vector<audit::Finding>& findings) {
  audit::Report report;
  for (const audit::Finding& finding : findings) report.findings.push_back(finding);
  return std::make_shared<const audit::Report>(std::move(report));
}

// All that is found, and not of a moment ago.
std::function<FoundNow()> foundNow(const std::vector<audit::Finding>& findings) {
  return [report = reportOf(findings)] { return FoundNow{report}; };
}

void fill(const AcceptDialog& dialog, const QString& by) {
  dialog.reason()->line()->setText("the phone is on order");
  dialog.by()->line()->setText(by);
  dialog.until()->line()->setText(day(30));
}

// What is done in the dialog that opens next. It is left whatever fails: else nothing would go on.
// `of`: with whose end it is not done any more.
void inDialog(QObject& of, std::function<void(AcceptDialog&)> act) {
  QTimer::singleShot(0, &of, [act = std::move(act)] {
    const QPointer<QWidget> modal = QApplication::activeModalWidget();
    auto* dialog = qobject_cast<AcceptDialog*>(modal.data());
    EXPECT_TRUE(dialog);
    if (dialog) act(*dialog);
    if (modal) modal->close();
  });
}

class AcceptingAFinding : public testing::Test {
 protected:
  const std::vector<layout::AcceptedFinding>& accepted() const { return shop.layout().accepted_findings; }

  Workshop shop;
  Accepting accepting{shop.desk};
};

TEST_F(AcceptingAFinding, AsksWhyByWhomAndUntilWhenAndSaysWhichByItself) {
  AcceptDialog dialog(shop.desk, noWayToThePhone(), foundNow({noWayToThePhone()}), nullptr);
  bringUp(dialog);
  QTest::keyClicks(dialog.reason()->line(), "the phone is on order");
  QTest::keyClicks(dialog.by()->line(), "Ada Example");
  QTest::keyClicks(dialog.until()->line(), day(30));
  QTest::keyClick(dialog.until()->line(), Qt::Key_Return);
  EXPECT_EQ(dialog.result(), QDialog::Accepted);
  ASSERT_EQ(accepted().size(), 1u);
  EXPECT_EQ(accepted()[0], (layout::AcceptedFinding{"unreachable",
                                                    "saw-1/operator",
                                                    "(phone)",
                                                    "the phone is on order",
                                                    "Ada Example",
                                                    day(30).toStdString(),
                                                    {}}));
  EXPECT_EQ(shop.lastStep(), "Accept unreachable about saw-1/operator");
}

TEST_F(AcceptingAFinding, WhatIsWrongStandsBesideItsField) {
  AcceptDialog dialog(shop.desk, noWayToThePhone(), foundNow({noWayToThePhone()}), nullptr);
  bringUp(dialog);
  dialog.accept();
  for (const TextField* field : {dialog.reason(), dialog.by(), dialog.until()})
    EXPECT_EQ(field->trouble(), "It cannot be left empty.") << field->name().toStdString();
  EXPECT_EQ(QApplication::focusWidget(), dialog.reason()->line());
  enter(dialog.reason()->line(), "invented");
  enter(dialog.by()->line(), "Ada Example");
  const QString far = QDate::currentDate().addYears(5).addDays(1).toString(Qt::ISODate);
  for (const QString& wrong :
       {QString("in May"), QString("2027-02-30"), day(-1), far, QString("9999-12-31")}) {
    enter(dialog.until()->line(), wrong);
    EXPECT_NE(dialog.until()->trouble(), "") << wrong.toStdString();
    EXPECT_TRUE(dialog.isVisible());
  }
  EXPECT_TRUE(dialog.until()->trouble().contains(QDate::currentDate().addYears(5).toString(Qt::ISODate)))
      << dialog.until()->trouble().toStdString();
  EXPECT_TRUE(accepted().empty());
  enter(dialog.until()->line(), day(0));
  EXPECT_FALSE(dialog.isVisible());
  EXPECT_EQ(accepted().size(), 1u);
}

TEST_F(AcceptingAFinding, ADayIsPickedByTheArrows) {
  AcceptDialog dialog(shop.desk, noWayToThePhone(), foundNow({noWayToThePhone()}), nullptr);
  bringUp(dialog);
  QTest::keyClick(dialog.until()->line(), Qt::Key_Up);
  EXPECT_EQ(dialog.until()->line()->text(), day(0));
  QTest::keyClick(dialog.until()->line(), Qt::Key_Up);
  EXPECT_EQ(dialog.until()->line()->text(), day(1));
}

TEST_F(AcceptingAFinding, SaysWhyItCannotBe) {
  const audit::Finding finding = noWayToThePhone();
  EXPECT_EQ(accepting.acceptVerb().toolTip(), "Pick a finding first.");
  accepting.look(&finding);
  EXPECT_TRUE(accepting.acceptVerb().isEnabled());
  EXPECT_EQ(accepting.takeBackVerb().toolTip(), "Nobody has accepted this finding.");
  accepting.setSupposed(true);
  EXPECT_FALSE(accepting.acceptVerb().isEnabled()) << "it may be one only by what is supposed";
  EXPECT_TRUE(accepting.acceptVerb().toolTip().endsWith('.'));
}

// Its sister may be the one that was meant.
TEST_F(AcceptingAFinding, LeavesWhatMayMeanAnother) {
  audit::Finding stop = noWayToThePhone();
  stop.which = "(stop)";
  const auto report = reportOf({stop, noWayToThePhone()});
  layout::Layout layout = shop.layout();
  layout.accepted_findings = {
      {"unreachable", "saw-1/operator", "", "invented", "Ada Example", "2027-12-31", {}}};
  shop.edited.reset(layout);
  accepting.setReport(report);
  accepting.look(&report->findings[1]);
  inDialog(accepting, [](AcceptDialog& dialog) {
    fill(dialog, "Grace Example");
    dialog.accept();
  });
  accepting.acceptVerb().trigger();
  ASSERT_EQ(accepted().size(), 2u);
  EXPECT_EQ(accepted()[0].by, "Ada Example");
  EXPECT_EQ(accepted()[1].which, "(phone)");
}

// Else what was drawn worse while the dialog stood open, or what was of a moment ago, would be accepted
// unseen.
TEST_F(AcceptingAFinding, IsShownAnewWhereItIsFoundOtherwiseByNow) {
  const audit::Finding far = farFromAStop(9.8), nearer = farFromAStop(5.2);
  accepting.setReport(reportOf({far}));
  accepting.look(&far);
  inDialog(accepting, [&](AcceptDialog& dialog) {
    fill(dialog, "Ada Example");
    accepting.setAge(Age::JustChanged);
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.refusal().contains("not computed yet")) << dialog.refusal().toStdString();
    accepting.setAge(Age::Current);
    accepting.setReport(reportOf({nearer}));
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(dialog.said().toStdString(), nearer.text);
    EXPECT_TRUE(dialog.refusal().contains("otherwise by now")) << dialog.refusal().toStdString();
    EXPECT_TRUE(accepted().empty());
    dialog.accept();
    EXPECT_FALSE(dialog.isVisible());
  });
  accepting.acceptVerb().trigger();
  ASSERT_EQ(accepted().size(), 1u);
  EXPECT_EQ(accepted()[0].measured, 5.2);
}

TEST_F(AcceptingAFinding, AgainInTheSameWordsIsDoneAndNoStep) {
  audit::Finding far = farFromAStop(9.8);
  AcceptDialog first(shop.desk, far, foundNow({far}), nullptr);
  bringUp(first);
  fill(first, "Ada Example");
  first.accept();
  ASSERT_EQ(accepted().size(), 1u);
  far.accepted = {"the phone is on order", "Ada Example", day(30).toStdString(), 9.8};
  AcceptDialog again(shop.desk, far, foundNow({far}), nullptr);
  bringUp(again);
  again.accept();
  EXPECT_FALSE(again.isVisible());
  EXPECT_EQ(again.result(), QDialog::Accepted);
  EXPECT_EQ(accepted().size(), 1u);
  EXPECT_EQ(shop.edited.history().count(), 1);
}

TEST_F(AcceptingAFinding, WhatIsFoundNoMoreMeanwhileIsNotAccepted) {
  const audit::Finding far = farFromAStop(9.8);
  accepting.setReport(reportOf({far}));
  accepting.look(&far);
  inDialog(accepting, [&](AcceptDialog& dialog) {
    fill(dialog, "Ada Example");
    accepting.setReport(reportOf({noWayToThePhone()}));
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(dialog.refusal().contains("found no more")) << dialog.refusal().toStdString();
  });
  accepting.acceptVerb().trigger();
  EXPECT_TRUE(accepted().empty());
}

TEST_F(AcceptingAFinding, WhatIsFoundNoMoreIsTakenBackToo) {
  layout::Layout layout = shop.layout();
  layout.accepted_findings = {
      {"unreachable", "saw-1/operator", "(phone)", "invented", "Ada Example", "2027-12-31", {}},
      {"unreachable", "saw-1/operator", "(stop)", "invented", "Ada Example", "2027-12-31", {}}};
  shop.edited.reset(layout);
  accepting.lookAtIdle(&layout.accepted_findings[1]);
  EXPECT_FALSE(accepting.acceptVerb().isEnabled());
  accepting.takeBackVerb().trigger();
  ASSERT_EQ(accepted().size(), 1u);
  EXPECT_EQ(accepted()[0].which, "(phone)");
  EXPECT_EQ(shop.lastStep(), "Remove what accepted unreachable about saw-1/operator");
  shop.edited.history().undo();
  EXPECT_EQ(shop.layout(), layout);
}

TEST_F(AcceptingAFinding, IsTakenBack) {
  layout::Layout layout = shop.layout();
  layout.accepted_findings = {
      {"unreachable", "saw-1/operator", "(phone)", "invented", "Ada Example", "2027-12-31", {}},
      {"unreachable", "saw-1/operator", "(stop)", "invented", "Ada Example", "2027-12-31", {}}};
  shop.edited.reset(layout);
  audit::Finding finding = noWayToThePhone();
  finding.accepted = {"invented", "Ada Example", "2027-12-31"};
  accepting.look(&finding);
  accepting.takeBackVerb().trigger();
  ASSERT_EQ(accepted().size(), 1u);
  EXPECT_EQ(accepted()[0].which, "(stop)");
  shop.edited.history().undo();
  EXPECT_EQ(shop.layout(), layout);
}

}  // namespace
}  // namespace stopwalk::panels
