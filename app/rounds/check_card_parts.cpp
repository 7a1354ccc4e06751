// What the card is made of.
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/rounds/check_card.h"
#include "app/rounds/failure_form.h"
#include "app/rounds/finger_scroll.h"
#include "app/rounds/line.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/what_was_tried.h"

namespace stopwalk::rounds {
namespace {

constexpr int kRecord_px = 56;

QLabel* wrapped(QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  return label;
}

QPushButton* touchButton(const QString& text, QWidget* parent) {
  auto* button = new QPushButton(text, parent);
  button->setAutoDefault(false);
  button->setFocusPolicy(Qt::TabFocus);  // a click leaves the keyboard with the card: Enter records
  button->setMinimumSize(kTouch_px, kTouch_px);
  return button;
}

}  // namespace

QFont CheckCard::bold(double times) const {
  QFont font = this->font();
  font.setBold(true);
  font.setPointSizeF(font.pointSizeF() * times);
  return font;
}

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
  new FingerScroll(*scroll_);
  column->addWidget(scroll_, 1);
  column->addWidget(foot());
  makeVerbs();
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
  place_->setFont(bold(kLarge));
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
  name_->setFont(bold(kLarge));
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
  auto* column = body_ = new QVBoxLayout(body);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  where_ = wrapped(body);
  stops_ = wrapped(body);
  how_ = wrapped(body);
  how_->setFont(bold());
  failed_ = wrapped(body);
  already_ = wrapped(body);
  already_->setObjectName("already");
  not_recorded_ = wrapped(body);
  for (QLabel* label : {failed_, already_, not_recorded_}) label->setFont(bold());
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
  on_paper_->setToolTip(tr("Key: %1").arg(paperKey()));
  column->addWidget(paper_);
  column->addStretch(1);
  connect(tried_, &WhatWasTried::changed, this, &CheckCard::enteredChanged);
  connect(timer_, &RunDownTimer::changed, this, &CheckCard::enteredChanged);
  connect(failure_, &FailureForm::changed, this, &CheckCard::enteredChanged);
  connect(note_, &QLineEdit::textEdited, this, &CheckCard::enteredChanged);
  connect(on_paper_, &QLineEdit::editingFinished, this, [this] { on_paper_->setText(paperTime()); });
  connect(on_paper_, &QLineEdit::textChanged, this, &CheckCard::paperTyped);
  return body;
}

// Always in sight. Sentences stand above what is pressed, so that none moves it from under a finger.
QWidget* CheckCard::foot() {
  auto* foot = new QWidget(this);
  auto* column = new QVBoxLayout(foot);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  result_ = new ResultChoice(foot);
  counts_ = wrapped(foot);
  counts_->setObjectName("counts");
  counts_->hide();
  told_ = wrapped(foot);
  record_ = touchButton(tr("Record (Enter)"), foot);
  record_->setMinimumHeight(kRecord_px);
  record_->setFont(bold(kLarge));
  people_ = people();
  for (QWidget* part : {static_cast<QWidget*>(counts_), static_cast<QWidget*>(told_),
                        static_cast<QWidget*>(result_), people_, static_cast<QWidget*>(record_)})
    column->addWidget(part);
  connect(result_, &ResultChoice::changed, this, &CheckCard::enteredChanged);
  connect(result_, &ResultChoice::changed, this, &CheckCard::showQuestions);
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

}  // namespace stopwalk::rounds
