#include "app/rounds/check_card.h"

#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include "app/panels/announce.h"
#include "app/rounds/failure_form.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/what_was_tried.h"

namespace stopwalk::rounds {
namespace {

constexpr int kSymbol_px = 32;
constexpr int kRecordText_px = 380;  // of the narrowest card

}  // namespace

void CheckCard::showText(const CardText& text) {
  place_->setText(tr("%1 of %2").arg(text.place).arg(text.of));
  progress_->setMaximum(static_cast<int>(text.of));
  progress_->setValue(static_cast<int>(text.checked));
  progress_->setFormat(tr("Round %1 of %2: %3 checked")
                           .arg(QString::number(text.round), text.by, QString::number(text.checked)));
  symbol_->setPixmap(text.symbol.pixmap(kSymbol_px, kSymbol_px));
  symbol_->setVisible(!text.symbol.isNull());
  name_->setText(text.name);
  setAccessibleName(tr("Card: %1").arg(text.name));
  where_->setText(text.where);
  stops_->setText(text.stops);
  how_->setText(text.how);
  failed_->setText(text.failed);
  already_->setText(text.already);
  for (QLabel* label : {failed_, where_, stops_, how_, already_}) label->setVisible(!label->text().isEmpty());
  previous_->setEnabled(text.place > 1);
  next_->setEnabled(text.place < text.of);
  is_there_ = text.is_there;
  paper_round_ = text.paper;
  on_paper_->setPlaceholderText(paper_round_ ? tr("empty: now; else a time as 09:15, or 2026-03-02 09:15")
                                             : tr("empty: now; else as 2026-03-02 09:15"));
  is_stop_ = text.is_stop;
  tried_->setIsStop(is_stop_);
  timer_->setVisible(is_stop_);
  paper_->setVisible(is_there_);  // that something is no longer there is of now
  placePaper();
  setWriting(writing_);
}

void CheckCard::showEntered(const Entered& entered) {
  tried_->show(entered.tested);
  result_->show(entered.result);
  timer_->show(entered.run_down);
  failure_->show(entered);
  note_->setText(entered.note);
  second_->setText(entered.second);
  showFailureForm();
  tell({}, false);
  showVerbs();
}

// Nothing that was typed there goes unseen into a record, or out of one.
void CheckCard::showFailureForm() {
  const auto result = result_->result();
  const bool is_filled = asksForMending(entered());
  failure_->setVisible(result != inspection::Result::Pass && (result || is_filled));
  failure_->setOfFailure(result == inspection::Result::Fail);
}

// In sight, once they have their place; the keyboard stays where it is.
void CheckCard::showQuestions() {
  if (result_->result() != inspection::Result::Fail) return;
  QTimer::singleShot(0, this, [this] { scroll_->verticalScrollBar()->setValue(failure_->y()); });
}

void CheckCard::showNotRecorded(const QString& sentence) {
  not_recorded_->setText(sentence);
  not_recorded_->setVisible(!sentence.isEmpty());
}

void CheckCard::showCounts(const QString& sentence, bool is_short) {
  if (sentence == counts_->text()) return;
  counts_->setText(sentence);
  counts_->setVisible(!sentence.isEmpty());
  counts_->setFont(is_short ? bold() : font());
  record_->setAccessibleDescription(sentence);
}

QString CheckCard::notRecorded() const {
  return not_recorded_->text();
}

Entered CheckCard::entered() const {
  Entered entered;
  entered.tested = tried_->tested();
  entered.result = result_->result();
  if (is_stop_) entered.run_down = timer_->typed();
  entered.note = note_->text();
  entered.second = second_->text();
  failure_->putInto(entered);
  return entered;
}

void CheckCard::enteredChanged() {
  showFailureForm();
  const bool drops = result_->result() == inspection::Result::Pass && asksForMending(entered());
  tell(drops ? tr("With a pass, what was done and what is still to be done is not recorded: put it into the "
                  "note if it holds.")
             : QString(),
       drops);
  showVerbs();
  emit changed();
}

QString CheckCard::paperTime() const {
  return paper_round_ ? withDay(on_paper_->text(), *paper_round_) : on_paper_->text();
}

void CheckCard::setWriting(bool writing) {
  writing_ = writing;
  for (QWidget* part : {static_cast<QWidget*>(tried_), static_cast<QWidget*>(failure_),
                        static_cast<QWidget*>(timer_), paper_, static_cast<QWidget*>(result_)})
    part->setEnabled(!writing && is_there_);
  for (QWidget* part : {people_, static_cast<QWidget*>(note_), static_cast<QWidget*>(record_)})
    part->setEnabled(!writing);
  const QString paper = shortText(paperTime());
  const QString text = writing           ? tr("Being written…")
                       : !is_there_      ? tr("Record that it was taken away (Enter)")
                       : paper.isEmpty() ? tr("Record (Enter)")
                                         : tr("Record as of %1 (Enter)").arg(paper);
  const QFont large = bold(kLarge);
  const bool fits = QFontMetrics(large).horizontalAdvance(text) <= kRecordText_px;
  record_->setFont(fits ? large : bold());
  record_->setText(text);
  showVerbs();
}

// Of what is entered from paper the time comes first, as on the paper; who walks the round has none, as a
// rule.
void CheckCard::placePaper() {
  const bool first = paper_round_.has_value();
  body_->removeWidget(paper_);
  body_->insertWidget(first ? body_->indexOf(tried_) : body_->indexOf(note_) + 1, paper_);
  setTabOrder(first ? static_cast<QWidget*>(next_) : note_, on_paper_);
}

void CheckCard::goToPaper() {
  scroll_->ensureWidgetVisible(paper_);
  on_paper_->setFocus(Qt::ShortcutFocusReason);
  on_paper_->selectAll();
}

void CheckCard::paperTyped() {
  timer_->setTypedFirst(!on_paper_->text().isEmpty());
  setWriting(writing_);
  tell({}, false);
}

void CheckCard::showTop() {
  scroll_->verticalScrollBar()->setValue(0);
}

QString CheckCard::failedText() const {
  return failed_->text();
}

void CheckCard::tell(const QString& sentence, bool is_trouble) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
  told_->setFont(is_trouble ? bold() : font());
  if (!sentence.isEmpty()) panels::announce(*told_);
}

}  // namespace stopwalk::rounds
