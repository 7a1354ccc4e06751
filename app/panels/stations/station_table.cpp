#include "app/panels/stations/station_table.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/actions/own_key.h"
#include "app/panels/copied.h"

namespace stopwalk::panels {
namespace {

constexpr int kWidestNames_px = 260;  // of a column of words; its heading is shown whole all the same
constexpr int kWidestChange_px = 420;
constexpr int kRowsMeasured = 60;

// Shows the stations of which some column holds the words searched for.
class Matching : public QSortFilterProxyModel {
 public:
  explicit Matching(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(StationModel::kSortRole);
    setSortCaseSensitivity(Qt::CaseInsensitive);
  }
  void setSearch(const QString& search) {
    search_ = search;
    invalidateFilter();
  }

 protected:
  bool filterAcceptsRow(int row, const QModelIndex& parent) const override {
    if (search_.isEmpty()) return true;
    QString text = sourceModel()->index(row, 0, parent).data(StationModel::kIdRole).toString();
    for (int column = 0; column < sourceModel()->columnCount(); ++column)
      text += " " + sourceModel()->index(row, column, parent).data().toString();
    return matches(text, search_);
  }

 private:
  QString search_;
};

}  // namespace

StationTable::StationTable(edits::Selection& selection, QWidget* parent)
    : QWidget(parent), selection_(selection), model_(new StationModel(this)) {
  auto* matching = new Matching(this);
  matching->setSourceModel(model_);
  sorted_ = matching;
  view_ = new QTableView(this);
  view_->setAccessibleName(tr("Stations"));
  view_->setWhatsThis(
      tr("Every station with its nearest stop and phone. Enter goes there on the plan; a "
         "click on a heading sorts."));
  view_->setModel(sorted_);
  view_->setSortingEnabled(true);
  view_->sortByColumn(StationModel::State, Qt::AscendingOrder);
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  view_->setTabKeyNavigation(false);
  view_->setWordWrap(false);
  view_->setAlternatingRowColors(true);
  view_->verticalHeader()->hide();
  view_->verticalHeader()->setDefaultSectionSize(std::max(24, view_->fontMetrics().height() * 3 / 2));
  view_->horizontalHeader()->setHighlightSections(false);
  view_->horizontalHeader()->setResizeContentsPrecision(kRowsMeasured);
  for (int column = 0; column < StationModel::kColumns; ++column)
    view_->setColumnWidth(column, view_->horizontalHeader()->sectionSizeHint(column));
  view_->setColumnHidden(StationModel::Change, true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(topLine());
  column->addWidget(view_, 1);
  connect(search_, &QLineEdit::textChanged, matching, &Matching::setSearch);
  connect(search_, &QLineEdit::textChanged, this, &StationTable::showCount);
  connect(search_, &QLineEdit::textChanged, view_, &QTableView::scrollToTop);
  connect(view_->selectionModel(), &QItemSelectionModel::selectionChanged, this,
          &StationTable::takeSelection);
  connect(&selection_, &edits::Selection::changed, this, &StationTable::showSelection);
  const auto go = [this] {
    if (const QModelIndex index = view_->currentIndex(); index.isValid())
      emit goTo(index.data(StationModel::kIdRole).toString());
  };
  connect(view_, &QTableView::activated, this, go);
  connect(search_, &SearchLine::chosen, this, go);
  giveOwnKey(*view_, QKeySequence::Copy, [this] { copy_->trigger(); });
  for (const auto removes : {QKeySequence::Delete, QKeySequence::Cut}) giveOwnKey(*view_, removes, [] {});
  allow(false);
}

QWidget* StationTable::topLine() {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  search_ = new SearchLine(tr("Search stations"), view_, line);
  copy_ = new Verb(
      {tr("Copy the &table of stations"),
       tr("The rows picked, or all of them, as text for a table or a letter"), tr("&Copy")},
      [this] { QApplication::clipboard()->setText(asText()); }, this);
  export_ = new Verb(
      {tr("E&xport the table of stations…"), tr("All stations as a CSV file"), tr("E&xport…")},
      [this] { emit exportWanted(); }, this);
  export_->setShortcut(QKeySequence(tr("Ctrl+Shift+X")));
  count_ = new QLabel(line);
  moment_ago_ = new QLabel(line);
  row->addWidget(search_, 1);
  row->addWidget(count_);
  row->addWidget(moment_ago_);
  addButtons(*row, {copy_, export_});
  return line;
}

void StationTable::setReport(std::shared_ptr<const audit::Report> report, const layout::Layout& layout,
                             const layout::DeviceKinds& kinds,
                             const std::vector<plan::StationChange>& changes) {
  showing_ = true;
  const int scrolled = view_->verticalScrollBar()->value();
  allow(report != nullptr);
  model_->setReport(std::move(report), layout, kinds, changes);
  view_->setColumnHidden(StationModel::Change, changes.empty());
  giveWidths();
  showCount();
  showing_ = false;
  markSelected();
  view_->verticalScrollBar()->setValue(scrolled);
}

// Only where the search hides some.
void StationTable::showCount() {
  const int shown = sorted_->rowCount(), all = model_->rowCount({});
  count_->setText(shown == all ? QString() : tr("%1 of %2 stations").arg(shown).arg(all));
}

// Once, from the words there are in this language; then they are whoever's who drags them.
void StationTable::giveWidths() {
  if (sorted_->rowCount() == 0) return;
  for (int column = 0; column < StationModel::kColumns; ++column) {
    if (has_width_[column] || view_->isColumnHidden(column)) continue;
    has_width_[column] = true;
    view_->resizeColumnToContents(column);
    const int heading = view_->horizontalHeader()->sectionSizeHint(column);
    const int most = column == StationModel::Change ? kWidestChange_px : kWidestNames_px;
    view_->setColumnWidth(column, std::max(heading, std::min(view_->columnWidth(column), most)));
  }
}

void StationTable::setAge(Age age) {
  if (isPale(age) != isPale(age_)) showPale(*view_, isPale(age));
  age_ = age;
  moment_ago_->setText(isMomentAgo() ? tr("Of a moment ago") : QString());
}

void StationTable::takeSelection() {
  if (showing_) return;
  showing_ = true;
  std::vector<std::string> ids;
  for (const QModelIndex& row : view_->selectionModel()->selectedRows())
    ids.push_back(row.data(StationModel::kIdRole).toString().toStdString());
  if (!ids.empty()) selection_.set(std::move(ids));
  showing_ = false;
}

void StationTable::showSelection() {
  if (showing_) return;
  if (const QModelIndex first = markSelected(); first.isValid()) view_->scrollTo(first);
}

// The stations picked on the plan, and those of the machines picked there; the first of them.
QModelIndex StationTable::markSelected() {
  showing_ = true;
  QItemSelection rows;
  QModelIndex first;
  for (int row = 0; row < sorted_->rowCount(); ++row) {
    const QModelIndex index = sorted_->index(row, 0);
    if (!selection_.contains(index.data(StationModel::kIdRole).toString().toStdString()) &&
        !selection_.contains(index.data(StationModel::kMachineRole).toString().toStdString()))
      continue;
    rows.select(index, sorted_->index(row, StationModel::kColumns - 1));
    if (!first.isValid()) first = index;
  }
  view_->selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
  if (first.isValid()) view_->selectionModel()->setCurrentIndex(first, QItemSelectionModel::NoUpdate);
  showing_ = false;
  return first;
}

QString StationTable::asText() const {
  const auto shown = [&](int column) { return !view_->isColumnHidden(column); };
  QStringList cells, lines;
  if (age_ != Age::Current) lines << tr("Of a moment ago: what changed since is not in it.");
  if (const audit::Report* report = model_->report()) lines << copiedHead(*report);
  if (!supposed_.isEmpty()) lines << supposed_;
  for (const QString& said : said_) lines << said + '.';
  for (int column = 0; column < StationModel::kColumns; ++column)
    if (shown(column)) cells << model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
  if (!count_->text().isEmpty()) lines << count_->text() + '.';
  lines << cells.join('\t');
  const QItemSelectionModel* picked = view_->selectionModel();
  for (int row = 0; row < sorted_->rowCount(); ++row) {
    if (picked->hasSelection() && !picked->isRowSelected(row)) continue;
    cells.clear();
    for (int column = 0; column < StationModel::kColumns; ++column)
      if (shown(column)) cells << sorted_->index(row, column).data().toString().simplified();
    lines << cells.join('\t');
  }
  lines << copiedCaution();
  return lines.join('\n') + '\n';
}

void StationTable::allow(bool is_audited) {
  for (Verb* verb : {copy_, export_}) verb->setWhyNot(is_audited ? QString() : tr("Not audited yet."));
}

}  // namespace stopwalk::panels
