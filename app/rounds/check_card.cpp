#include "app/rounds/check_card.h"

#include <QScrollArea>
#include <QVBoxLayout>

#include "app/rounds/failure_form.h"
#include "app/rounds/line.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/what_was_tried.h"

namespace stopwalk::rounds {
namespace {

constexpr int kRecord_px = 56, kSymbol_px = 32;
constexpr double kLarge = 1.4;
constexpr int kRecordText_px = 380;  // of the narrowest card

QLabel* wrapped(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

QFont bold(const QWidget& of, double times = 1) {
  QFont font = of.font();
  font.setBold(true);
  font.setPointSizeF(font.pointSizeF() * times);
  return font;
}

QPushButton* touchButton(const QString& text, QWidget* parent) {
  auto* button = new QPushButton(text, parent);
  button->setAutoDefault(false);
  button->setMinimumSize(kTouch_px, kTouch_px);
  return button;
}

}  // namespace

CheckCard::CheckCard(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 4, 8, 4);
  column->setSpacing(4);
  column->addWidget(head());
  scroll_ = new QScrollArea(this);
  scroll_->setWidget(body());
  scroll_->setWidgetResizable(true);
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  column->addWidget(scroll_, 1);
  column->addWidget(foot());
  showText({});
  showEntered({});
  showNotRecorded({});
}

QWidget* CheckCard::head() {
  auto* head = new QWidget(this);
  auto* column = new QVBoxLayout(head);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  leave_ = touchButton(tr("All rounds"), head);
  previous_ = touchButton(QString::fromUtf8("◀"), head);
  previous_->setAccessibleName(tr("Previous device"));
  next_ = touchButton(QString::fromUtf8("▶"), head);
  next_->setAccessibleName(tr("Next device"));
  place_ = new QLabel(head);
  place_->setFont(bold(*this, kLarge));
  place_->setAlignment(Qt::AlignCenter);
  row->addWidget(leave_);
  row->addStretch(1);
  row->addWidget(previous_);
  row->addWidget(place_);
  row->addWidget(next_);
  progress_ = new QProgressBar(head);
  progress_->setAccessibleName(tr("Devices checked"));
  progress_->setMaximumHeight(16);
  symbol_ = new QLabel(head);
  name_ = wrapped(head);
  name_->setFont(bold(*this, kLarge));
  column->addLayout(row);
  column->addWidget(progress_);
  auto* named = new QHBoxLayout;
  named->addWidget(symbol_);
  named->addWidget(name_, 1);
  column->addLayout(named);
  connect(leave_, &QPushButton::clicked, this, &CheckCard::leaveWanted);
  connect(previous_, &QPushButton::clicked, this, [this] { emit moveWanted(-1); });
  connect(next_, &QPushButton::clicked, this, [this] { emit moveWanted(1); });
  return head;
}

QWidget* CheckCard::body() {
  auto* body = new QWidget(this);
  auto* column = new QVBoxLayout(body);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  where_ = wrapped(body);
  stops_ = wrapped(body);
  how_ = wrapped(body);
  how_->setFont(bold(*this));
  failed_ = wrapped(body);
  already_ = wrapped(body);
  already_->setObjectName("already");
  not_recorded_ = wrapped(body);
  for (QLabel* label : {failed_, already_, not_recorded_}) label->setFont(bold(*this));
  for (QLabel* label : {failed_, where_, stops_, how_, already_, not_recorded_}) column->addWidget(label);
  tried_ = new WhatWasTried(body);
  failure_ = new FailureForm(body);
  timer_ = new RunDownTimer(body);
  column->addWidget(tried_);
  column->addWidget(failure_);
  column->addWidget(timer_);
  note_ = addLine(*column, tr("Note"), {}, body);
  paper_ = new QWidget(body);
  auto* paper = new QVBoxLayout(paper_);
  paper->setContentsMargins(0, 0, 0, 0);
  on_paper_ = addLine(*paper, tr("Done on paper on"), {}, paper_);
  column->addWidget(paper_);
  column->addStretch(1);
  connect(tried_, &WhatWasTried::changed, this, &CheckCard::enteredChanged);
  connect(timer_, &RunDownTimer::changed, this, &CheckCard::enteredChanged);
  connect(failure_, &FailureForm::changed, this, &CheckCard::enteredChanged);
  connect(note_, &QLineEdit::textEdited, this, &CheckCard::enteredChanged);
  connect(on_paper_, &QLineEdit::editingFinished, this, [this] { on_paper_->setText(paperTime()); });
  connect(on_paper_, &QLineEdit::textChanged, this, [this](const QString& typed) {
    timer_->setTypedFirst(!typed.isEmpty());
    setWriting(writing_);
    tell({}, false);
  });
  return body;
}

// Always in sight.
QWidget* CheckCard::foot() {
  auto* foot = new QWidget(this);
  auto* column = new QVBoxLayout(foot);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  result_ = new ResultChoice(foot);
  told_ = wrapped(foot);
  record_ = touchButton(tr("Record (Enter)"), foot);
  record_->setMinimumHeight(kRecord_px);
  record_->setFont(bold(*this, kLarge));
  people_ = people();
  column->addWidget(result_);
  column->addWidget(people_);
  column->addWidget(told_);
  column->addWidget(record_);
  connect(result_, &ResultChoice::changed, this, &CheckCard::enteredChanged);
  connect(record_, &QPushButton::clicked, this, &CheckCard::recordWanted);
  return foot;
}

// Names stay from card to card, so they are in sight wherever one records.
QWidget* CheckCard::people() {
  auto* people = new QWidget(this);
  auto* row = new QHBoxLayout(people);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  const auto add = [&](const QString& label, const QString& hint) {
    auto* cell = new QVBoxLayout;
    cell->setSpacing(4);
    row->addLayout(cell, 1);
    return addLine(*cell, label, hint, people);
  };
  inspector_ = add(tr("Inspected by"), tr("name: the check bears it"));
  second_ = add(tr("Second person"), tr("where one must be there"));
  connect(inspector_, &QLineEdit::textEdited, this, [this] { tell({}, false); });
  connect(second_, &QLineEdit::textEdited, this, &CheckCard::enteredChanged);
  return people;
}

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
}

// Nothing that was typed there goes unseen into a record, or out of one.
void CheckCard::showFailureForm() {
  const auto result = result_->result();
  const bool is_filled = asksForMending(entered());
  failure_->setVisible(result == inspection::Result::Fail ||
                       (is_filled && result != inspection::Result::Pass));
  failure_->setOfFailure(result == inspection::Result::Fail);
}

void CheckCard::showNotRecorded(const QString& sentence) {
  not_recorded_->setText(sentence);
  not_recorded_->setVisible(!sentence.isEmpty());
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
  emit changed();
}

QString CheckCard::paperTime() const {
  return paper_round_ ? withDay(on_paper_->text(), *paper_round_) : on_paper_->text();
}

void CheckCard::setWriting(bool writing) {
  writing_ = writing;
  for (QWidget* part :
       {static_cast<QWidget*>(tried_), static_cast<QWidget*>(failure_), static_cast<QWidget*>(timer_),
        static_cast<QWidget*>(note_), paper_, static_cast<QWidget*>(result_)})
    part->setEnabled(!writing && is_there_);
  for (QWidget* part : {people_, static_cast<QWidget*>(record_)}) part->setEnabled(!writing);
  const QString paper = shortText(paperTime());
  const QString text = writing           ? tr("Being written…")
                       : !is_there_      ? tr("Record that it was taken away (Enter)")
                       : paper.isEmpty() ? tr("Record (Enter)")
                                         : tr("Record as of %1 (Enter)").arg(paper);
  const QFont large = bold(*this, kLarge);
  const bool fits = QFontMetrics(large).horizontalAdvance(text) <= kRecordText_px;
  record_->setFont(fits ? large : bold(*this));
  record_->setText(text);
}

QString CheckCard::failedText() const {
  return failed_->text();
}

void CheckCard::tell(const QString& sentence, bool is_trouble) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
  told_->setFont(is_trouble ? bold(*this) : font());
}

}  // namespace stopwalk::rounds
