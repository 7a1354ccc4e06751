// A layout that is open for looking only: whatever is tried from wherever, nothing changes, and the bottom
// line says why.
#include <QAbstractButton>
#include <QAction>
#include <QLineEdit>
#include <QTreeWidget>

#include "app/edits/add_things.h"
#include "app/edits/copy_things.h"
#include "app/panels/details/details.h"
#include "app/panels/things/thing_list.h"
#include "core/files/machine_templates_reader.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

using geometry::Point;

class LookingOnly : public AtTheWindow {
 protected:
  LookingOnly() {
    window->document().edited().apply(
        edits::addRoom(layout(), {{0, 0}, {10000, 0}, {10000, 8000}, {0, 8000}}, "Hall").edit);
    window->document().edited().apply(
        edits::addMachine(layout(), *files::bundledMachineTemplates().find("table-saw"), {4000, 4000}, 0)
            .edit);
    asker.file = pathOf("shop.layout.yaml");
    EXPECT_TRUE(window->files().save());
    store_2 = std::make_unique<documents::RecoveryStore>(folder.filePath("other-state"));
    asker.answers = {"Open for looking only"};
    other = std::exchange(window, std::make_unique<MainWindow>(*store_2, settings, &asker));
    window->resize(1280, 800);
    window->show();
    window->openPath(pathOf("shop.layout.yaml"));
    window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
    plan().fit();
    plan().setFocus();
    before = layout();
    EXPECT_TRUE(window->document().isReadOnly());
    EXPECT_EQ(before.machines.size(), 1u);
  }
  ~LookingOnly() override { window.reset(); }

  void expectNothingChanged(const char* by) {
    EXPECT_EQ(layout(), before) << by;
    EXPECT_EQ(history().count(), 0) << by;
    EXPECT_TRUE(window->document().isSaved()) << by;
    EXPECT_TRUE(window->sentence().contains("looking only"))
        << by << ": " << window->sentence().toStdString();
    for (const std::string& id : window->selection().ids())
      EXPECT_TRUE(edits::findThing(layout(), id)) << by << " picked " << id << ", which is not there";
    // What is said next is not what was said before.
    window->document().edited().changed();
  }

  std::unique_ptr<documents::RecoveryStore> store_2;
  std::unique_ptr<MainWindow> other;
  layout::Layout before;
};

TEST_F(LookingOnly, ThePlanAndItsMenusChangeNothing) {
  drag({4400, 4200}, {6400, 5200});
  expectNothingChanged("dragging");
  ASSERT_EQ(window->selection().ids(), std::vector<std::string>{"table-saw"});
  key(Qt::Key_Right);
  expectNothingChanged("an arrow");
  key(Qt::Key_C, Qt::ControlModifier);
  key(Qt::Key_V, Qt::ControlModifier);
  expectNothingChanged("pasting");
  key(Qt::Key_D, Qt::ControlModifier);
  expectNothingChanged("duplicating");
  key(Qt::Key_Delete);
  expectNothingChanged("removing");
  choose({plan::Choice::What::Phone});
  EXPECT_EQ(plan().choice().what, plan::Choice::What::Select);
  expectNothingChanged("a tool");
}

TEST_F(LookingOnly, DetailsCanBeReadAndNotTypedIn) {
  click({4400, 4200});
  auto* details = window->findChild<panels::Details*>();
  ASSERT_EQ(details->title(), "Table saw");
  int tried = 0;
  for (QLineEdit* line : details->section()->findChildren<QLineEdit*>()) {
    if (!line->isVisibleTo(details)) continue;
    EXPECT_TRUE(line->isReadOnly());
    EXPECT_EQ(line->palette().color(QPalette::Base), line->palette().color(QPalette::Window))
        << "looks typed in";
    const QString was = line->text();
    line->setFocus();
    line->selectAll();
    type("1234");
    key(Qt::Key_Return);
    EXPECT_EQ(line->text(), was);
    ++tried;
  }
  EXPECT_GT(tried, 6);
  for (QAbstractButton* button : details->section()->findChildren<QAbstractButton*>())
    EXPECT_FALSE(button->isEnabled()) << button->text().toStdString();
  EXPECT_EQ(layout(), before);
  EXPECT_EQ(history().count(), 0);
}

TEST_F(LookingOnly, DetailsCanBeTypedInAgainOnceSavedUnderAnotherName) {
  click({4400, 4200});
  asker.file = pathOf("own.layout.yaml");
  ASSERT_TRUE(window->files().saveAs());
  QTest::qWait(50);
  auto* details = window->findChild<panels::Details*>();
  for (QLineEdit* line : details->section()->findChildren<QLineEdit*>()) EXPECT_FALSE(line->isReadOnly());
}

TEST_F(AtTheWindow, WhileLookingOnlyNothingIsUndoneOrRedone) {
  auto& edited = window->document().edited();
  edited.apply(edits::addNote(layout(), "one", {100, 100}).edit);
  edited.apply(edits::addNote(layout(), "two", {500, 100}).edit);
  history().undo();
  const auto enabled = [&](const QString& word) {
    for (const QAction* action : window->findChildren<QAction*>())
      if (action->text().remove('&').startsWith(word)) return action->isEnabled();
    return false;
  };
  for (const bool only : {false, true, false}) {
    edited.setReadOnly(only);
    EXPECT_EQ(enabled("Undo"), !only);
    EXPECT_EQ(enabled("Redo"), !only);
  }
}

TEST_F(LookingOnly, ThingsChangeNothing) {
  auto* things = window->findChild<panels::ThingList*>();
  window->selection().set("table-saw");
  things->duplicateSelected();
  expectNothingChanged("duplicating");
  things->removeSelected();
  expectNothingChanged("removing");
  EXPECT_EQ(window->selection().ids(), std::vector<std::string>{"table-saw"});
}

}  // namespace
}  // namespace stopwalk::window
