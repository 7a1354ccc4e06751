#include "app/window/main_window.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QUrl>

#include "app/panels/details/details.h"
#include "app/panels/findings/finding_list.h"
#include "app/panels/gallery/gallery.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/commands.h"
#include "app/window/first_minutes.h"
#include "app/window/inspect_place.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/poster_place.h"
#include "app/window/records_beside.h"
#include "app/window/recovery_dialog.h"

namespace stopwalk::window {

MainWindow::MainWindow(documents::RecoveryStore& store, QSettings& settings, Asker* asker)
    : settings_(settings),
      dialogs_(asker ? nullptr : std::make_unique<DialogAsker>(this)),
      asker_(asker ? *asker : *dialogs_),
      document_(std::make_unique<Document>(store, recovery_worker_)),
      files_(std::make_unique<FileFlow>(*document_, store, asker_, settings)) {
  recovery_worker_.setMaxThreadCount(1);
  setAcceptDrops(true);
  layOut();
  keepLettersForMenus(*menuBar());
  makeFileMenu();
  makeEditMenu();
  makeArrangeMenu();
  makeDrawMenu();
  makeViewMenu();
  makeAuditMenu();
  makeInspectMenu();
  makePosterMenu();
  makeHelpMenu();
  connectParts();
  if (!restoreGeometry(settings_.value("window/geometry").toByteArray())) resize(1280, 800);
  split_->restoreState(settings_.value("window/split").toByteArray());
  plan_and_details_->restoreState(settings_.value("window/details").toByteArray());
  sourcesChanged();
  layoutChanged();
  showTitle();
}

MainWindow::~MainWindow() = default;

WorkPlace MainWindow::workPlace() const {
  return static_cast<WorkPlace>(places_->currentIndex());
}

void MainWindow::goToPlace(WorkPlace place) {
  places_->setCurrentIndex(static_cast<int>(place));
  if (place == WorkPlace::Inspect && before_inspection_.isEmpty()) before_inspection_ = split_->sizes();
  // A page that is not seen must not make the other wide.
  for (int i = 0; i < left_->count(); ++i) {
    const auto policy = i == static_cast<int>(place) ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    left_->widget(i)->setSizePolicy(policy, policy);
  }
  left_->setCurrentIndex(static_cast<int>(place));
  const bool poster = place == WorkPlace::Poster, inspect = place == WorkPlace::Inspect;
  page_or_plan_->setCurrentIndex(poster ? 1 : 0);
  plan_and_details_->widget(1)->setVisible(!poster && !inspect);
  poster_place_->under()->setVisible(poster);
  if (poster) selection_.clear();  // nothing that is not seen is picked
  if (!poster) poster_place_->leave();
  audit_place_->under()->setVisible(place == WorkPlace::Audit);
  inspect_place_->under()->setVisible(inspect);
  problems_->setVisible(place == WorkPlace::Draw);
  if (place != WorkPlace::Draw) plan_->choose({});
  plan_->lookAt(place == WorkPlace::Audit ? audit_place_->drawn() : nullptr);
  if (poster) poster_place_->come();
  if (!inspect) inspect_place_->leave();
  if (shown_) suppose(suppositions_);
  allowChanges();
  if (inspect) return inspect_place_->come();
  if (!before_inspection_.isEmpty()) split_->setSizes(std::exchange(before_inspection_, {}));
}

// While devices are inspected the plan is only looked at: a finger slips.
void MainWindow::allowChanges() {
  document_->edited().setReadOnly(document_->isReadOnly() || workPlace() == WorkPlace::Inspect);
}

// Picks a thing and brings it into sight; of one that is nowhere, such as a rule about the whole, nothing.
void MainWindow::goTo(const std::string& id) {
  if (!edits::findThing(document_->edited().layout(), id)) return;
  selection_.set(id);
  plan_->goTo(id);
}

QString MainWindow::sentence() const {
  const QString passing = statusBar()->currentMessage();
  return passing.isEmpty() ? sentence_->text() : passing;
}

void MainWindow::sourcesChanged() {
  kinds_ = std::make_shared<const layout::DeviceKinds>(document_->catalogue().kinds);
  records_->setLayout(document_->edited().snapshot(), kinds_);
  profile_of_.reset();
  shop_files_ = shopFilesThere();
  notices_->clear("shop files");
  plan_->setSources(document_->catalogue(), document_->folder());
  gallery_->setCatalogue(document_->catalogue());
  details_->rebuild();
}

void MainWindow::layoutChanged() {
  shown_ = document_->edited().snapshot();
  records_->setLayout(shown_, kinds_);
  const auto gone = [&](const std::string& id) { return !edits::findThing(*shown_, id); };
  auto ids = selection_.ids();
  if (std::erase_if(ids, gone) > 0) selection_.set(std::move(ids));
  showFirstMinutes();
  if (auto known = planning::knownOnly(suppositions_, *shown_); known != suppositions_)
    suppose(known);
  else
    audit();
  showFailed();
}

// On an empty plan, until something is being drawn there.
void MainWindow::showFirstMinutes() {
  first_minutes_->setVisible(*shown_ == Document::emptyLayout() &&
                             plan_->choice().what == plan::Choice::What::Select);
  first_minutes_->place();
}

void MainWindow::begin(const QString& path) {
  offerFound();
  if (!path.isEmpty() && !document_->isAt(QFileInfo(path).absoluteFilePath())) openPath(path);
}

void MainWindow::offerFound() {
  for (const documents::Found& found : files_->found()) {
    RecoveryDialog dialog(found, FileFlow::kindsFor(found.layout_path), this);
    dialog.exec();
    if (dialog.answer() == RecoveryDialog::Answer::GoOn) files_->recover(found);
    if (dialog.answer() == RecoveryDialog::Answer::Discard) files_->discard(found);
  }
}

void MainWindow::choose(const plan::Choice& choice) {
  if (workPlace() == WorkPlace::Poster || workPlace() == WorkPlace::Inspect) goToPlace(WorkPlace::Draw);
  plan_->choose(choice);
  plan_->setFocus();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (inspect_place_->isWriting()) {
    closes_when_written_ = true;
    sentence_->setText(tr("A record is being written. The window closes when it is on the disk."));
    return event->ignore();
  }
  if (!files_->mayClose()) return event->ignore();
  if (!before_inspection_.isEmpty()) split_->setSizes(before_inspection_);
  settings_.setValue("window/geometry", saveGeometry());
  settings_.setValue("window/split", split_->saveState());
  settings_.setValue("window/details", plan_and_details_->saveState());
  event->accept();
}

void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  if (first_minutes_->isVisible()) first_minutes_->setFocus();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.first().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  openPath(event->mimeData()->urls().first().toLocalFile());
}

}  // namespace stopwalk::window
