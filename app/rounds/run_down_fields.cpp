#include "app/rounds/run_down_fields.h"

#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/rounds/big_button.h"
#include "app/rounds/entered.h"
#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

constexpr int kColumns = 5;

bool isEmpty(const QLineEdit* field) {
  return field->text().trimmed().isEmpty();
}

}  // namespace

RunDownFields::RunDownFields(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  column->addWidget(new QLabel(tr("Run-down, seconds"), this));
  grid_ = new QGridLayout;
  grid_->setSpacing(4);
  for (int i = 0; i < kColumns; ++i) grid_->setColumnStretch(i, 1);
  column->addLayout(grid_);
  trouble_ = new QLabel(this);
  mean_ = new QLabel(this);
  QFont bold = trouble_->font();
  bold.setBold(true);
  trouble_->setFont(bold);
  for (QLabel* label : {trouble_, mean_}) {
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    column->addWidget(label);
  }
  show({});
}

// A correction may be of a check with more runs than the sheet has fields.
void RunDownFields::need(std::size_t fields) {
  for (std::size_t i = fields_.size(); i < fields; ++i) {
    auto* field = new QLineEdit(this);
    field->setMinimumHeight(kTouch_px);
    field->setMinimumWidth(kTouch_px);
    field->setClearButtonEnabled(true);
    field->setPlaceholderText(QString::number(i + 1));
    field->setAccessibleName(tr("Run %1, seconds").arg(i + 1));
    if (i > 0) setTabOrder(fields_.back(), field);
    connect(field, &QLineEdit::textChanged, this, &RunDownFields::tell);
    connect(field, &QLineEdit::textChanged, this, &RunDownFields::changed);
    connect(field, &QLineEdit::editingFinished, this, &RunDownFields::tellTrouble);
    grid_->addWidget(field, static_cast<int>(i) / kColumns, static_cast<int>(i) % kColumns);
    fields_.push_back(field);
  }
}

QStringList RunDownFields::typed() const {
  QStringList typed;
  for (const QLineEdit* field : fields_)
    if (!isEmpty(field)) typed << field->text().trimmed();
  return typed;
}

void RunDownFields::show(const QStringList& runs) {
  const QSignalBlocker quiet(this);
  need(std::max(kRuns, static_cast<std::size_t>(runs.size())));
  for (std::size_t i = 0; i < fields_.size(); ++i) fields_[i]->setText(runs.value(static_cast<qsizetype>(i)));
  tell();
  tellTrouble();
}

void RunDownFields::add(double run_s) {
  const auto next = std::ranges::find_if(fields_, isEmpty);
  if (next != fields_.end()) (*next)->setText(runText(run_s));
}

bool RunDownFields::isFull() const {
  return std::ranges::none_of(fields_, isEmpty);
}

std::vector<double> RunDownFields::runs() const {
  std::vector<double> runs;
  for (const QString& text : typed())
    if (const auto run_s = runTyped(text)) runs.push_back(*run_s);
  return runs;
}

// What is hidden is empty, so nothing goes unseen into a record.
void RunDownFields::tell() {
  std::size_t last = 0;
  for (std::size_t i = 0; i < fields_.size(); ++i)
    if (!isEmpty(fields_[i])) last = i + 1;
  for (std::size_t i = 0; i < fields_.size(); ++i)
    fields_[i]->setVisible(i <= last || fields_[i]->hasFocus());
  const auto good = runs();
  const auto mean = inspection::meanOf(good);
  mean_->setText(mean ? tr("%1 of %2, mean %3").arg(good.size()).arg(kRuns).arg(secondsText(*mean))
                      : QString());
  mean_->setVisible(mean.has_value());
  if (badRun(typed()).isEmpty()) trouble_->hide();
}

void RunDownFields::tellTrouble() {
  trouble_->setText(badRun(typed()));
  trouble_->setVisible(!trouble_->text().isEmpty());
}

}  // namespace stopwalk::rounds
