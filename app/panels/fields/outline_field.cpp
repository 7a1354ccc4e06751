#include "app/panels/fields/outline_field.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollBar>
#include <QSignalBlocker>
#include <algorithm>

namespace stopwalk::panels {

namespace {
constexpr int kRowsShown = 5;
constexpr std::size_t kFewest = 3;
}  // namespace

OutlineField::OutlineField(FieldText text, Known known, QWidget* parent)
    : Field(std::move(text), parent), known_(known) {
  auto* all = new QWidget(this);
  auto* column = new QVBoxLayout(all);
  column->setContentsMargins(0, 0, 0, 0);
  table_ = new QTableWidget(0, 2, all);
  table_->setHorizontalHeaderLabels({tr("x"), tr("y")});
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setTabKeyNavigation(false);
  add_ = new QPushButton(all);
  remove_ = new QPushButton(all);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(add_);
  buttons->addWidget(remove_);
  buttons->addStretch(1);
  column->addWidget(table_);
  column->addLayout(buttons);
  all->setFocusProxy(table_);
  setEditor(all);
  connect(table_, &QTableWidget::cellChanged, this, &OutlineField::enterCell);
  connect(add_, &QPushButton::clicked, this, &OutlineField::addCorner);
  connect(remove_, &QPushButton::clicked, this, &OutlineField::removeCorner);
  fill();
}

void OutlineField::setUnit(layout::LengthUnit unit) {
  if (unit == unit_) return;
  unit_ = unit;
  fill();
}

void OutlineField::show(const Value& corners) {
  if (!differ_ && corners == corners_) return;
  differ_ = false;
  corners_ = corners;
  setTrouble({});
  fill();
}

void OutlineField::showDiffering() {
  differ_ = true;
  corners_.clear();
  setTrouble({});
  fill();
}

void OutlineField::fill() {
  const QSignalBlocker quiet(table_);
  const int row = table_->currentRow(), column = table_->currentColumn(),
            count = static_cast<int>(corners_.size());
  table_->setRowCount(count);
  for (int i = 0; i < count; ++i) {
    const geometry::Point p = corners_[static_cast<std::size_t>(i)];
    table_->setItem(i, 0, new QTableWidgetItem(LengthField::textOf(p.x, unit_)));
    table_->setItem(i, 1, new QTableWidgetItem(LengthField::textOf(p.y, unit_)));
  }
  if (count > 0) table_->setCurrentCell(std::clamp(row, 0, count - 1), std::max(column, 0));
  const bool few = corners_.size() <= kFewest;
  table_->setVisible(count > 0);
  setFirst(count > 0 ? static_cast<QWidget*>(table_) : add_);
  add_->setText(differ_ ? tr("They differ") : count == 0 ? tr("Add outline") : tr("Add corner"));
  add_->setEnabled(!differ_);
  remove_->setText(few && known_ == Known::Optional ? tr("Remove outline") : tr("Remove corner"));
  remove_->setEnabled(count > 0 && (!few || known_ == Known::Optional));
  remove_->setVisible(count > 0);
  describe(add_, tr("%1: %2").arg(name(), add_->text()));
  describe(remove_, tr("%1: %2").arg(name(), remove_->text()));
  const int line = table_->verticalHeader()->defaultSectionSize();
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                         line * std::clamp(count, 1, kRowsShown) + 2 * table_->frameWidth());
  updateGeometry();
}

void OutlineField::enterCell(int row, int column) {
  const auto typed = LengthField::read(table_->item(row, column)->text(), unit_, Range::Any);
  setTrouble(typed.trouble);
  if (!typed.trouble.isEmpty()) return;
  Value corners = corners_;
  geometry::Point& p = corners[static_cast<std::size_t>(row)];
  (column == 0 ? p.x : p.y) = *typed.value;
  take(std::move(corners), row);
}

// Half way to the next one.
void OutlineField::addCorner() {
  if (corners_.empty()) return take(usual_, 0);
  const auto at = static_cast<std::size_t>(std::max(table_->currentRow(), 0));
  const geometry::Point a = corners_[at], b = corners_[(at + 1) % corners_.size()];
  Value corners = corners_;
  corners.insert(corners.begin() + static_cast<std::ptrdiff_t>(at) + 1, 0.5 * (a + b));
  take(std::move(corners), static_cast<int>(at) + 1);
}

void OutlineField::removeCorner() {
  if (corners_.size() <= kFewest) return take({}, 0);
  const int row = std::max(table_->currentRow(), 0);
  Value corners = corners_;
  corners.erase(corners.begin() + row);
  take(std::move(corners), row);
}

void OutlineField::take(Value corners, int row) {
  const bool changes = !(corners == corners_);
  corners_ = std::move(corners);
  fill();
  if (row < table_->rowCount()) table_->setCurrentCell(row, std::max(table_->currentColumn(), 0));
  if (changes && entered) entered(corners_);
}

layout::Footprint inShape(const layout::Footprint& footprint, bool rectangle) {
  if (rectangle == std::holds_alternative<layout::Rectangle>(footprint)) return footprint;
  if (!rectangle) return layout::outlineInPlan(footprint, {}, 0);
  layout::Rectangle r;
  for (const geometry::Point p : std::get<geometry::Polygon>(footprint)) {
    r.width = std::max(r.width, 2 * std::abs(p.x));
    r.depth = std::max(r.depth, 2 * std::abs(p.y));
  }
  return r;
}

}  // namespace stopwalk::panels
