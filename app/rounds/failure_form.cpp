#include "app/rounds/failure_form.h"

#include <QGridLayout>
#include <QVBoxLayout>

#include "app/rounds/line.h"

namespace stopwalk::rounds {

FailureForm::FailureForm(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  stays_failed_ =
      new QLabel(tr("It stays failed, on the plan and in the audit, until it passes a check of its own. "
                    "Take the machine out of use as the shop's procedure says."),
                 this);
  stays_failed_->setWordWrap(true);
  column->addWidget(stays_failed_);
  auto* grid = new QGridLayout;
  grid->setSpacing(4);
  column->addLayout(grid);
  const auto add = [&](const QString& label, const QString& hint, int row, int place, int wide = 1) {
    auto* cell = new QVBoxLayout;
    cell->setSpacing(4);
    QLineEdit* line = addLine(*cell, label, hint, this);
    connect(line, &QLineEdit::textEdited, this, &FailureForm::changed);
    grid->addLayout(cell, row, place, 1, wide);
    return line;
  };
  tagged_by_ = add(tr("Machine tagged out by"), tr("name; empty: it is not"), 0, 0);
  tagged_until_ = add(tr("Tagged out until"), tr("a day, as 2026-03-02"), 0, 1);
  action_ = add(tr("What else was done at once"), {}, 1, 0, 2);
  todo_ = add(tr("What is still to be done"), {}, 2, 0, 2);
  owner_ = add(tr("Who does it"), {}, 3, 0);
  until_ = add(tr("Until when"), tr("a day, as 2026-03-02"), 3, 1);
}

void FailureForm::show(const Entered& entered) {
  action_->setText(entered.action);
  tagged_by_->setText(entered.tagged_by);
  tagged_until_->setText(entered.tagged_until);
  todo_->setText(entered.todo);
  owner_->setText(entered.owner);
  until_->setText(entered.until);
}

void FailureForm::putInto(Entered& entered) const {
  entered.action = action_->text();
  entered.tagged_by = tagged_by_->text();
  entered.tagged_until = tagged_until_->text();
  entered.todo = todo_->text();
  entered.owner = owner_->text();
  entered.until = until_->text();
}

}  // namespace stopwalk::rounds
