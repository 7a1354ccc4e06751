#include "app/panels/fields/tick_field.h"

#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>

namespace stopwalk::panels {

namespace {

constexpr int kRowsShown = 6;
constexpr const char* kKeys[] = {"usual", "all", "listed"};

std::vector<Option> optionsOf(const TickField::Words& words) {
  std::vector<Option> options = {{kKeys[0], words.usual}};
  if (!words.all.isEmpty()) options.push_back({kKeys[1], words.all});
  options.push_back({kKeys[2], words.listed});
  return options;
}

}  // namespace

TickField::TickField(FieldText text, const Words& words, QWidget* parent) : Field(text, parent) {
  auto* all = new QWidget(this);
  auto* column = new QVBoxLayout(all);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  which_ = new ChoiceField(text, optionsOf(words), all);
  which_->label()->hide();
  list_ = new QListWidget(all);
  list_->setTabKeyNavigation(false);
  column->addWidget(which_);
  column->addWidget(list_);
  all->setFocusProxy(which_->box());
  setEditor(all);
  describe(list_, words.listed);
  which_->entered = [this](const std::string& key) { enterWhich(key); };
  connect(list_, &QListWidget::itemChanged, this, &TickField::enterTick);
  list_->hide();
}

void TickField::setCandidates(std::vector<Option> candidates) {
  if (candidates == candidates_) return;
  candidates_ = std::move(candidates);
  fill();
}

void TickField::show(const Ticks& ticks) {
  const bool same = !differ_ && ticks == ticks_;
  ticks_ = ticks;
  differ_ = false;
  which_->show(kKeys[static_cast<int>(ticks.which)]);
  if (!same) fill();
}

void TickField::showDiffering() {
  differ_ = true;
  ticks_ = {};
  which_->showDiffering();
  fill();
}

void TickField::fill() {
  const QSignalBlocker quiet(list_);
  const int row = list_->currentRow();
  list_->clear();
  std::vector<Option> shown = candidates_;
  for (const std::string& id : ticks_.ids)
    if (std::ranges::find(shown, id, &Option::key) == shown.end())
      shown.push_back({id, QString::fromStdString(id)});
  for (const Option& o : shown) {
    auto* item = new QListWidgetItem(o.text, list_);
    item->setData(Qt::UserRole, QString::fromStdString(o.key));
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    const bool ticked = std::ranges::find(ticks_.ids, o.key) != ticks_.ids.end();
    item->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
  }
  list_->setCurrentRow(std::clamp(row, 0, std::max(0, list_->count() - 1)));
  list_->setVisible(!differ_ && ticks_.which == Ticks::Which::Listed);
  const int line = std::max(list_->sizeHintForRow(0), fontMetrics().height());
  list_->setFixedHeight(line * std::clamp(list_->count(), 1, kRowsShown) + 2 * list_->frameWidth());
}

void TickField::enterWhich(const std::string& key) {
  Ticks ticks;
  ticks.which = static_cast<Ticks::Which>(std::ranges::find(kKeys, key) - std::begin(kKeys));
  if (ticks.which == Ticks::Which::Listed && list_chosen) return list_chosen();
  show(ticks);
  if (entered) entered(ticks);
}

void TickField::enterTick(QListWidgetItem* item) {
  const std::string id = item->data(Qt::UserRole).toString().toStdString();
  std::erase(ticks_.ids, id);
  if (item->checkState() == Qt::Checked) ticks_.ids.push_back(id);
  const Ticks ticks = ticks_;
  if (entered) entered(ticks);
}

}  // namespace stopwalk::panels
