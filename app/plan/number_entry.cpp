#include "app/plan/number_entry.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>

#include "core/layout/units.h"

namespace stopwalk::plan {
namespace {

std::optional<double> read(const Field& field, const QString& text, layout::LengthUnit unit) {
  const std::string typed = text.trimmed().toStdString();
  if (field.kind == Field::Kind::Length) return layout::parseLength(typed, unit);
  QString number = text.trimmed();
  if (number.endsWith(QChar(0x00B0))) number.chop(1);
  const layout::Number value = layout::parseNumber(number.trimmed().toStdString());
  return value.ok() ? std::optional(value.value) : std::nullopt;
}

}  // namespace

NumberEntry::NumberEntry(QWidget* parent) : QFrame(parent) {
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  line_ = new QHBoxLayout(this);
  line_->setContentsMargins(8, 4, 8, 4);
  problem_ = new QLabel(this);
  line_->addWidget(problem_);
  problem_->hide();
  QFrame::hide();
}

void NumberEntry::show(const std::vector<Field>& fields, layout::LengthUnit unit) {
  unit_ = unit;
  const auto same = [](const Row& row, const Field& field) {
    return row.field.name == field.name && row.field.kind == field.kind;
  };
  if (!std::ranges::equal(rows_, fields, same)) rebuild(fields);
  for (std::size_t i = 0; i < fields.size(); ++i) {
    Row& row = rows_[i];
    row.field = fields[i];
    if (!row.touched) row.edit->setText(textOf(row.field));
  }
  setVisible(!fields.empty());
  adjustSize();
}

void NumberEntry::rebuild(const std::vector<Field>& fields) {
  for (Row& row : rows_) {
    delete row.name;
    delete row.edit;
  }
  rows_.clear();
  int place = 0;
  for (const Field& field : fields) {
    Row row{new QLabel(field.name, this), new QLineEdit(this), field, false};
    row.name->setBuddy(row.edit);
    row.edit->setAccessibleName(field.name);
    row.edit->setFixedWidth(fontMetrics().horizontalAdvance("00000.00 mm") + 16);
    row.edit->installEventFilter(this);
    const std::size_t index = rows_.size();
    connect(row.edit, &QLineEdit::textEdited, this, [this, index] {
      rows_[index].touched = true;
      tell({});
    });
    line_->insertWidget(place++, row.name);
    line_->insertWidget(place++, row.edit);
    rows_.push_back(row);
  }
  tell({});
}

QString NumberEntry::textOf(const Field& field) const {
  if (field.kind == Field::Kind::Angle)
    return QString::fromStdString(layout::numberText(field.value)) + QChar(0x00B0);
  return QString::fromStdString(layout::formatLength(field.value, unit_));
}

void NumberEntry::type(const QString& text) {
  const auto open = std::ranges::find_if(rows_, [](const Row& row) { return !row.field.typed; });
  if (rows_.empty()) return;
  Row& row = open == rows_.end() ? rows_.front() : *open;
  row.edit->setFocus(Qt::ShortcutFocusReason);
  row.edit->setText(text);
  row.edit->end(false);
  row.touched = true;
}

bool NumberEntry::take(Row& row) {
  if (!row.touched) return true;
  const auto value = read(row.field, row.edit->text(), unit_);
  if (!value) {
    tell(row.field.kind == Field::Kind::Length
             ? tr("%1: type a length such as 1.2 m, 900 mm or 4' 6\"").arg(row.field.name)
             : tr("%1: type degrees such as 90").arg(row.field.name));
    row.edit->setFocus();
    row.edit->selectAll();
    return false;
  }
  row.touched = false;
  row.field.typed = true;
  emit typed(static_cast<std::size_t>(&row - rows_.data()), *value);
  return true;
}

void NumberEntry::tell(const QString& problem) {
  problem_->setText(problem);
  problem_->setVisible(!problem.isEmpty());
  adjustSize();
}

bool NumberEntry::eventFilter(QObject* watched, QEvent* event) {
  const auto row = std::ranges::find_if(rows_, [&](const Row& r) { return r.edit == watched; });
  if (row == rows_.end()) return QFrame::eventFilter(watched, event);
  if (event->type() == QEvent::FocusIn) row->edit->selectAll();
  if (event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
  const auto* key = static_cast<QKeyEvent*>(event);
  switch (key->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: {
      // By index: taking a number may build the rows anew.
      for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!take(rows_[i])) return true;
      emit accepted();
      return true;
    }
    case Qt::Key_Escape:
      emit left();
      return true;
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
      return !take(*row) || QFrame::eventFilter(watched, event);
    default:
      return QFrame::eventFilter(watched, event);
  }
}

}  // namespace stopwalk::plan
