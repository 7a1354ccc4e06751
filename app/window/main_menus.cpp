// The menus of the window: every action with its words and its key.
#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QFileInfo>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QWhatsThis>

#include "app/edits/align_things.h"
#include "app/edits/copy_things.h"
#include "app/edits/move_things.h"
#include "app/edits/remove_things.h"
#include "app/panels/things/thing_list.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/commands.h"
#include "app/window/inspect_place.h"
#include "app/window/language.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/page_view.h"
#include "app/window/poster/poster_place.h"
#include "app/window/round_papers.h"

namespace stopwalk::window {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kQuarter_deg = 90;

using What = plan::Choice::What;

}  // namespace

void MainWindow::makeFileMenu() {
  MenuMaker menu(*menuBar(), tr("&File"));
  menu.add(tr("&New"), QKeySequence::New, [this] { files_->startNew(); });
  menu.add(tr("&Open…"), QKeySequence::Open, [this] { files_->open(); });
  recent_menu_ = menu.addMenu(tr("Open &recent"));
  QMenu* samples = menu.addMenu(tr("Open a sa&mple"));
  for (const QString& sample : FileFlow::samples())
    samples->addAction(sample.section('.', 0, 0), [this, sample] { files_->openSample(sample); });
  menu.addSeparator();
  menu.add(tr("&Save"), QKeySequence::Save, [this] { files_->save(); });
  menu.add(tr("Save &as…"), QKeySequence::SaveAs, [this] { files_->saveAs(); });
  menu.add(tr("Go &back to the saved file…"), [this] { files_->revert(); });
  menu.addSeparator();
  menu.add(tr("&Quit"), QKeySequence::Quit, [this] { close(); });
}

void MainWindow::fillRecent() {
  recent_menu_->clear();
  for (const documents::RecentLayout& recent : files_->recent()) {
    QAction* action = recent_menu_->addAction(QFileInfo(recent.path).fileName(),
                                              [this, path = recent.path] { openPath(path); });
    action->setToolTip(recent.path);
    if (recent.missing) action->setText(tr("%1 (missing)").arg(action->text()));
  }
  recent_menu_->setEnabled(!recent_menu_->isEmpty());
}

void MainWindow::makeEditMenu() {
  MenuMaker menu(*menuBar(), tr("&Edit"));
  auto& edited = document_->edited();
  QAction* undo = edited.history().createUndoAction(menu.menu(), tr("&Undo:"));
  undo->setShortcut(QKeySequence::Undo);
  menu.add(undo);
  QAction* redo = edited.history().createRedoAction(menu.menu(), tr("&Redo:"));
  QList<QKeySequence> again = QKeySequence::keyBindings(QKeySequence::Redo);
  if (const QKeySequence also(tr("Ctrl+Y")); !again.contains(also))
    again.append(also);  // known from elsewhere
  redo->setShortcuts(again);
  menu.add(redo);
  // After Qt's own, which know only of the steps.
  const auto allow = [undo, redo, &edited] {
    undo->setEnabled(edited.history().canUndo() && !edited.isReadOnly());
    redo->setEnabled(edited.history().canRedo() && !edited.isReadOnly());
  };
  connect(&edited.history(), &QUndoStack::canUndoChanged, undo, allow);
  connect(&edited.history(), &QUndoStack::canRedoChanged, redo, allow);
  connect(&edited, &edits::EditedLayout::readOnlyChanged, undo, allow);
  menu.addSeparator();
  menu.add(tr("Cu&t"), QKeySequence::Cut, [this] {
    copy();
    remove();
  });
  menu.add(tr("&Copy"), QKeySequence::Copy, [this] { copy(); });
  menu.add(tr("&Paste"), QKeySequence::Paste, [this] { paste(); });
  menu.add(tr("&Duplicate"), QKeySequence(tr("Ctrl+D")), [this] { duplicate(); });
  menu.add(tr("Re&move"), QKeySequence::Delete, [this] { remove(); });
  menu.addSeparator();
  menu.add(tr("R&ename…"), QKeySequence(tr("F2")), [this] { things_->renameSelected(); });
  menu.add(tr("Move &or turn by numbers…"), QKeySequence(tr("Ctrl+M")), [this] { things_->moveSelected(); });
  menu.addSeparator();
  menu.add(tr("Select &all"), QKeySequence::SelectAll, [this] { selectAll(std::nullopt); });
  menu.add(tr("Select all of this &kind"), QKeySequence(tr("Ctrl+Shift+A")), [this] {
    if (selection_.empty()) return;
    if (const auto thing = edits::findThing(document_->edited().layout(), selection_.ids().back()))
      selectAll(thing->kind);
  });
  menu.add(tr("Select &nothing"), QKeySequence(tr("Ctrl+Shift+N")), [this] { selection_.clear(); });
}

void MainWindow::makeArrangeMenu() {
  MenuMaker menu(*menuBar(), tr("&Arrange"));
  const auto turn = [this](double deg) {
    apply(edits::turnThings(document_->edited().layout(), selection_.ids(), deg));
  };
  menu.add(tr("Turn &left by 90°"), QKeySequence(tr("Ctrl+L")), [turn] { turn(kQuarter_deg); });
  menu.add(tr("Turn &right by 90°"), QKeySequence(tr("Ctrl+R")), [turn] { turn(-kQuarter_deg); });
  menu.addSeparator();
  const auto align = [&](const QString& text, edits::Align how) {
    menu.add(text,
             [this, how] { apply(edits::alignThings(document_->edited().layout(), selection_.ids(), how)); });
  };
  align(tr("Align le&ft sides"), edits::Align::Left);
  align(tr("Align right &sides"), edits::Align::Right);
  align(tr("Align &top sides"), edits::Align::Top);
  align(tr("Align &bottom sides"), edits::Align::Bottom);
  align(tr("Align middles &across"), edits::Align::MiddleAcross);
  align(tr("Align middles &up and down"), edits::Align::MiddleUp);
  menu.addSeparator();
  const auto distribute = [&](const QString& text, edits::Along axis) {
    menu.add(text, [this, axis] {
      apply(edits::distributeThings(document_->edited().layout(), selection_.ids(), axis));
    });
  };
  distribute(tr("Equal &gaps across"), edits::Along::Across);
  distribute(tr("Equal gaps up and &down"), edits::Along::Up);
}

void MainWindow::makeDrawMenu() {
  MenuMaker menu(*menuBar(), tr("&Draw"));
  const auto tool = [&](const QString& text, plan::Choice choice, const QString& key = {}) {
    menu.add(text, QKeySequence(key), [this, choice] { choose(choice); });
  };
  tool(tr("&Pick things"), {What::Select}, tr("Ctrl+1"));
  menu.addSeparator();
  tool(tr("&Room, a rectangle"), {What::Room}, tr("Ctrl+2"));
  tool(tr("Room by &corners"), {What::RoomByCorners}, tr("Ctrl+3"));
  tool(tr("&Door"), {What::Door}, tr("Ctrl+4"));
  QMenu* machines = menu.addMenu(tr("&Machine"));
  QMenu* devices = menu.addMenu(tr("&Stop device"));
  // With the shop's own, which come and go with the file.
  const auto fill = [this, machines, devices] {
    const auto add = [this](QMenu* to, const std::string& label, const plan::Choice& choice) {
      to->addAction(QString::fromStdString(label.empty() ? choice.key : label),
                    [this, choice] { choose(choice); });
    };
    machines->clear();
    devices->clear();
    for (const auto& t : document_->catalogue().templates.all())
      add(machines, t.label, {What::Machine, t.key});
    for (const auto& k : document_->catalogue().kinds.all()) add(devices, k.label, {What::Device, k.key});
  };
  fill();
  connect(document_.get(), &Document::sourcesChanged, machines, fill);
  tool(tr("S&tation of the operator"), {What::Station, "operator"}, tr("Ctrl+5"));
  tool(tr("St&ation of a helper"), {What::Station, "helper"});
  tool(tr("Stat&ion of a setter"), {What::Station, "setter"});
  tool(tr("Station o&f an instructor"), {What::Station, "instructor"});
  tool(tr("P&hone"), {What::Phone}, tr("Ctrl+6"));
  tool(tr("&Bench"), {What::Fixture, "bench"}, tr("Ctrl+7"));
  tool(tr("C&olumn"), {What::Fixture, "column"});
  tool(tr("Rac&k"), {What::Fixture, "rack"});
  tool(tr("&Note"), {What::Note}, tr("Ctrl+8"));
  tool(tr("Tape ch&eck"), {What::TapeCheck}, tr("Ctrl+9"));
  menu.addSeparator();
  menu.add(tr("&Underlay picture…"), [this] { chooseUnderlay(); });
  tool(tr("Sca&le the underlay"), {What::ScaleUnderlay});
}

void MainWindow::makeViewMenu() {
  MenuMaker menu(*menuBar(), tr("&View"));
  menu.add(tr("The place to &draw"), QKeySequence(tr("Alt+1")), [this] { goToPlace(WorkPlace::Draw); });
  menu.add(tr("The place to &audit"), QKeySequence(tr("Alt+2")), [this] { goToPlace(WorkPlace::Audit); });
  menu.add(tr("The place to in&spect"), QKeySequence(tr("Alt+3")), [this] { goToPlace(WorkPlace::Inspect); });
  menu.add(tr("The place of the pos&ter"), QKeySequence(tr("Alt+4")),
           [this] { goToPlace(WorkPlace::Poster); });
  menu.addSeparator();
  const auto zoom = [this](double factor) {
    workPlace() == WorkPlace::Poster ? poster_place_->page().zoomBy(factor) : plan_->zoomBy(factor);
  };
  menu.add(tr("Zoom &in"), QKeySequence::ZoomIn, [zoom] { zoom(kZoomStep); });
  menu.add(tr("Zoom &out"), QKeySequence::ZoomOut, [zoom] { zoom(1 / kZoomStep); });
  menu.add(tr("Show &everything"), QKeySequence(tr("0")),
           [this] { workPlace() == WorkPlace::Poster ? poster_place_->page().fit() : plan_->fit(); });
  QAction* grid = menu.add(tr("&Grid"), QKeySequence(tr("Ctrl+'")), [] {});
  grid->setCheckable(true);
  connect(grid, &QAction::toggled, this, [this](bool shows) {
    plan_->showGrid(shows);
    settings_.setValue("window/grid", shows);
  });
  grid->setChecked(settings_.value("window/grid", true).toBool());
  plan_->showGrid(grid->isChecked());
  menu.add(tr("Go to what is &picked"), QKeySequence(tr("Ctrl+G")), [this] {
    if (!selection_.empty()) plan_->goTo(selection_.ids().back());
  });
  menu.addSeparator();
  fillLanguageMenu(*menu.addMenu(tr("&Language")), settings_,
                   [this](const QString& said) { notices_->show("language", said, {}); });
}

void MainWindow::makeAuditMenu() {
  MenuMaker menu(*menuBar(), tr("Audi&t"));
  audit_place_->fillMenu(
      menu,
      [this] {
        if (workPlace() != WorkPlace::Audit) goToPlace(WorkPlace::Audit);
      },
      [this](const QString& what, const auto& then) { onceAudited(what, then); });
}

void MainWindow::makeInspectMenu() {
  MenuMaker menu(*menuBar(), tr("&Inspect"));
  inspect_place_->fillMenu(menu, [this] {
    if (workPlace() != WorkPlace::Inspect) goToPlace(WorkPlace::Inspect);
  });
  menu.addSeparator();
  menu.add(tr("Save the sheet of this round as P&DF…"),
           [this] { doOrTell(asker_, [this] { round_papers_->saveSheet(); }); });
  menu.add(tr("Save the &bundle of a period…"),
           [this] { doOrTell(asker_, [this] { round_papers_->saveBundle(); }); });
}

void MainWindow::makePosterMenu() {
  MenuMaker menu(*menuBar(), tr("&Poster"));
  poster_place_->fillMenu(menu, [this] { goToPlace(WorkPlace::Poster); });
}

void MainWindow::makeHelpMenu() {
  MenuMaker menu(*menuBar(), tr("&Help"));
  menu.add(tr("What is &this?"), QKeySequence::WhatsThis, [] { QWhatsThis::enterWhatsThisMode(); });
  menu.add(tr("&Find an action…"), QKeySequence(tr("Ctrl+/")), [this] { findAction(); });
  menu.addSeparator();
  menu.add(tr("What Stopwalk does &not do"), [this] { showCaution(); });
}

}  // namespace stopwalk::window
