// All that can be done where the layout is audited is in a menu, has a key or is found by its name, and says
// why where it cannot be done.
#include <QApplication>
#include <QClipboard>
#include <QMenuBar>
#include <QPushButton>

#include "app/edits/remove_things.h"
#include "app/panels/actions/action_finder.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/suppose/suppose_panel.h"
#include "tests/app/window/auditing.h"

namespace stopwalk::window {
namespace {

class AuditMenu : public InTheAuditPlace {
 protected:
  QMenu* menu() {
    for (QMenu* menu : window->menuBar()->findChildren<QMenu*>())
      if (menu->title().remove('&') == "Audit") return menu;
    return nullptr;
  }
  // By its words, in a menu below the menu too.
  QAction* action(const QString& text) {
    QList<QAction*> all = menu()->actions();
    for (const QMenu* below : menu()->findChildren<QMenu*>()) all << below->actions();
    for (QAction* action : all)
      if (action->text().remove('&').remove("…") == text) return action;
    ADD_FAILURE() << "there is no " << text.toStdString();
    return menu()->menuAction();
  }
};

TEST_F(AuditMenu, AllThatItHoldsIsFoundByItsName) {
  panels::ActionFinder finder(window.get());
  QStringList lines;
  for (int i = 0; i < finder.list()->count(); ++i) lines << finder.list()->item(i)->text();
  for (const char* line :
       {"Audit: Copy the findings", "Audit: Export the findings…", "Audit: Copy the table of stations",
        "Audit: Export the table of stations… (Ctrl+Shift+X)",
        "Audit: What is picked is out of order (Ctrl+Shift+O)",
        "Audit: The door that is picked is shut (Ctrl+Shift+D)",
        "Audit: Put something in the way (Ctrl+Shift+B)", "Audit: After hours (Ctrl+Shift+L)",
        "Audit: Back to how it is (Ctrl+Shift+K)", "Audit: Take it away",
        "Colour the floor by: Walk to the phone", "How findings are listed: By machine",
        "How findings are listed: Warns", "Audit: Save the rules as a profile file…"})
    EXPECT_TRUE(lines.contains(QString(line))) << line << "\nis none of\n" << lines.join('\n').toStdString();
}

TEST_F(AuditMenu, WhatCannotBeDoneSaysWhy) {
  EXPECT_TRUE(menu()->toolTipsVisible());
  int cannot = 0;
  for (const QAction* action : menu()->actions()) {
    if (action->isEnabled()) continue;
    ++cannot;
    EXPECT_TRUE(action->toolTip().endsWith('.')) << action->text().toStdString();
    EXPECT_EQ(action->statusTip(), action->toolTip());
  }
  EXPECT_GE(cannot, 5) << "nothing is picked, and nothing supposed";
}

TEST_F(AuditMenu, ADevicePickedOnThePlanIsSupposedOutOfOrderByAKeyAndBackByAnother) {
  window->goToPlace(WorkPlace::Draw);
  window->selection().set("table-saw/paddle");
  plan().setFocus();
  key(Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Audit);
  EXPECT_EQ(window->auditPlace().tabs().currentWidget(), &window->auditPlace().suppose());
  EXPECT_TRUE(becomes("table-saw/operator", "fails"));
  plan().setFocus();
  key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(window->auditPlace().suppose().suppositions().empty());
  EXPECT_TRUE(QTest::qWaitFor([&] { return stateOf("table-saw/operator") != "fails"; }, 10000));
}

TEST_F(AuditMenu, TheFloorIsColouredFromItAndTheChoiceBesideThePlanFollows) {
  window->selection().set("table-saw");
  action("Walk to the stop of one machine")->trigger();
  const auto target = window->auditPlace().reach().target();
  ASSERT_TRUE(target);
  EXPECT_EQ(target->machine, "table-saw");
  EXPECT_TRUE(action("Walk to the stop of one machine")->isChecked());
  window->auditPlace().reach().whatBox()->setCurrentIndex(0);
  EXPECT_TRUE(action("No colours")->isChecked());
  EXPECT_FALSE(action("Walk to the stop of one machine")->isChecked());
}

TEST_F(AuditMenu, HowFindingsAreListedIsOneChoiceInMenuAndPanel) {
  auto& findings = window->auditPlace().findings();
  action("By rule")->trigger();
  EXPECT_EQ(findings.groupBy()->currentIndex(), 2);
  action("Farthest past its limit first")->trigger();
  EXPECT_EQ(findings.orderBy()->currentIndex(), 1);
  action("Warns")->trigger();
  EXPECT_FALSE(findings.shows(audit::Severity::Warn)->isChecked());
  findings.shows(audit::Severity::Warn)->click();
  EXPECT_TRUE(action("Warns")->isChecked());
}

TEST_F(AuditMenu, ARuleIsPutOffAndBackFromIt) {
  window->auditPlace().rules().choose("hidden-stop");
  EXPECT_FALSE(action("The rule chosen as the profile has it")->isEnabled());
  action("The rule chosen is on")->trigger();
  ASSERT_EQ(layout().house_rules.size(), 1u);
  EXPECT_EQ(layout().house_rules[0].rule, "hidden-stop");
  EXPECT_FALSE(action("The rule chosen is on")->isChecked());
  action("The rule chosen as the profile has it")->trigger();
  EXPECT_TRUE(layout().house_rules.empty());
  EXPECT_TRUE(action("The rule chosen is on")->isChecked());
}

// Coming here asks for an audit of its own: what goes out waits for it.
TEST_F(AuditMenu, WhatIsExportedFromAnotherPlaceIsOfTheLayoutAsItIs) {
  for (const char* what : {"Export the findings", "Export the table of stations"}) {
    window->goToPlace(WorkPlace::Draw);
    const QString table = pathOf("table.csv");
    QFile::remove(table);
    asker.file = table;
    window->document().edited().apply(edits::removeThings(layout(), {"table-saw"}, {}));
    action(what)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return QFile::exists(table); }, 10000)) << what;
    QFile file(table);
    ASSERT_TRUE(file.open(QFile::ReadOnly));
    const QByteArray rows = file.readAll();
    EXPECT_FALSE(rows.contains("table-saw/operator")) << what;
    EXPECT_TRUE(rows.contains("/operator")) << what;
    history().undo();
  }
}

TEST_F(AuditMenu, WhatIsCopiedFromAnotherPlaceIsNotOfAMomentAgo) {
  window->suppose({.out_of_order = {"table-saw/paddle"}, .shut = {}, .in_the_way = {}});
  for (const char* what : {"Copy the findings", "Copy the table of stations"}) {
    window->goToPlace(WorkPlace::Draw);
    QApplication::clipboard()->clear();
    action(what)->trigger();
    ASSERT_TRUE(QTest::qWaitFor([] { return !QApplication::clipboard()->text().isEmpty(); }, 10000)) << what;
    const QString text = QApplication::clipboard()->text();
    EXPECT_FALSE(text.contains("Of a moment ago")) << what;
    EXPECT_TRUE(text.contains("What if")) << what;
  }
}

TEST_F(AuditMenu, ItsWaysLeadTheKeyboardToTheirLists) {
  window->goToPlace(WorkPlace::Draw);
  action("Look at the rules")->trigger();
  EXPECT_EQ(QApplication::focusWidget(), window->auditPlace().rules().tree());
  action("Look at the findings")->trigger();
  EXPECT_EQ(QApplication::focusWidget(), window->auditPlace().findings().tree());
  action("Look at the table of stations")->trigger();
  EXPECT_EQ(QApplication::focusWidget(), window->auditPlace().stations().view());
}

TEST_F(AuditMenu, TheKeyToCopyCopiesTheListThatHasTheKeyboard) {
  auto& findings = window->auditPlace().findings();
  findings.tree()->setFocus();
  key(Qt::Key_C, Qt::ControlModifier);
  EXPECT_TRUE(QApplication::clipboard()->text().contains("audited by the profile"));
  window->auditPlace().stations().view()->setFocus();
  key(Qt::Key_C, Qt::ControlModifier);
  EXPECT_TRUE(QApplication::clipboard()->text().contains("Belt sander")) << "a row of the table";
  EXPECT_FALSE(QApplication::clipboard()->text().contains("Findings"));
}

TEST_F(AuditMenu, NoMachineIsTakenAwayFromAListOfWhatIsWrongWithIt) {
  const layout::Layout before = layout();
  for (QAbstractItemView* list : {static_cast<QAbstractItemView*>(window->auditPlace().findings().tree()),
                                  static_cast<QAbstractItemView*>(window->auditPlace().stations().view())}) {
    list->setFocus();
    for (int i = 0; i < 3; ++i) key(Qt::Key_Down);
    ASSERT_FALSE(window->selection().empty());
    key(Qt::Key_Delete);
    key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(layout(), before);
  }
}

}  // namespace
}  // namespace stopwalk::window
