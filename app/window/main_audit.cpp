// What is audited at the window, and where the answers are shown.
#include <QLabel>
#include <QTimer>
#include <algorithm>
#include <utility>

#include "app/panels/details/details.h"
#include "app/panels/problems/problem_list.h"
#include "app/panels/reach/reach_chooser.h"
#include "app/panels/rules/rules_panel.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/panels/things/thing_list.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/inspect_place.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/poster/poster_place.h"
#include "app/window/profile_for.h"
#include "app/window/records_beside.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

constexpr int kMostNamed = 6;

// A notice of its own each: one that is told hides no other.
QString keyOfNotDone(const QString& what) {
  return "not done: " + what;
}

}  // namespace

// Asks for an audit of what is shown; until it is there the last one is shown as not current.
void MainWindow::audit() {
  if (answer_) plan_->setReport(answer_->shown(), false);
  const bool is_dragging = plan_->isPreviewing() || plan_->isHolding();
  is_dragging ? freshness_.held() : freshness_.changed();
  const std::pair profile_of{shown_->profile, document_->path()};
  if (profile_of_ != profile_of) {
    profile_of_ = profile_of;
    takeProfile(profileFor(*shown_, document_->path()));
  }
  LiveAudit::Question question{shown_, kinds_, audit::withHouseRules(profile_, shown_->house_rules)};
  question.is_preview = is_dragging;
  question.failed = records_->failed(profile_.inspection);
  if (workPlace() == WorkPlace::Audit) question.suppositions = suppositions_;
  live_audit_.ask(std::move(question));
  askReach();
  if (is_dragging) return;  // what follows is of the layout as it is
  showInspection();
  showPoster();
}

// House rules change limits, and never how often devices are inspected.
void MainWindow::showInspection() {
  inspect_place_->follow({document_->edited().snapshot(), kinds_, profile_.inspection, document_->path(),
                          document_->fileHash()});
}

PosterSource MainWindow::posterSource() const {
  const auto layout = document_->edited().snapshot();
  const audit::Profile profile = audit::withHouseRules(profile_, layout->house_rules);
  return {layout,
          kinds_,
          profile,
          document_->fileHash(),
          planning::withoutRemoved(records_->failed(profile_.inspection), *layout),
          records_->unreadable()};
}

// Where it is looked at, the poster follows the layout and whether it is saved.
void MainWindow::showPoster() {
  if (workPlace() == WorkPlace::Poster) poster_place_->follow(posterSource());
}

// Says above the plan what the inspection records beside the layout come to, and audits by them.
void MainWindow::recordsChanged() {
  const QString trouble = records_->trouble();
  if (trouble.isEmpty())
    notices_->clear("records");
  else
    notices_->show("records", trouble, {}, NoticeBar::Weight::Grave);
  inspect_place_->setRecords(*records_);
  audit_place_->setRecords(*records_);
  if (!shown_) return;
  audit();
  showFailed();
}

// Above the plan, until they pass.
void MainWindow::showFailed() {
  QStringList failed, gone;
  const auto all = planning::withoutRemoved(records_->failed(profile_.inspection), *shown_);
  const auto missing = planning::notInLayout(all, *shown_);
  std::vector<std::string> crossed;
  for (const inspection::FailedDevice& device : all) crossed.push_back(device.device);
  plan_->setFailed(std::move(crossed));
  for (const inspection::FailedDevice& device : all)
    (std::ranges::find(missing, device) == missing.end() ? failed : gone)
        << QString::fromStdString(device.device);
  const auto few = [](QStringList ids) {
    if (ids.size() > kMostNamed) ids = ids.mid(0, kMostNamed) << QStringLiteral("…");
    return ids.join(tr(", "));
  };
  QStringList said;
  if (!failed.isEmpty())
    said << (profile_.inspection.failed_stops_count
                 ? tr("Failed and not passed since, and counted as a stop all the same: %1.").arg(few(failed))
                 : tr("Failed and not passed since, and counted as no stop: %1.").arg(few(failed)));
  if (!gone.isEmpty())
    said << tr("Failed and not passed since, and no longer on the plan under this id: %1. What stands in its "
               "place "
               "now counts as a stop.")
                .arg(few(gone));
  if (said.isEmpty()) return notices_->clear("failed");
  notices_->show("failed", said.join(' '), {}, NoticeBar::Weight::Lasting);
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
  const inspection::Schedule& schedule = profile_.inspection;
  std::vector<std::string> out_of_order;
  if (!schedule.failed_stops_count)
    for (const inspection::FailedDevice& f : records_->failed(schedule)) out_of_order.push_back(f.device);
  // While something is dragged a colour goes on meaning the same length; while something is supposed the
  // scale ends no shorter than without it.
  std::optional<double> top_mm;
  if (reach_ && (plan_->isPreviewing() || plan_->isHolding()) && reach_->reach()->target == *target)
    top_mm = reach_->top_mm();
  live_reach_.ask({layout, kinds_, suppositions_.hours, *target, std::move(out_of_order), top_mm,
                   suppositions_.empty() ? nullptr : shown_, plan_->asSeen()});
}

// The map, too, is by the records: what failed is walked past.
void MainWindow::showReach() {
  plan_->showReach(reach_, live_reach_.isCurrent() && !records_->isReading());
}

// The last answer is of what is shown, and nothing else is asked for.
bool MainWindow::isAnswered() const {
  return answer_ && answer_->layout == shown_ && live_audit_.isCurrent() && !records_->isReading();
}

void MainWindow::showAnswer(std::shared_ptr<const LiveAudit::Answer> answer) {
  answer_ = std::move(answer);
  plan_->setReport(answer_->shown(), isAnswered(), answer_->supposed ? answer_->report : nullptr,
                   answer_->narrow_places);
  if (!isAnswered() || plan_->isPreviewing() || plan_->isHolding()) return;
  notices_->clear(kNotAudited);
  showBeside();
}

// One part after the other, those in sight first. Until all have the same answer they are as marked as they
// were: as being computed.
void MainWindow::showBeside() {
  std::vector<std::function<void()>> steps = audit_place_->showing(answer_, kinds_);
  const auto add = [&](std::function<void()> step) {
    steps.insert(workPlace() == WorkPlace::Audit ? steps.end() : steps.begin(), std::move(step));
  };
  add([this, answer = answer_] {
    things_->setReport(answer->report);
    things_->refresh();
  });
  add([this, answer = answer_] { problems_->setProblems(panels::problemsOf(*answer->report)); });
  add([this, answer = answer_] { details_->setProblems(panels::problemsOf(*answer->shown())); });
  steps.push_back([this, answer = answer_] {
    if (answer != answer_ || !isAnswered() || plan_->isPreviewing() || plan_->isHolding()) return;
    freshness_.answered();
    if (once_audited_)
      QTimer::singleShot(0, this, [this, now = *std::exchange(once_audited_, std::nullopt)] {
        onceAudited(now.what, now.then);
      });
  });
  beside_.begin(std::move(steps));
}

// What waited for an audit is not done after all. Above the plan: it was said that it would be.
void MainWindow::leaveOnceAudited(const QString& why) {
  const auto left = std::exchange(once_audited_, std::nullopt);
  if (!left) return;
  notices_->show(keyOfNotDone(left->what),
                 tr("What was to be done once the audit is there is not done: %1. Ask for it again: %2.")
                     .arg(why, left->what),
                 {});
}

// At once, or as soon as what is asked for is answered. Another that is to be done goes before what waits;
// what is asked for twice is done once.
void MainWindow::onceAudited(const QString& what, std::function<void()> then) {
  files_->endTyping();
  notices_->clear(keyOfNotDone(what));
  if (answer_ && live_audit_.isCurrent() && !records_->isReading() &&
      answer_->layout == document_->edited().snapshot()) {
    beside_.finish();
    freshness_.look();
    return then();
  }
  if (once_audited_ && once_audited_->what != what) leaveOnceAudited(tr("something else was asked for"));
  once_audited_ = {what, std::move(then)};
  sentence_->setText(tr("The audit is still being computed; this is done when it is there."));
}

// Beside the plan nothing follows a drag: a list that changed at each frame could not be read.
void MainWindow::showAge(panels::Age age) {
  audit_place_->setAge(age);
  details_->setAge(age);
  things_->setAge(age);
  problems_->setAge(age);
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

}  // namespace stopwalk::window
