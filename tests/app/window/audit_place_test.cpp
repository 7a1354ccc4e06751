// Auditing at the window: the stations turn as things move, what if leaves no trace, tables go out as files.
#include "app/window/audit_place.h"

#include <QFile>
#include <QSignalSpy>
#include <sstream>

#include "app/command_line/run.h"
#include "app/documents/layout_file.h"
#include "app/edits/add_things.h"
#include "app/panels/details/details.h"
#include "app/panels/findings/accepting.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/stations/station_table.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/panels/things/thing_list.h"
#include "app/records/records_file.h"
#include "app/window/notice_bar.h"
#include "app/window/profile_for.h"
#include "core/audit/audit.h"
#include "core/files/report_csv.h"
#include "tests/app/panels/accessible.h"
#include "tests/app/window/auditing.h"

namespace stopwalk::window {
namespace {

TEST_F(InTheAuditPlace, WhatIfMarksWhatChangesAndSavesNothing) {
  const QByteArray file = bytes();
  const layout::Layout as_it_is = layout();
  auto& suppose = window->auditPlace().suppose();
  suppose.itemOf("table-saw/paddle")->setCheckState(0, Qt::Checked);
  EXPECT_TRUE(becomes("table-saw/operator", "fails"));
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return cellOf("table-saw/operator", panels::StationModel::Change).contains("stop at hand"); }));
  EXPECT_TRUE(window->notices().text().contains("Nothing of this is saved")) << "must be said above the plan";
  suppose.afterHours()->click();
  suppose.put()->click();
  QTest::qWait(300);
  EXPECT_EQ(layout(), as_it_is);
  EXPECT_TRUE(window->document().isSaved());
  EXPECT_TRUE(window->files().save());
  EXPECT_EQ(bytes(), file);
  suppose.clear()->click();
  EXPECT_TRUE(QTest::qWaitFor([&] { return stateOf("table-saw/operator") != "fails"; }, 10000));
}

TEST_F(InTheAuditPlace, WhatIfHoldsOnlyHere) {
  window->auditPlace().suppose().itemOf("table-saw/paddle")->setCheckState(0, Qt::Checked);
  EXPECT_TRUE(becomes("table-saw/operator", "fails"));
  window->goToPlace(WorkPlace::Draw);
  EXPECT_EQ(window->notices().text(), "");
  EXPECT_TRUE(QTest::qWaitFor([&] { return stateOf("table-saw/operator") != "fails"; }, 10000));
  window->goToPlace(WorkPlace::Audit);
  EXPECT_TRUE(becomes("table-saw/operator", "fails"));
}

TEST_F(InTheAuditPlace, SomethingInTheWayIsDraggedOnThePlan) {
  auto& suppose = window->auditPlace().suppose();
  suppose.put()->click();
  ASSERT_EQ(suppose.suppositions().in_the_way.size(), 1u);
  const geometry::Point was = suppose.suppositions().in_the_way[0].at;
  const layout::Layout as_it_is = layout();
  drag(was + geometry::Point{200, 100}, was + geometry::Point{1200, 600});
  const geometry::Point is = suppose.suppositions().in_the_way[0].at;
  EXPECT_NEAR(is.x - was.x, 1000, 3 / plan().transform().pixelsPerMm());
  EXPECT_NEAR(is.y - was.y, 500, 3 / plan().transform().pixelsPerMm());
  EXPECT_EQ(layout(), as_it_is);
}

TEST_F(InTheAuditPlace, WhatIfNamesWhoIsWorseOffAndByHowMuch) {
  auto& suppose = window->auditPlace().suppose();
  suppose.itemOf("table-saw/paddle")->setCheckState(0, Qt::Checked);
  ASSERT_TRUE(QTest::qWaitFor([&] { return suppose.summary().contains("worse off"); }, 10000));
  const QStringList lines = suppose.summary().split('\n');
  ASSERT_GT(lines.size(), 1) << suppose.summary().toStdString();
  EXPECT_TRUE(lines[1].startsWith("▼ Table saw, operator: ")) << lines[1].toStdString();
  EXPECT_TRUE(lines[1].contains(" → ")) << lines[1].toStdString();
  EXPECT_LE(lines.size(), 7);
}

TEST_F(InTheAuditPlace, WhoPicksSomethingElseOnThePlanIsDoneWithTheFinding) {
  auto& findings = window->auditPlace().findings();
  const auto pick = [&](const QString& subject) {
    QTreeWidget& tree = *findings.tree();
    for (int g = 0; g < tree.topLevelItemCount(); ++g)
      for (int i = 0; i < tree.topLevelItem(g)->childCount(); ++i) {
        tree.setCurrentItem(tree.topLevelItem(g)->child(i));
        if (findings.current() && findings.current()->subject == subject.toStdString()) return true;
      }
    return false;
  };
  ASSERT_TRUE(pick("linisher/operator"));
  auto& accept = window->auditPlace().accepting().acceptVerb();
  EXPECT_TRUE(accept.isEnabled());
  window->selection().set("linisher");
  EXPECT_TRUE(findings.current()) << "it is about that machine";
  window->selection().set("hammer");
  EXPECT_EQ(findings.current(), nullptr);
  EXPECT_TRUE(findings.tree()->selectedItems().isEmpty());
  EXPECT_FALSE(accept.isEnabled());
  // Nor does it come back with the next answer.
  window->document().edited().apply(edits::addPhone(layout(), "Phone", {1000, 1000}, 0).edit);
  QTest::qWait(600);
  EXPECT_EQ(findings.current(), nullptr);
}

TEST_F(InTheAuditPlace, WhatIfEndsTheColoursOfTheReachMapNoShorter) {
  window->auditPlace().reach().whatBox()->setCurrentIndex(1);
  const auto settles = [&] {
    QTest::qWait(100);
    return QTest::qWaitFor([&] { return plan().reach() && plan().isAudited(); }, 10000) &&
           (QTest::qWait(600), true);
  };
  ASSERT_TRUE(settles());
  const double top = plan().reach()->top_mm();
  int shorter = 0;  // of the doors that shut some of the longest walks off
  auto& suppose = window->auditPlace().suppose();
  for (const layout::Door& door : layout().doors) {
    planning::Suppositions shut;
    shut.shut = {door.id};
    window->suppose(shut);
    ASSERT_TRUE(settles());
    EXPECT_GE(plan().reach()->top_mm(), top) << door.id;
    shorter += plan::ReachLayer::topOf(*plan().reach()->reach()) < top;
  }
  EXPECT_GT(shorter, 0);
  suppose.clear()->click();
  ASSERT_TRUE(settles());
  EXPECT_EQ(plan().reach()->top_mm(), top);
}

// Of two blocks the one that was clicked on the plan, not the one that was put down last.
TEST_F(InTheAuditPlace, WhatIsTakenAwayIsWhatWasClickedOnThePlan) {
  auto& suppose = window->auditPlace().suppose();
  suppose.put()->click();
  const geometry::Point middle = suppose.suppositions().in_the_way[0].at;
  drag(middle, middle + geometry::Point{-3000, 0});
  suppose.put()->click();
  ASSERT_EQ(suppose.suppositions().in_the_way.size(), 2u);
  const std::string second = suppose.suppositions().in_the_way[1].id;
  ASSERT_EQ(suppose.tree()->currentItem(), suppose.itemOf(second));
  click(suppose.suppositions().in_the_way[0].at);
  suppose.verbs()[4]->trigger();
  ASSERT_EQ(suppose.suppositions().in_the_way.size(), 1u);
  EXPECT_EQ(suppose.suppositions().in_the_way[0].id, second);
}

// Of several in the way one that the search hides is not taken away.
TEST_F(InTheAuditPlace, WhatTheSearchHidesIsNotTakenAway) {
  auto& suppose = window->auditPlace().suppose();
  suppose.put()->click();
  suppose.put()->click();
  suppose.search()->setText("table saw");
  EXPECT_FALSE(suppose.verbs()[4]->isEnabled());
  suppose.search()->clear();
  EXPECT_TRUE(suppose.verbs()[4]->isEnabled());
}

TEST_F(InTheAuditPlace, ALimitThatIsBeingTypedIsInWhatIsSaved) {
  auto& rules = window->auditPlace().rules();
  window->auditPlace().tabs().setCurrentWidget(&rules);
  rules.choose("stop-too-far");
  rules.limits()[0]->line()->setFocus();
  rules.limits()[0]->line()->selectAll();
  type("4.2 m");
  EXPECT_TRUE(layout().house_rules.empty()) << "it is not entered yet";
  key(Qt::Key_S, Qt::ControlModifier);
  EXPECT_TRUE(window->document().isSaved());
  EXPECT_TRUE(bytes().contains("stop-too-far")) << bytes().toStdString();
  EXPECT_TRUE(bytes().contains("4.2"));
}

TEST_F(InTheAuditPlace, WhatIsRemovedIsNotSupposedAnyMore) {
  window->auditPlace().suppose().itemOf("table-saw/paddle")->setCheckState(0, Qt::Checked);
  window->selection().set("table-saw");
  plan().setFocus();
  key(Qt::Key_Delete);
  EXPECT_TRUE(QTest::qWaitFor([&] { return stateOf("table-saw/operator").isEmpty(); }, 10000));
  EXPECT_TRUE(window->auditPlace().suppose().suppositions().out_of_order.empty());
  EXPECT_EQ(window->notices().text(), "");
}

TEST_F(InTheAuditPlace, TheTableGoesOutAsTheCommandLineWritesIt) {
  asker.file = pathOf("stations.csv");
  emit window->auditPlace().exportWanted();
  QFile file(pathOf("stations.csv"));
  ASSERT_TRUE(file.open(QFile::ReadOnly));
  std::istringstream in;
  std::ostringstream out, err;
  app::run({"audit", "--format", "csv", path.toStdString()}, {in, out, err, false, false, 100});
  QByteArray wanted = QByteArray::fromStdString(out.str());
  ASSERT_TRUE(wanted.contains("table-saw/operator")) << err.str();
  EXPECT_EQ(file.readAll(), wanted.replace(path.toUtf8(), window->document().name().toUtf8()));
}

TEST_F(InTheAuditPlace, TheFindingsGoOutAsAFileOfTheLayoutAsItIsAndOverNoLayout) {
  const QByteArray before = bytes();
  const audit::Profile profile =
      audit::withHouseRules(profileFor(layout(), path).profile, layout().house_rules);
  const files::FiledReport filed{window->document().name().toStdString(), "",
                                 audit::audit(layout(), window->document().catalogue().kinds, profile)};
  ASSERT_FALSE(filed.report.findings.empty());
  planning::Suppositions suppositions;
  suppositions.hours = floor::Hours::After;
  window->suppose(suppositions);
  QTest::qWait(1000);
  window->auditPlace().findings().shows(audit::Severity::Warn)->click();  // what the list hides goes out too
  asker.file = pathOf("findings.csv");
  window->auditPlace().findings().exportVerb().trigger();
  QFile file(pathOf("findings.csv"));
  ASSERT_TRUE(file.open(QFile::ReadOnly)) << asker.said.join(' ').toStdString();
  EXPECT_EQ(file.readAll().toStdString(),
            files::findingsCsvHead() + files::findingsCsv(filed, records::momentNow().date));
  asker.file = path;
  window->auditPlace().findings().exportVerb().trigger();
  EXPECT_EQ(bytes(), before);
}

TEST_F(InTheAuditPlace, TheTableIsOfTheLayoutAsItIsWhateverIsSupposed) {
  const auto exported = [&] {
    asker.file = pathOf("stations.csv");
    QFile file(pathOf("stations.csv"));
    file.remove();
    emit window->auditPlace().exportWanted();
    return file.open(QFile::ReadOnly) ? file.readAll() : QByteArray();
  };
  const QByteArray as_it_is = exported();
  ASSERT_TRUE(as_it_is.contains("table-saw/operator"));
  planning::Suppositions suppositions;
  suppositions.hours = floor::Hours::After;
  window->suppose(suppositions);
  QTest::qWait(1000);
  EXPECT_EQ(exported(), as_it_is);
}

TEST_F(InTheAuditPlace, TheTableTakesThePlaceOfNoLayoutAndNoRecords) {
  const QByteArray before = bytes();
  ASSERT_TRUE(QFile::link(path, pathOf("link.csv")));
  for (const QString& target : {path, pathOf("shop.inspections.jsonl"), pathOf("link.csv")}) {
    asker.file = target;
    emit window->auditPlace().exportWanted();
    EXPECT_TRUE(asker.said.last().contains(".csv")) << target.toStdString();
  }
  EXPECT_EQ(bytes(), before);
  EXPECT_FALSE(QFile::exists(pathOf("shop.inspections.jsonl")));
}

TEST_F(InTheAuditPlace, WhatIsSupposedOfOneWorkshopIsNotOfTheNext) {
  planning::Suppositions suppositions;
  suppositions.hours = floor::Hours::After;
  window->suppose(suppositions);
  EXPECT_TRUE(window->notices().text().contains("What if"));
  QFile::copy(":/sample-layouts/scene-shop.layout.yaml", pathOf("other.layout.yaml"));
  window->openPath(pathOf("other.layout.yaml"));
  EXPECT_FALSE(window->notices().text().contains("What if"));
}

TEST_F(InTheAuditPlace, AFindingLookedAtIsPickedOnThePlan) {
  auto* tree = window->auditPlace().findings().tree();
  tree->setFocus();
  ASSERT_GT(tree->topLevelItemCount(), 0);
  tree->setCurrentItem(tree->topLevelItem(0)->child(0));
  const audit::Finding* finding = window->auditPlace().findings().current();
  ASSERT_TRUE(finding);
  EXPECT_TRUE(window->selection().contains(finding->subject));
}

// What was found anew is nothing that somebody came to.
TEST_F(InTheAuditPlace, AFindingThatIsFoundAnewPicksNothingOnThePlan) {
  auto* tree = window->auditPlace().findings().tree();
  tree->setFocus();
  tree->setCurrentItem(tree->topLevelItem(0)->child(0));
  window->selection().set("bench-glue");
  planning::Suppositions suppositions;
  suppositions.hours = floor::Hours::After;
  QSignalSpy looked(&window->auditPlace().findings(), &panels::FindingList::looked);
  window->suppose(suppositions);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !looked.isEmpty(); }, 10000));
  EXPECT_TRUE(window->selection().contains("bench-glue"));
}

TEST_F(InTheAuditPlace, TheFloorIsColouredByWalksHereAndNotWhereOneDraws) {
  const QImage plain = plan().grab().toImage();
  const auto coloured = [&] { return plan().grab().toImage() != plain; };
  window->auditPlace().reach().whatBox()->setCurrentIndex(1);
  EXPECT_TRUE(QTest::qWaitFor(coloured, 10000));
  QTest::qWait(500);
  window->goToPlace(WorkPlace::Draw);
  QTest::qWait(500);
  EXPECT_EQ(plan().reach(), nullptr);
  window->goToPlace(WorkPlace::Audit);
  EXPECT_TRUE(QTest::qWaitFor(coloured, 10000));
  window->auditPlace().reach().whatBox()->setCurrentIndex(0);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !coloured(); }, 10000));
}

TEST_F(InTheAuditPlace, WhatStandsHereMakesNothingWiderWhereOneDraws) {
  const int here = window->minimumSizeHint().width();
  window->goToPlace(WorkPlace::Draw);
  QTest::qWait(50);
  EXPECT_LT(window->minimumSizeHint().width(), 800);
  EXPECT_LT(here, 1280);
}

TEST_F(InTheAuditPlace, PlacesAreReachedByTheKeyboard) {
  key(Qt::Key_1, Qt::AltModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Draw);
  key(Qt::Key_2, Qt::AltModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Audit);
}

TEST_F(InTheAuditPlace, EveryControlHasAName) {
  EXPECT_EQ(panels::namelessControls(*window).join(", ").toStdString(), "");
}

TEST_F(InTheAuditPlace, EscapeBringsBackWhatStandsInTheWay) {
  auto& suppose = window->auditPlace().suppose();
  suppose.put()->click();
  const geometry::Point was = suppose.suppositions().in_the_way[0].at;
  plan().setFocus();
  move(was);
  QTest::mousePress(&plan(), Qt::LeftButton, {}, pixel(was));
  drive(was + geometry::Point{900, 400}, {});
  ASSERT_NE(suppose.suppositions().in_the_way[0].at, was);
  key(Qt::Key_Escape);
  EXPECT_EQ(suppose.suppositions().in_the_way[0].at, was);
  drive(was + geometry::Point{1500, 400}, {});
  QTest::mouseRelease(&plan(), Qt::LeftButton, {}, pixel(was));
  EXPECT_EQ(suppose.suppositions().in_the_way[0].at, was);
}

TEST_F(InTheAuditPlace, RulesThatAreOffAreToldWhereFindingsAreCounted) {
  auto& rules = window->auditPlace().rules();
  rules.choose("hidden-stop");
  rules.tree()->currentItem()->setCheckState(0, Qt::Unchecked);
  EXPECT_TRUE(QTest::qWaitFor(
      [&] { return window->auditPlace().findings().summary().contains("1 rule is off."); }, 10000));
}

TEST_F(InTheAuditPlace, AProfileThatIsNotThereIsToldForGood) {
  layout::Layout other = layout();
  other.profile = "house.yaml";
  window->document().edited().apply({"Change the profile", other});
  window->notices().clear("profile");
  EXPECT_TRUE(window->auditPlace().rules().head().contains("house.yaml"));
  EXPECT_TRUE(window->auditPlace().findings().summary().contains("own profile is not used"));
}

TEST_F(InTheAuditPlace, WhatIfCountsFindingsThatComeAndGo) {
  auto& suppose = window->auditPlace().suppose();
  suppose.itemOf("table-saw/paddle")->setCheckState(0, Qt::Checked);
  EXPECT_TRUE(QTest::qWaitFor([&] { return suppose.summary().contains("new finding"); }, 10000))
      << suppose.summary().toStdString();
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return window->auditPlace().stations().asText().contains("\nWhat if "); }));
}

}  // namespace
}  // namespace stopwalk::window
