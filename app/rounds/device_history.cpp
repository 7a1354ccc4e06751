#include "app/rounds/device_history.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

#include "app/panels/actions/verb.h"
#include "app/panels/rows.h"
#include "app/plan/items/check_sign.h"
#include "app/plan/theme.h"
#include "app/rounds/big_button.h"
#include "app/rounds/open_failure.h"
#include "app/rounds/words.h"
#include "core/inspection/check_chain.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;

constexpr int kNumberRole = Qt::UserRole;
constexpr int kHighest_px = 150, kSign_px = 24;

// The signs of the plan.
QIcon iconOf(plan::CheckSign is, const QWidget& on) {
  QPixmap sign(kSign_px, kSign_px);
  sign.fill(Qt::transparent);
  QPainter painter(&sign);
  painter.setRenderHint(QPainter::Antialiasing);
  constexpr double kMiddle = kSign_px / 2.0;
  plan::paintCheckMark(painter, plan::Theme::of(on.palette()), {is, plan::CheckAge::None}, {kMiddle, kMiddle},
                       kMiddle - 3);
  return sign;
}

QString madeText(const Check& check) {
  return check.is_undated ? DeviceHistory::tr("no readable time") : rounds::momentText(check.at);
}

// A correction that gives no time of its own is of the check that it corrects.
QString whenText(const Check& check, const Check& dated) {
  const QString at = madeText(check);
  if (check.corrects && !check.entered) return DeviceHistory::tr("%1, written %2").arg(madeText(dated), at);
  return check.entered ? DeviceHistory::tr("%1, entered %2").arg(at, rounds::momentText(*check.entered)) : at;
}

struct Made {
  const Check* check = nullptr;
  const Check* dated = nullptr;  // by which its time is
  std::size_t corrected_by = 0;  // the number of the check; 0: none
};

// The newest first.
std::vector<Made> madeOf(const inspection::Chains& chains) {
  std::vector<Made> all;
  for (const inspection::CheckChain* chain : chains)
    for (const Check* check : chain->checks) {
      Made& made = all.emplace_back(Made{check, &chain->datedFirst()});
      for (const Check* other : chain->checks)
        if (other->corrects == check->number && other->number > check->number)
          made.corrected_by = other->number;
    }
  std::ranges::sort(all, std::ranges::greater(), [](const Made& m) {
    return std::pair(inspection::instantOf(m.dated->at), m.check->number);
  });
  return all;
}

QString runDownText(const Check& check) {
  const auto mean = inspection::meanOf(check.run_down_s);
  if (!mean) return {};
  const auto runs = check.run_down_s.size();
  return runs == 1 ? DeviceHistory::tr("%1 (1 run)").arg(secondsText(*mean))
                   : DeviceHistory::tr("%1 (%2 runs)").arg(secondsText(*mean)).arg(runs);
}

}  // namespace

QString foundText(const Check& check) {
  QStringList parts;
  for (const std::string& text : {check.note, check.action})
    if (!text.empty()) parts << QString::fromStdString(text);
  if (const auto& tag = check.tagged_out) {
    parts << DeviceHistory::tr("machine tagged out by %1").arg(QString::fromStdString(tag->by));
    if (tag->until) parts.back() = DeviceHistory::tr("%1, until %2").arg(parts.back(), dayText(*tag->until));
  }
  if (const auto& todo = check.corrective) {
    parts << DeviceHistory::tr("to be done: %1, by %2")
                 .arg(QString::fromStdString(todo->what), QString::fromStdString(todo->owner));
    if (todo->due) parts.back() = DeviceHistory::tr("%1, until %2").arg(parts.back(), dayText(*todo->due));
  }
  for (const auto& [test, yes] : check.tested)
    parts << (yes ? wordOf(test) : DeviceHistory::tr("not so: %1").arg(wordOf(test)));
  return parts.join("; ");
}

QString failedText(const std::string& device, std::span<const inspection::DeviceState> states,
                   const inspection::Schedule& schedule) {
  const inspection::DeviceState* state = inspection::findState(states, device);
  if (!state || !state->failed) return {};
  return openFailureText(*state->failed, schedule);
}

DeviceHistory::DeviceHistory(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  title_ = new QLabel(this);
  title_->setWordWrap(true);
  title_->setTextFormat(Qt::PlainText);
  correct_ = new QPushButton(this);
  correct_->setAutoDefault(false);
  correct_->setMinimumHeight(kTouch_px);
  correct_verb_ = new panels::Verb(
      {tr("Correct the chec&k that is picked…"),
       tr("A correction is a record of its own; the old one stays as it was written."),
       tr("Correct this check… (Enter)")},
      [this] { emit correctWanted(current(), device_); }, this);
  correct_verb_->showOn(*correct_);
  row->addWidget(title_, 1);
  row->addWidget(correct_);
  list_ = new QTreeWidget(this);
  list_->setAccessibleName(tr("Checks of the device"));
  list_->setHeaderLabels({tr("Result"), tr("When"), tr("By"), tr("Run-down"), tr("What was found")});
  list_->setRootIsDecorated(false);
  list_->setIconSize({kSign_px, kSign_px});
  list_->setMaximumHeight(kHighest_px);
  list_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  panels::Rows::give(*list_, kTouch_px);
  list_->header()->setSectionResizeMode(Found, QHeaderView::Stretch);
  column->addLayout(row);
  column->addWidget(list_);
  connect(list_, &QTreeWidget::currentItemChanged, this, &DeviceHistory::showVerb);
  connect(list_, &QTreeWidget::itemActivated, correct_verb_, &QAction::trigger);
  showVerb();
}

void DeviceHistory::showVerb() {
  const QTreeWidgetItem* item = list_->currentItem();
  correct_verb_->setWhyNot(!item ? tr("Pick a check of the device, below the plan, first.")
                           : item->font(What).strikeOut()
                               ? tr("It was corrected already: correct the one in its place.")
                               : QString());
}

void DeviceHistory::show(const std::string& device, const QString& name, const inspection::Chains& checks,
                         std::span<const inspection::DeviceState> states,
                         const inspection::Schedule& schedule, const Counting& counting) {
  const std::size_t was = device == device_ ? current() : 0;
  device_ = device;
  list_->clear();
  for (const Made& made : madeOf(checks)) add(*made.check, *made.dated, made.corrected_by, counting);
  const int count = list_->topLevelItemCount();
  title_->setText(count == 0   ? tr("%1: no check is recorded yet.").arg(name)
                  : count == 1 ? tr("%1: 1 check").arg(name)
                               : tr("%1: %2 checks").arg(name).arg(count));
  const QString failed = failedText(device, states, schedule);
  if (!failed.isEmpty()) title_->setText(tr("%1. %2").arg(title_->text(), failed));
  QFont font = title_->font();
  font.setBold(!failed.isEmpty());
  title_->setFont(font);
  list_->setVisible(count > 0);
  correct_->setVisible(count > 0);
  showVerb();
  for (int i = 0; i < count; ++i)
    if (list_->topLevelItem(i)->data(0, kNumberRole).toULongLong() == was)
      list_->setCurrentItem(list_->topLevelItem(i));
}

void DeviceHistory::add(const Check& check, const Check& dated, std::size_t corrected_by,
                        const Counting& counting) {
  QString word = wordOf(check.result);
  if (corrected_by) word = tr("%1 (corrected by %2)").arg(word).arg(corrected_by);
  if (check.corrects) word = tr("%1 (in place of %2)").arg(word).arg(*check.corrects);
  QString by = QString::fromStdString(check.inspector);
  if (!check.second.empty()) by += ", " + QString::fromStdString(check.second);
  // Why a pass is not what it seems comes before all that people wrote.
  QStringList found = {counting.but(check), foundText(check)};
  found.removeAll(QString());
  auto* item = new QTreeWidgetItem(list_, {tr("%1. %2").arg(check.number).arg(word), whenText(check, dated),
                                           by, runDownText(check), found.join("; ")});
  item->setIcon(What, iconOf(counting.sign(check), *this));
  item->setToolTip(Found, item->text(Found));
  item->setData(0, kNumberRole, static_cast<qulonglong>(check.number));
  QFont font = list_->font();
  font.setStrikeOut(corrected_by != 0);
  for (int column = What; column <= Found; ++column) item->setFont(column, font);
}

void DeviceHistory::forget() {
  device_.clear();
  list_->clear();
  showVerb();
}

bool DeviceHistory::come() {
  if (!isVisible() || list_->topLevelItemCount() == 0) return false;
  if (!list_->currentItem()) list_->setCurrentItem(list_->topLevelItem(0));
  list_->setFocus();
  return true;
}

void DeviceHistory::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return emit left();
  QWidget::keyPressEvent(event);
}

std::size_t DeviceHistory::current() const {
  const QTreeWidgetItem* item = list_->currentItem();
  return item ? item->data(0, kNumberRole).toULongLong() : 0;
}

}  // namespace stopwalk::rounds
