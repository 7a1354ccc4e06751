#include "app/window/main_window.h"

#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QLabel>
#include <QMimeData>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabBar>
#include <QTabWidget>
#include <QToolBar>
#include <QUrl>
#include <QVBoxLayout>

#include "app/edits/add_things.h"
#include "app/panels/details/details.h"
#include "app/panels/gallery/gallery.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/panels/things/thing_list.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/first_minutes.h"
#include "app/window/notice_bar.h"
#include "app/window/profile_for.h"
#include "app/window/recovery_dialog.h"

namespace stopwalk::window {
namespace {

constexpr int kLeft_px = 240;
constexpr int kRight_px = 340;
constexpr int kUnder_px = 240;
constexpr int kRefusal_ms = 10000;  // so long the bottom line says why nothing was changed

}  // namespace

MainWindow::MainWindow(documents::RecoveryStore& store, QSettings& settings, Asker* asker)
    : settings_(settings),
      dialogs_(asker ? nullptr : std::make_unique<DialogAsker>(this)),
      asker_(asker ? *asker : *dialogs_),
      document_(std::make_unique<Document>(store, recovery_worker_)),
      files_(std::make_unique<FileFlow>(*document_, store, asker_, settings)) {
  recovery_worker_.setMaxThreadCount(1);
  setAcceptDrops(true);
  layOut();
  makeFileMenu();
  makeEditMenu();
  makeArrangeMenu();
  makeDrawMenu();
  makeViewMenu();
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

void MainWindow::layOut() {
  plan_ = new plan::PlanView(document_->edited(), selection_, document_->catalogue());
  notices_ = new NoticeBar;
  audit_place_ = new AuditPlace({document_->edited(), selection_, document_->catalogue()}, this);
  left_ = new QStackedWidget;
  left_->addWidget(leftSide());
  left_->addWidget(audit_place_->side());

  plan_and_details_ = new QSplitter(Qt::Horizontal);
  plan_and_details_->addWidget(middle());
  plan_and_details_->addWidget(rightSide());
  plan_and_details_->setStretchFactor(0, 1);
  plan_and_details_->setSizes({1280 - kLeft_px - kRight_px, kRight_px});
  auto* over = new QSplitter(Qt::Vertical);
  over->addWidget(plan_and_details_);
  over->addWidget(audit_place_->under());
  over->setStretchFactor(0, 1);
  over->setSizes({500, kUnder_px});
  split_ = new QSplitter(Qt::Horizontal);
  split_->addWidget(left_);
  split_->addWidget(over);
  split_->setStretchFactor(1, 1);
  split_->setSizes({kLeft_px, 1280 - kLeft_px});
  for (QSplitter* splitter : {plan_and_details_, over, split_}) splitter->setChildrenCollapsible(false);
  setCentralWidget(split_);
  makePlaces();

  first_minutes_ = new FirstMinutes(FileFlow::samples(), plan_);
  sentence_ = new QLabel;
  sentence_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  statusBar()->addWidget(sentence_, 1);
  statusBar()->setSizeGripEnabled(false);
}

QWidget* MainWindow::middle() {
  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(notices_);
  column->addWidget(plan_, 1);
  return middle;
}

// Along the top, in the order of the work.
void MainWindow::makePlaces() {
  places_ = new QTabBar;
  places_->setAccessibleName(tr("Places of work"));
  places_->setDrawBase(false);
  places_->setExpanding(false);
  QFont bold = places_->font();
  bold.setBold(true);
  places_->setFont(bold);
  places_->addTab(tr("Draw"));
  places_->addTab(tr("Audit"));
  places_->setTabToolTip(0, tr("Draw and change the plan (Alt+1)"));
  places_->setTabToolTip(1, tr("Findings, all stations, and what if (Alt+2)"));
  auto* bar = addToolBar(tr("Places of work"));
  bar->setObjectName("places");
  bar->setMovable(false);
  bar->toggleViewAction()->setVisible(false);
  bar->addWidget(places_);
  connect(places_, &QTabBar::currentChanged, this,
          [this](int place) { goToPlace(static_cast<WorkPlace>(place)); });
  goToPlace(WorkPlace::Draw);
}

WorkPlace MainWindow::workPlace() const {
  return static_cast<WorkPlace>(places_->currentIndex());
}

void MainWindow::goToPlace(WorkPlace place) {
  places_->setCurrentIndex(static_cast<int>(place));
  // A page that is not seen must not make the other wide.
  for (int i = 0; i < left_->count(); ++i) {
    const auto policy = i == static_cast<int>(place) ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    left_->widget(i)->setSizePolicy(policy, policy);
  }
  left_->setCurrentIndex(static_cast<int>(place));
  audit_place_->under()->setVisible(place == WorkPlace::Audit);
  problems_->setVisible(place == WorkPlace::Draw);
  if (place == WorkPlace::Audit) plan_->choose({});
  if (shown_) suppose(suppositions_);
}

QWidget* MainWindow::leftSide() {
  auto* tabs = new QTabWidget;
  tabs->setObjectName("drawing");
  tabs->setDocumentMode(true);
  tabs->setAccessibleName(tr("What there is to draw, and what is drawn"));
  gallery_ = new panels::Gallery(document_->catalogue());
  things_ = new panels::ThingList({document_->edited(), selection_, document_->catalogue()});
  tabs->addTab(gallery_, tr("Gallery"));
  tabs->addTab(things_, tr("Things"));
  return tabs;
}

QWidget* MainWindow::rightSide() {
  auto* side = new QSplitter(Qt::Vertical);
  details_ = new panels::Details({document_->edited(), selection_, document_->catalogue()});
  problems_ = new panels::ProblemList;
  side->addWidget(details_);
  side->addWidget(problems_);
  side->setStretchFactor(0, 1);
  side->setSizes({500, 240});
  side->setChildrenCollapsible(false);
  return side;
}

void MainWindow::connectPanels() {
  connect(gallery_, &panels::Gallery::chosen, this, [this](const plan::Choice& choice) {
    if (choice.what == plan::Choice::What::ScaleUnderlay && !document_->edited().layout().underlay)
      chooseUnderlay();
    else
      choose(choice);
  });
  connect(plan_, &plan::PlanView::chosen, gallery_, &panels::Gallery::showChoice);
  connect(plan_, &plan::PlanView::chosen, this, &MainWindow::showFirstMinutes);
  connect(plan_, &plan::PlanView::menuWanted, this, &MainWindow::showMenu);
  connect(things_, &panels::ThingList::goTo, this,
          [this](const QString& id) { plan_->goTo(id.toStdString()); });
  connect(problems_, &panels::ProblemList::goTo, this, [this](const QString& id) { goTo(id.toStdString()); });
  connect(audit_place_, &AuditPlace::goTo, this, [this](const QString& id) { goTo(id.toStdString()); });
  connect(audit_place_, &AuditPlace::supposed, this, &MainWindow::suppose);
  connect(audit_place_, &AuditPlace::exportWanted, this, &MainWindow::exportStations);
  connect(audit_place_, &AuditPlace::cautionWanted, this, &MainWindow::showCaution);
  audit_place_->suppose().setMiddle([this] { return plan_->middle(); });
  connect(plan_, &plan::PlanView::supposed, this, &MainWindow::suppose);
}

// Picks a thing and brings it into sight; of one that is nowhere, such as a rule about the whole, nothing.
void MainWindow::goTo(const std::string& id) {
  if (!edits::findThing(document_->edited().layout(), id)) return;
  selection_.set(id);
  plan_->goTo(id);
}

void MainWindow::connectParts() {
  connect(&document_->edited(), &edits::EditedLayout::changed, this, &MainWindow::layoutChanged);
  connect(&document_->edited(), &edits::EditedLayout::refused, this,
          [this](const QString& why) { statusBar()->showMessage(why, kRefusal_ms); });
  connect(&document_->edited(), &edits::EditedLayout::changed, statusBar(), &QStatusBar::clearMessage);
  connect(document_.get(), &Document::stateChanged, this, &MainWindow::showTitle);
  connect(document_.get(), &Document::sourcesChanged, this, &MainWindow::sourcesChanged);
  connect(document_.get(), &Document::opened, this, [this] {
    selection_.clear();  // what is called the same is another thing
    plan_->choose({});
    plan_->fit();
  });
  connect(document_.get(), &Document::opened, this, &MainWindow::showWarnings);
  connect(document_.get(), &Document::saved, this, [this] {
    if (!profile_of_) audit();  // in another folder, with its kinds and profiles
  });
  connect(document_.get(), &Document::onDisk, this, &MainWindow::showDiskState);
  connect(document_.get(), &Document::notKept, this, [this](const documents::Trouble& trouble) {
    notices_->show("not kept", tr("This work is not safe from a crash: %1").arg(trouble.text()), {});
  });
  connect(files_.get(), &FileFlow::recentChanged, this, &MainWindow::fillRecent);
  connect(files_.get(), &FileFlow::typingEnds, details_, &panels::Details::applyPending);
  connect(files_.get(), &FileFlow::said, this, [this](const QString& text) { sentence_->setText(text); });
  connect(plan_, &plan::PlanView::said, sentence_, &QLabel::setText);
  connect(plan_, &plan::PlanView::previewed, this, [this](std::shared_ptr<const layout::Layout> preview) {
    shown_ = preview ? preview : document_->edited().snapshot();
    audit();
  });
  connectPanels();
  connect(&live_audit_, &LiveAudit::answered, this, &MainWindow::showAnswer);
  connect(&live_reach_, &LiveReach::answered, this, [this](std::shared_ptr<const audit::Reach> reach) {
    reach_ = std::move(reach);
    plan_->showReach(reach_, live_reach_.isCurrent());
  });
  connect(&audit_place_->reach(), &panels::ReachChooser::chosen, this, [this] { askReach(); });
  connect(first_minutes_, &FirstMinutes::openWanted, files_.get(), &FileFlow::open);
  connect(first_minutes_, &FirstMinutes::sampleWanted, files_.get(), &FileFlow::openSample);
  connect(first_minutes_, &FirstMinutes::roomWanted, this, [this](double width, double depth) {
    auto added = edits::addRoom(document_->edited().layout(),
                                {{0, 0}, {width, 0}, {width, depth}, {0, depth}}, tr("Room 1").toStdString());
    document_->edited().apply(std::move(added.edit));
    plan_->fit();
    plan_->setFocus();
  });
  fillRecent();
}

QString MainWindow::sentence() const {
  const QString passing = statusBar()->currentMessage();
  return passing.isEmpty() ? sentence_->text() : passing;
}

void MainWindow::sourcesChanged() {
  kinds_ = std::make_shared<const layout::DeviceKinds>(document_->catalogue().kinds);
  profile_of_.reset();
  plan_->setSources(document_->catalogue(), document_->folder());
  gallery_->setCatalogue(document_->catalogue());
  details_->rebuild();
}

void MainWindow::layoutChanged() {
  shown_ = document_->edited().snapshot();
  const auto gone = [&](const std::string& id) { return !edits::findThing(*shown_, id); };
  auto ids = selection_.ids();
  if (std::erase_if(ids, gone) > 0) selection_.set(std::move(ids));
  showFirstMinutes();
  if (auto known = planning::knownOnly(suppositions_, *shown_); known != suppositions_)
    suppose(known);
  else
    audit();
}

// On an empty plan, until something is being drawn there.
void MainWindow::showFirstMinutes() {
  first_minutes_->setVisible(*shown_ == Document::emptyLayout() &&
                             plan_->choice().what == plan::Choice::What::Select);
  first_minutes_->place();
}

// Asks for an audit of what is shown; until it is there the last one is shown as not current.
void MainWindow::audit() {
  if (answer_) plan_->setReport(answer_->shown(), false);
  const std::pair profile_of{shown_->profile, document_->path()};
  if (profile_of_ != profile_of) {
    ProfileFor found = profileFor(*shown_, document_->path());
    profile_ = std::move(found.profile);
    if (found.trouble.isEmpty())
      notices_->clear("profile");
    else
      notices_->show("profile", found.trouble, {});
    profile_of_ = profile_of;
    audit_place_->rules().setProfile(profile_);
  }
  LiveAudit::Question question{shown_, kinds_, audit::withHouseRules(profile_, shown_->house_rules)};
  if (workPlace() == WorkPlace::Audit) question.suppositions = suppositions_;
  live_audit_.ask(std::move(question));
  askReach();
}

// The map of what is shown, as it is supposed; pale until the answer comes.
void MainWindow::askReach() {
  const auto target = audit_place_->reach().target();
  if (workPlace() != WorkPlace::Audit || !target) {
    live_reach_.leave();
    reach_.reset();
    return plan_->showReach(nullptr, true);
  }
  if (reach_) plan_->showReach(reach_, false);
  const auto layout =
      suppositions_.empty()
          ? shown_
          : std::make_shared<const layout::Layout>(planning::supposed(*shown_, suppositions_));
  live_reach_.ask({layout, kinds_, suppositions_.hours, *target});
}

void MainWindow::showAnswer(std::shared_ptr<const LiveAudit::Answer> answer) {
  answer_ = std::move(answer);
  const bool is_current = answer_->layout == shown_ && live_audit_.isCurrent();
  plan_->setReport(answer_->shown(), is_current, answer_->supposed ? answer_->report : nullptr);
  if (!is_current || plan_->isPreviewing()) return;
  things_->setReport(answer_->report);
  details_->setProblems(panels::problemsOf(*answer_->shown()));
  problems_->setProblems(panels::problemsOf(*answer_->report));
  audit_place_->show(*answer_, *kinds_);
}

void MainWindow::suppose(const planning::Suppositions& suppositions) {
  suppositions_ = suppositions;
  const bool holds = workPlace() == WorkPlace::Audit;
  plan_->setSupposed(holds ? suppositions_ : planning::Suppositions());
  audit_place_->suppose().set(suppositions_);
  const QString what = panels::sentenceOf(suppositions_, *shown_, *kinds_);
  if (holds && !what.isEmpty())
    notices_->show("supposed", tr("What if %1? Nothing of this is saved.").arg(what),
                   {{tr("Back to how it is"), [this] { suppose({}); }}});
  else
    notices_->clear("supposed");
  audit();
}

void MainWindow::showTitle() {
  QString title = document_->name() + "[*]";
  if (document_->isReadOnly()) title += tr(" (for looking only)");
  setWindowTitle(title + " – Stopwalk");
  setWindowModified(!document_->isSaved());
  document_->edited().setReadOnly(document_->isReadOnly());
  showNotices();
}

void MainWindow::showNotices() {
  const auto trouble = document_->lock().trouble();
  if (document_->path().isEmpty() || !trouble) return notices_->clear("read-only");
  notices_->show("read-only", trouble->text(), {{tr("Save as…"), [this] { files_->saveAs(); }}});
}

// What the reader had to say about a file that it could read all the same.
void MainWindow::showWarnings() {
  const auto& warnings = document_->diagnostics();
  if (warnings.empty()) return notices_->clear("reader");
  QString text = tr("%1, line %2: %3.")
                     .arg(document_->name())
                     .arg(warnings.front().line)
                     .arg(QString::fromStdString(warnings.front().text));
  if (warnings.size() > 1) text += " " + tr("And %n more.", nullptr, static_cast<int>(warnings.size()) - 1);
  const auto showAll = [this, name = document_->name(), lines = FileFlow::linesOf(warnings)] {
    asker_.ask({tr("What was noticed in %1").arg(name),
                tr("The layout was opened all the same. The lines are below."),
                {tr("OK")},
                lines});
  };
  notices_->show("reader", text, {{tr("Show them all"), showAll}, {tr("Close"), {}}});
}

void MainWindow::showDiskState(documents::DiskState state) {
  const QString name = document_->name();
  switch (state) {
    case documents::DiskState::Same:
      return notices_->clear("disk");
    case documents::DiskState::Changed:
      return notices_->show(
          "disk", tr("%1 was changed by another program.").arg(name),
          {{tr("Open it as it is now"), [this] { files_->revert(); }}, {tr("Keep mine"), {}}});
    case documents::DiskState::Vanished:
      return notices_->show("disk", tr("%1 is no longer on the disk.").arg(name),
                            {{tr("Save it again"), [this] { files_->save(); }}, {tr("Close"), {}}});
    case documents::DiskState::Unreadable:
      return notices_->show("disk", tr("%1 can no longer be read.").arg(name),
                            {{tr("Save as…"), [this] { files_->saveAs(); }}, {tr("Close"), {}}});
  }
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
  plan_->choose(choice);
  plan_->setFocus();
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!files_->mayClose()) return event->ignore();
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
