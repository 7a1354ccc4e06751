#include "app/panels/findings/accepting.h"

#include <QHBoxLayout>

#include "app/edits/accept_finding.h"
#include "app/panels/findings/accept_dialog.h"

namespace stopwalk::panels {

Accepting::Accepting(const Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  accept_ = new Verb(
      {tr("Accept the fin&ding…"), tr("Lets it stand for a time: why, by whom, until when"), tr("Accept…")},
      [this] { accept(); }, this);
  accept_->setShortcut(QKeySequence(tr("Ctrl+Shift+G")));
  take_back_ = new Verb(
      {tr("No lon&ger accept the finding"), tr("What lets it stand is taken out of the layout"),
       tr("Take back")},
      [this] { takeBack(); }, this);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(4, 0, 4, 4);
  addButtons(*row, {accept_, take_back_});
  row->addStretch(1);
  allow();
}

void Accepting::setReport(std::shared_ptr<const audit::Report> report) {
  report_ = std::move(report);
}

void Accepting::look(const audit::Finding* finding) {
  finding_.reset();
  idle_.reset();
  if (finding) finding_ = *finding;
  allow();
}

void Accepting::lookAtIdle(const layout::AcceptedFinding* idle) {
  look(nullptr);
  if (idle) idle_ = *idle;
  allow();
}

void Accepting::setSupposed(bool supposed) {
  supposed_ = supposed;
  allow();
}

void Accepting::allow() {
  QString why_not;
  if (idle_)
    why_not = tr("This is found no more. What accepted it can be taken back.");
  else if (!finding_)
    why_not = tr("Pick a finding first.");
  else if (supposed_)
    why_not = tr("Go back to how it is first: what is only supposed is not accepted.");
  accept_->setWhyNot(why_not);
  if (idle_) return take_back_->setWhyNot({});
  if (why_not.isEmpty() && !finding_->accepted && !finding_->unclear)
    why_not = tr("Nobody has accepted this finding.");
  take_back_->setWhyNot(why_not);
}

audit::SharedList<audit::Finding> Accepting::all() const {
  return report_ ? report_->findings : audit::SharedList<audit::Finding>();
}

void Accepting::accept() {
  if (!finding_) return;
  const auto found_now = [this] { return FoundNow{report_, age_ == Age::Current}; };
  AcceptDialog(desk_, *finding_, found_now, this).exec();
}

void Accepting::takeBack() {
  const layout::Layout& layout = desk_.edited.layout();
  if (idle_)
    desk_.edited.apply(edits::removeAcceptance(layout, *idle_));
  else if (finding_)
    desk_.edited.apply(edits::takeAcceptanceBack(layout, *finding_, all()));
}

}  // namespace stopwalk::panels
