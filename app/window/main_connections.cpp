// Who listens to whom at the window.
#include <QLabel>
#include <QStatusBar>

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
#include "app/window/files_beside.h"
#include "app/window/first_minutes.h"
#include "app/window/inspect_place.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/poster_place.h"
#include "app/window/records_beside.h"

namespace stopwalk::window {
namespace {

constexpr const char *kNoReach = "no reach map", *kNotKept = "not kept";  // notices
constexpr int kRefusal_ms = 10000;  // so long the bottom line says why nothing was changed, and what was done

}  // namespace

void MainWindow::connectParts() {
  connect(&document_->edited(), &edits::EditedLayout::changed, this, &MainWindow::layoutChanged);
  connect(&document_->edited(), &edits::EditedLayout::refused, this, [this](const QString& why) {
    const bool inspects = workPlace() == WorkPlace::Inspect && !document_->isReadOnly();
    statusBar()->showMessage(
        inspects ? tr("Nothing was changed: while devices are inspected the plan is only looked at.") : why,
        kRefusal_ms);
  });
  connect(&document_->edited(), &edits::EditedLayout::changed, statusBar(), &QStatusBar::clearMessage);
  connect(document_.get(), &Document::stateChanged, this, &MainWindow::showTitle);
  connect(document_.get(), &Document::stateChanged, this, [this] {
    showInspection();  // first: records are of a layout
    records_->follow(document_->path());
  });
  connect(records_, &RecordsBeside::changed, this, &MainWindow::recordsChanged);
  // What is due, and what was let stand until yesterday.
  connect(&day_change_, &DayChange::changed, this, &MainWindow::recordsChanged);
  connect(records_, &RecordsBeside::begun, this, [this] {  // what is audited is by those of before
    inspect_place_->recordsAreRead();
    if (!shown_) return;
    if (answer_) plan_->setReport(answer_->shown(), false);
    if (reach_) showReach();
    freshness_.changed();
  });
  connect(files_beside_, &FilesBeside::changed, this, &MainWindow::filesBesideChanged);
  connect(document_.get(), &Document::sourcesChanged, this, &MainWindow::sourcesChanged);
  connect(document_.get(), &Document::opened, this, [this] {
    selection_.clear();  // what is called the same is another thing
    live_audit_.leave();
    beside_.leave();
    answer_.reset();
    leaveOnceAudited(tr("another layout was opened"));
    plan_->setReport(nullptr, false);
    live_reach_.leave();
    reach_.reset();
    plan_->showReach(nullptr, true);
    audit_place_->forget();
    things_->setReport(nullptr);
    details_->setProblems({});
    problems_->setUnknown();
    suppose({});  // what was supposed was so of another workshop
    plan_->choose({});
    plan_->fit();
  });
  connect(document_.get(), &Document::opened, this, &MainWindow::showWarnings);
  connect(document_.get(), &Document::opened, this, [this] {
    for (const char* of_the_file_before : {"left records", kOnDisk, kNotKept})
      notices_->clear(of_the_file_before);
  });
  connect(files_.get(), &FileFlow::savedElsewhere, this, &MainWindow::showLeftRecords);
  connect(document_.get(), &Document::saved, this, [this] {
    if (document_->diskState() == documents::DiskState::Same) notices_->clear(kOnDisk);
    if (!profile_of_) audit();  // in another folder, with its kinds and profiles
  });
  connect(document_.get(), &Document::onDisk, this, &MainWindow::showDiskState);
  connect(document_.get(), &Document::notKept, this, [this](const documents::Trouble& trouble) {
    notices_->show(kNotKept, tr("This work is not safe from a crash: %1").arg(trouble.text()), {},
                   NoticeBar::Weight::Grave);
  });
  const auto isKept = [this] { notices_->clear(kNotKept); };
  connect(document_.get(), &Document::kept, this, isKept);
  connect(document_.get(), &Document::stateChanged, this, [this, isKept] {
    if (document_->isSaved()) isKept();
  });
  connect(files_.get(), &FileFlow::typingEnds, plan_, &plan::PlanView::endDrag);
  connect(files_.get(), &FileFlow::recentChanged, this, &MainWindow::fillRecent);
  connect(files_.get(), &FileFlow::typingEnds, details_, &panels::Details::applyPending);
  connect(files_.get(), &FileFlow::typingEnds, &audit_place_->rules(), &panels::RulesPanel::applyPending);
  connect(files_.get(), &FileFlow::said, this, [this](const QString& text) { sentence_->setText(text); });
  connect(plan_, &plan::PlanView::said, this, [this](const QString& text) {
    if (workPlace() != WorkPlace::Poster) sentence_->setText(text);
  });
  connect(plan_, &plan::PlanView::previewed, this, [this](std::shared_ptr<const layout::Layout> preview) {
    shown_ = preview ? preview : document_->edited().snapshot();
    audit();
  });
  connectPanels();
  connect(&freshness_, &Freshness::aged, this, &MainWindow::showAge);
  connect(&live_audit_, &LiveAudit::answered, this, &MainWindow::showAnswer);
  connect(&live_audit_, &LiveAudit::failed, this, [this](const QString& why) {
    leaveOnceAudited(tr("the audit could not be computed"));
    notices_->show(
        kNotAudited,
        tr("The audit could not be computed: %1. What is shown of it is of a moment ago. Close other "
           "programs if memory is short; the next change is audited anew.")
            .arg(why),
        {{tr("Audit again"), [this] { audit(); }}}, NoticeBar::Weight::Grave);
  });
  connect(&live_reach_, &LiveReach::failed, this, [this](const QString& why) {
    notices_->show(kNoReach, tr("The colours of the floor could not be computed: %1.").arg(why),
                   {{tr("Close"), {}}});
  });
  connect(&live_reach_, &LiveReach::answered, this, [this](std::shared_ptr<const plan::ReachLayer> reach) {
    reach_ = std::move(reach);
    notices_->clear(kNoReach);
    showReach();
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
  connect(audit_place_, &AuditPlace::looked, this, [this](const audit::Finding* finding) {
    plan_->lookAt(workPlace() == WorkPlace::Audit ? finding : nullptr);
  });
  connect(audit_place_, &AuditPlace::supposed, this, &MainWindow::suppose);
  connect(audit_place_, &AuditPlace::exportWanted, this, &MainWindow::exportStations);
  connect(audit_place_, &AuditPlace::exportFindingsWanted, this, &MainWindow::exportFindings);
  connect(audit_place_, &AuditPlace::profileFileWanted, this, &MainWindow::chooseProfileFile);
  connect(audit_place_, &AuditPlace::profileSaveWanted, this, &MainWindow::saveProfile);
  connect(audit_place_, &AuditPlace::cautionWanted, this, &MainWindow::showCaution);
  audit_place_->suppose().setMiddle([this] { return plan_->middle(); });
  connect(plan_, &plan::PlanView::supposed, this, &MainWindow::suppose);
  connect(plan_, &plan::PlanView::tookHold, &audit_place_->suppose(), &panels::SupposePanel::choose);
  connect(poster_place_, &PosterPlace::cautionWanted, this, &MainWindow::showCaution);
  connect(poster_place_, &PosterPlace::lookWanted, records_, &RecordsBeside::lookNow);
  connect(poster_place_, &PosterPlace::said, sentence_, &QLabel::setText);
  connect(document_.get(), &Document::opened, poster_place_, &PosterPlace::forgetWalls);
  connect(document_.get(), &Document::stateChanged, this, &MainWindow::showPoster);
  connect(document_.get(), &Document::onDisk, this, &MainWindow::showPoster);
  connect(document_.get(), &Document::onDisk, this, &MainWindow::showInspection);
  connect(inspect_place_, &InspectPlace::goTo, this, [this](const QString& id) {
    if (!edits::findThing(document_->edited().layout(), id.toStdString())) return selection_.clear();
    selection_.set(id.toStdString());
    plan_->bringIntoSight(id.toStdString());
  });
  connect(inspect_place_, &InspectPlace::onPlan, plan_, &plan::PlanView::showInspected);
  connect(inspect_place_, &InspectPlace::lookWanted, records_, &RecordsBeside::lookNow);
  connect(
      inspect_place_, &InspectPlace::written, this,
      [this](bool on_disk) {
        if (std::exchange(closes_when_written_, false) && on_disk) close();
      },
      Qt::QueuedConnection);
  connect(inspect_place_, &InspectPlace::recorded, records_, &RecordsBeside::lookNow);
  connect(inspect_place_, &InspectPlace::begunAnew, records_, &RecordsBeside::takeAsTheyAre);
  connect(inspect_place_, &InspectPlace::said, this, [this](const QString& said) {
    statusBar()->showMessage(said, kRefusal_ms);  // a pointer that moves on the plan is not to take it away
  });
  connect(inspect_place_, &InspectPlace::saveWanted, files_.get(), &FileFlow::save);
  connect(inspect_place_, &InspectPlace::cautionWanted, this, &MainWindow::showCaution);
}

}  // namespace stopwalk::window
