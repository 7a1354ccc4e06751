// What is shown says when it is of a moment ago, and nothing of another workshop stands.
#include <QSignalSpy>
#include <QTreeWidgetItemIterator>

#include "app/edits/remove_things.h"
#include "app/edits/step_names.h"
#include "app/panels/details/details.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/panels/things/thing_list.h"
#include "app/window/notice_bar.h"
#include "tests/app/window/auditing.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::window {
namespace {

TEST_F(InTheAuditPlace, WhatIsDraggedMakesAllBesideThePlanOfAMomentAgoUntilItIsPutDown) {
  auto& findings = window->auditPlace().findings();
  auto& stations = window->auditPlace().stations();
  const geometry::Point at = *edits::placeOf(layout(), *edits::findThing(layout(), "table-saw"));
  click(at);
  ASSERT_TRUE(window->selection().contains("table-saw"));
  QTest::qWait(400);
  EXPECT_TRUE(window->sentence().contains("stop:")) << window->sentence().toStdString();
  EXPECT_FALSE(stations.isMomentAgo());
  QSignalSpy table(stations.view()->model(), &QAbstractItemModel::modelReset);
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(at));
  for (int step = 1; step <= 4; ++step) {
    drive(at + geometry::Point{300.0 * step, 0}, Qt::AltModifier);
    QTest::qWait(60);
    if (step == 1) continue;  // it takes hold
    EXPECT_TRUE(stations.isMomentAgo()) << step;
    EXPECT_TRUE(findings.summary().startsWith("Of a moment ago")) << step;
    EXPECT_TRUE(window->details().title().endsWith("a moment ago")) << step;
    EXPECT_FALSE(window->sentence().contains("stop:")) << window->sentence().toStdString();
  }
  EXPECT_EQ(table.count(), 0) << "no flicker";
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(at + geometry::Point{1200, 0}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !stations.isMomentAgo(); }, 10000));
  EXPECT_FALSE(findings.summary().startsWith("Of a moment ago"));
  EXPECT_FALSE(window->details().title().endsWith("a moment ago"));
  EXPECT_TRUE(window->sentence().contains("stop:")) << window->sentence().toStdString();
}

// At a factory what stands beside the plan gets its answer part by part.
TEST_F(InTheAuditPlace, WhatIsOfOneAnswerAndTheOtherIsMarkedUntilAllIsOfOne) {
  window->document().edited().apply(
      edits::step(layout(), "factory", support::shopLayout(support::kShopSizes[2])));
  auto& findings = window->auditPlace().findings();
  auto& stations = window->auditPlace().stations();
  const auto isMarked = [&] { return stations.asText().startsWith("Of a moment ago"); };
  const auto shows = [&](int n) { return stations.view()->model()->rowCount() == n && !isMarked(); };
  ASSERT_TRUE(QTest::qWaitFor([&] { return shows(1000); }, 60000));
  QList<bool> marked;  // whenever the table has its part
  QObject::connect(stations.view()->model(), &QAbstractItemModel::modelReset, window.get(),
                   [&] { marked << isMarked(); });
  const layout::Machine gone = layout().machines[500];
  window->document().edited().apply(
      edits::removeThings(layout(), {gone.id}, window->document().catalogue().kinds));
  ASSERT_TRUE(QTest::qWaitFor([&] { return shows(999); }, 60000));
  EXPECT_EQ(marked.count(true), marked.size());
  EXPECT_FALSE(marked.isEmpty());
  const QString id = QString::fromStdString(gone.id);
  const auto* problems = window->findChild<panels::ProblemList*>()->list();
  for (int i = 0; i < problems->count(); ++i)
    EXPECT_NE(problems->item(i)->data(Qt::UserRole).toString().section('/', 0, 0), id);
  QTreeWidgetItemIterator finding(findings.tree());
  for (; *finding; ++finding)
    EXPECT_NE((*finding)->data(0, Qt::UserRole + 2).toString().section('/', 0, 0), id);
  QTreeWidgetItemIterator thing(window->findChild<panels::ThingList*>()->tree());
  for (; *thing; ++thing) EXPECT_NE((*thing)->data(0, Qt::UserRole).toString(), id);
}

TEST_F(InTheAuditPlace, WhatStandsInTheWayMakesAllBesideThePlanOfAMomentAgoUntilItIsPutDown) {
  auto& stations = window->auditPlace().stations();
  window->auditPlace().suppose().put()->click();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !window->auditPlace().suppose().summary().isEmpty(); }, 10000));
  QTest::qWait(400);
  ASSERT_FALSE(stations.isMomentAgo());
  const geometry::Point at = window->auditPlace().suppose().suppositions().in_the_way[0].at;
  QSignalSpy table(stations.view()->model(), &QAbstractItemModel::modelReset);
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(at));
  for (int step = 1; step <= 4; ++step) {
    drive(at + geometry::Point{200.0 * step, 0}, {});
    QTest::qWait(60);
    EXPECT_TRUE(stations.isMomentAgo()) << step;
    EXPECT_TRUE(window->sentence().contains("Escape")) << window->sentence().toStdString();
  }
  EXPECT_EQ(table.count(), 0) << "no flicker";
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(at + geometry::Point{800, 0}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !stations.isMomentAgo(); }, 10000));
  EXPECT_EQ(table.count(), 1) << "of where it was put down";
}

TEST_F(InTheAuditPlace, TheListsOfTheDrawnAreOfAMomentAgoWhileSomethingIsDragged) {
  window->goToPlace(WorkPlace::Draw);
  auto& things = *window->findChild<panels::ThingList*>();
  auto& problems = *window->findChild<panels::ProblemList*>();
  const geometry::Point at = *edits::placeOf(layout(), *edits::findThing(layout(), "table-saw"));
  click(at);
  QTest::qWait(400);
  EXPECT_FALSE(things.isMomentAgo());
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(at));
  drive(at + geometry::Point{400, 0}, Qt::AltModifier);
  drive(at + geometry::Point{500, 0}, Qt::AltModifier);
  EXPECT_TRUE(things.isMomentAgo());
  EXPECT_EQ(problems.said(), "Of a moment ago");
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(at + geometry::Point{500, 0}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !things.isMomentAgo(); }, 10000));
  EXPECT_EQ(problems.said(), "");
}

// Before anything is painted or answered.
TEST_F(InTheAuditPlace, WhatIsCopiedRightAfterAChangeSaysThatItIsOfAMomentAgo) {
  auto& findings = window->auditPlace().findings();
  auto& stations = window->auditPlace().stations();
  ASSERT_FALSE(findings.asText().startsWith("Of a moment ago"));
  window->document().edited().apply(edits::removeThings(layout(), {"table-saw"}, {}));
  EXPECT_TRUE(findings.asText().startsWith("Of a moment ago"));
  EXPECT_TRUE(stations.asText().startsWith("Of a moment ago"));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !findings.asText().startsWith("Of a moment ago"); }, 10000));
  EXPECT_FALSE(stations.asText().startsWith("Of a moment ago"));
  EXPECT_EQ(stateOf("table-saw/operator"), "");
}

// It was said that it is done when the audit is there.
TEST_F(InTheAuditPlace, WhatWaitsForAnAuditAndIsNotDoneIsToldByItsNameUntilItIsAskedForAgain) {
  layout::Layout other = layout();
  other.site.name += "!";
  ASSERT_TRUE(window->document().edited().apply({"Rename", other}));
  int asked = 0;
  asker.meanwhile = [&] { ++asked; };
  const auto told = [&](const char* what) {
    return window->notices().text().contains(
        QString("is not done: something else was asked for. Ask for it again: %1.").arg(what));
  };
  auto& stations = window->auditPlace().stations().exportVerb();
  auto& findings = window->auditPlace().findings().exportVerb();
  stations.trigger();
  ASSERT_EQ(asked, 0) << "the audit is there already: nothing is tried here";
  stations.trigger();
  EXPECT_FALSE(window->notices().text().contains("is not done")) << "what is asked for twice is done once";
  findings.trigger();
  EXPECT_TRUE(told("Export the table of stations")) << window->notices().text().toStdString();
  stations.trigger();
  EXPECT_FALSE(told("Export the table of stations")) << "it waits again";
  EXPECT_TRUE(told("Export the findings")) << window->notices().text().toStdString();
  EXPECT_TRUE(QTest::qWaitFor([&] { return asked == 1; }, 10000)) << "that is done";
  QTest::qWait(100);
  EXPECT_EQ(asked, 1);
  findings.trigger();
  EXPECT_EQ(asked, 2);
  EXPECT_FALSE(window->notices().text().contains("is not done"));
  asker.meanwhile = {};
}

TEST_F(InTheAuditPlace, NothingOfTheOldLayoutStandsWhenAnotherIsOpened) {
  ASSERT_FALSE(stateOf("table-saw/operator").isEmpty());
  window->auditPlace().reach().whatBox()->setCurrentIndex(1);
  ASSERT_TRUE(QTest::qWaitFor([&] { return plan().reach() != nullptr; }, 10000));
  auto& findings = window->auditPlace().findings();
  ASSERT_NE(findings.shows(audit::Severity::Fail)->text(), "");
  window->files().startNew();
  ASSERT_FALSE(edits::findThing(layout(), "table-saw"));
  EXPECT_EQ(stateOf("table-saw/operator"), "");
  EXPECT_EQ(plan().reach(), nullptr);
  EXPECT_EQ(findings.summary(), "Not audited yet.");
  EXPECT_EQ(findings.tree()->topLevelItemCount(), 0);
  for (const auto severity : {audit::Severity::Fail, audit::Severity::Warn, audit::Severity::Note})
    EXPECT_EQ(findings.shows(severity)->text(), "");
  EXPECT_EQ(window->findChild<panels::ProblemList*>()->said(), "Not audited yet.");
}

TEST_F(InTheAuditPlace, ADragThatIsLeftIsNotOfAMomentAgo) {
  auto& stations = window->auditPlace().stations();
  const geometry::Point at = *edits::placeOf(layout(), *edits::findThing(layout(), "table-saw"));
  click(at);
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(at));
  drive(at + geometry::Point{400, 0}, Qt::AltModifier);
  drive(at + geometry::Point{500, 0}, Qt::AltModifier);
  EXPECT_TRUE(stations.isMomentAgo());
  key(Qt::Key_Escape);
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(at + geometry::Point{500, 0}));
  EXPECT_TRUE(QTest::qWaitFor([&] { return !stations.isMomentAgo(); }, 10000));
}

}  // namespace
}  // namespace stopwalk::window
