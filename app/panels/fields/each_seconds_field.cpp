#include "app/panels/fields/each_seconds_field.h"

#include <QHeaderView>
#include <QSignalBlocker>
#include <algorithm>

#include "app/panels/fields/number_field.h"

namespace stopwalk::panels {

namespace {
constexpr int kRowsShown = 5;
}

EachSecondsField::EachSecondsField(FieldText text, QWidget* parent)
    : Field(std::move(text), parent), table_(new QTableWidget(0, 2, this)) {
  table_->setHorizontalHeaderLabels({tr("Machine"), tr("Run-down")});
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->verticalHeader()->hide();
  table_->setTabKeyNavigation(false);
  setEditor(table_);
  connect(table_, &QTableWidget::cellChanged, this, &EachSecondsField::enterCell);
}

void EachSecondsField::setCandidates(std::vector<Option> candidates) {
  if (candidates == candidates_) return;
  candidates_ = std::move(candidates);
  fill();
}

void EachSecondsField::show(const Value& seconds) {
  if (!differ_ && seconds == seconds_ && table_->rowCount() > 0) return;
  seconds_ = seconds;
  differ_ = false;
  setTrouble({});
  fill();
}

void EachSecondsField::showDiffering() {
  differ_ = true;
  seconds_.clear();
  fill();
}

void EachSecondsField::fill() {
  const QSignalBlocker quiet(table_);
  const int row = table_->currentRow();
  std::vector<Option> shown = candidates_;
  for (const auto& [id, s] : seconds_)
    if (std::ranges::find(shown, id, &Option::key) == shown.end())
      shown.push_back({id, QString::fromStdString(id)});
  table_->setRowCount(static_cast<int>(shown.size()));
  for (int i = 0; i < table_->rowCount(); ++i) {
    const Option& o = shown[static_cast<std::size_t>(i)];
    auto* name = new QTableWidgetItem(o.text);
    name->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    name->setData(Qt::UserRole, QString::fromStdString(o.key));
    const auto found = std::ranges::find(seconds_, o.key, &Value::value_type::first);
    table_->setItem(i, 0, name);
    table_->setItem(
        i, 1,
        new QTableWidgetItem(found == seconds_.end() ? QString()
                                                     : NumberField::textOf(found->second, secondsKind())));
  }
  if (table_->rowCount() > 0) table_->setCurrentCell(std::clamp(row, 0, table_->rowCount() - 1), 1);
  table_->setEnabled(!differ_);
  const int line = table_->verticalHeader()->defaultSectionSize();
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                         line * std::clamp(table_->rowCount(), 1, kRowsShown) + 2 * table_->frameWidth());
}

void EachSecondsField::enterCell(int row) {
  const std::string id = table_->item(row, 0)->data(Qt::UserRole).toString().toStdString();
  const QString text = table_->item(row, 1)->text().trimmed();
  Typed<std::optional<double>> typed;
  if (!text.isEmpty()) typed = NumberField::read(text, secondsKind());
  setTrouble(typed.trouble);
  if (!typed.trouble.isEmpty()) return;
  Value next = seconds_;
  const auto found = std::ranges::find(next, id, &Value::value_type::first);
  if (found == next.end()) {
    if (typed.value) next.emplace_back(id, *typed.value);
  } else if (typed.value) {
    found->second = *typed.value;
  } else {
    next.erase(found);
  }
  seconds_ = next;
  fill();
  if (entered) entered(next);
}

}  // namespace stopwalk::panels
