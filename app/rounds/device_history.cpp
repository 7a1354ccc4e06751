#include "app/rounds/device_history.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QStyle>

#include "app/panels/rows.h"
#include "app/rounds/big_button.h"
#include "app/rounds/words.h"
#include "core/inspection/schedule.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::Result;

constexpr int kNumberRole = Qt::UserRole;
constexpr int kHighest_px = 150;

// Told apart by shape.
QIcon iconOf(Result result, const QWidget& on) {
  switch (result) {
    case Result::Pass:
      return on.style()->standardIcon(QStyle::SP_DialogApplyButton);
    case Result::Fail:
      return on.style()->standardIcon(QStyle::SP_MessageBoxCritical);
    case Result::NotTested:
    case Result::NotAccessible:
      return on.style()->standardIcon(QStyle::SP_MessageBoxWarning);
  }
  return {};
}

QString runDownText(const Check& check) {
  const auto mean = inspection::meanOf(check.run_down_s);
  if (!mean) return {};
  return DeviceHistory::tr("%1 (%2 runs)").arg(secondsText(*mean)).arg(check.run_down_s.size());
}

}  // namespace

QString foundText(const Check& check) {
  QStringList parts;
  for (const auto& [test, yes] : check.tested)
    parts << (yes ? wordOf(test) : DeviceHistory::tr("not so: %1").arg(wordOf(test)));
  for (const std::string& text : {check.note, check.action})
    if (!text.empty()) parts << QString::fromStdString(text);
  if (const auto& todo = check.corrective)
    parts << DeviceHistory::tr("to be done: %1, by %2")
                 .arg(QString::fromStdString(todo->what), QString::fromStdString(todo->owner));
  return parts.join("; ");
}

DeviceHistory::DeviceHistory(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  title_ = new QLabel(this);
  title_->setWordWrap(true);
  title_->setTextFormat(Qt::PlainText);
  correct_ = new QPushButton(tr("Correct this check…"), this);
  correct_->setAutoDefault(false);
  correct_->setMinimumHeight(kTouch_px);
  correct_->setToolTip(tr("A correction is a record of its own; the old one stays as it was written."));
  row->addWidget(title_, 1);
  row->addWidget(correct_);
  list_ = new QTreeWidget(this);
  list_->setAccessibleName(tr("Checks of the device"));
  list_->setHeaderLabels({tr("Result"), tr("When"), tr("By"), tr("Run-down"), tr("What was found")});
  list_->setRootIsDecorated(false);
  list_->setMaximumHeight(kHighest_px);
  list_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
  panels::Rows::give(*list_, kTouch_px);
  list_->setWordWrap(false);
  column->addLayout(row);
  column->addWidget(list_);
  connect(list_, &QTreeWidget::currentItemChanged, this, [this](const QTreeWidgetItem* item) {
    correct_->setEnabled(item && !item->font(What).strikeOut());
  });
  connect(correct_, &QPushButton::clicked, this, [this] {
    if (const std::size_t check = current()) emit correctWanted(check);
  });
}

void DeviceHistory::show(const std::string& device, const QString& name, const inspection::Records& records) {
  const std::size_t was = current();
  list_->clear();
  const std::vector<std::size_t> by = inspection::correctedBy(records);
  for (std::size_t i = records.checks.size(); i-- > 0;)
    if (records.checks[i].device == device) add(records.checks[i], by[i]);
  const int count = list_->topLevelItemCount();
  title_->setText(count == 0   ? tr("%1: no check is recorded yet.").arg(name)
                  : count == 1 ? tr("%1: 1 check").arg(name)
                               : tr("%1: %2 checks").arg(name).arg(count));
  list_->setVisible(count > 0);
  correct_->setVisible(count > 0);
  correct_->setEnabled(false);
  for (int i = 0; i < count; ++i)
    if (list_->topLevelItem(i)->data(0, kNumberRole).toULongLong() == was)
      list_->setCurrentItem(list_->topLevelItem(i));
}

void DeviceHistory::add(const Check& check, std::size_t corrected_by) {
  QString word = wordOf(check.result);
  if (corrected_by) word = tr("%1 (corrected by %2)").arg(word).arg(corrected_by);
  if (check.corrects) word = tr("%1 (in place of %2)").arg(word).arg(*check.corrects);
  QString by = QString::fromStdString(check.inspector);
  if (!check.second.empty()) by += ", " + QString::fromStdString(check.second);
  auto* item =
      new QTreeWidgetItem(list_, {tr("%1. %2").arg(check.number).arg(word), rounds::momentText(check.at), by,
                                  runDownText(check), foundText(check)});
  item->setIcon(What, iconOf(check.result, *this));
  item->setToolTip(Found, foundText(check));
  item->setData(0, kNumberRole, static_cast<qulonglong>(check.number));
  QFont font = list_->font();
  font.setStrikeOut(corrected_by != 0);
  for (int column = What; column <= Found; ++column) item->setFont(column, font);
}

std::size_t DeviceHistory::current() const {
  const QTreeWidgetItem* item = list_->currentItem();
  return item ? item->data(0, kNumberRole).toULongLong() : 0;
}

}  // namespace stopwalk::rounds
