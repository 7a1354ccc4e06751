#include "app/rounds/run_down_timer.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <cmath>

#include "app/rounds/big_button.h"
#include "app/rounds/words.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::rounds {
namespace {

constexpr int kShowEvery_ms = 100;
constexpr int kColumns = 5;
constexpr double kMsPerSecond = 1000, kPerSecond = 100;  // kept to a hundredth

}  // namespace

RunDownTimer::RunDownTimer(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* row = new QHBoxLayout;
  button_ = new QPushButton(this);
  button_->setAutoDefault(false);
  button_->setMinimumHeight(kTouch_px);
  time_ = new QLabel(this);
  QFont large = time_->font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  time_->setFont(large);
  time_->setMinimumWidth(QFontMetrics(large).horizontalAdvance("000.00 s"));
  time_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  mean_ = new QLabel(this);
  mean_->setWordWrap(true);
  row->addWidget(button_, 1);
  row->addWidget(time_);
  column->addLayout(row);
  column->addWidget(mean_);
  list_ = new QGridLayout;
  list_->setSpacing(4);
  column->addLayout(list_);
  ticker_.setInterval(kShowEvery_ms);
  connect(&ticker_, &QTimer::timeout, this, &RunDownTimer::tell);
  connect(button_, &QPushButton::clicked, this, &RunDownTimer::startOrStop);
  show({});
}

void RunDownTimer::show(std::vector<double> runs) {
  runs_ = std::move(runs);
  clock_.invalidate();
  ticker_.stop();
  showRuns();
  tell();
}

void RunDownTimer::startOrStop() {
  if (!isRunning()) {
    if (runs_.size() >= kRuns) return;
    clock_.start();
    ticker_.start();
    return tell();
  }
  const double run_s =
      std::round(static_cast<double>(clock_.elapsed()) / kMsPerSecond * kPerSecond) / kPerSecond;
  clock_.invalidate();
  ticker_.stop();
  if (run_s <= inspection::kMostRunDown_s) runs_.push_back(run_s);
  showRuns();
  tell();
  emit changed();
}

void RunDownTimer::drop(std::size_t run) {
  if (run >= runs_.size()) return;
  runs_.erase(runs_.begin() + static_cast<std::ptrdiff_t>(run));
  showRuns();
  tell();
  emit changed();
}

void RunDownTimer::tell() {
  const bool full = runs_.size() >= kRuns && !isRunning();
  button_->setText(isRunning() ? tr("At rest: stop the clock (Space)")
                   : full      ? tr("All %1 runs are timed").arg(kRuns)
                               : tr("Time the run-down (Space)"));
  button_->setEnabled(!full);
  time_->setText(isRunning() ? tr("%1 s").arg(static_cast<double>(clock_.elapsed()) / kMsPerSecond, 0, 'f', 1)
                 : runs_.empty() ? QString()
                                 : secondsText(runs_.back()));
  const auto mean = inspection::meanOf(runs_);
  mean_->setText(mean ? tr("%1 of %2, mean %3").arg(runs_.size()).arg(kRuns).arg(secondsText(*mean))
                      : QString());
  mean_->setVisible(mean.has_value());
}

// The keyboard stays among them when one is dropped.
void RunDownTimer::showRuns() {
  bool had_keyboard = false;
  while (QLayoutItem* item = list_->takeAt(0)) {
    had_keyboard = had_keyboard || item->widget()->hasFocus();
    item->widget()->hide();
    item->widget()->deleteLater();
    delete item;
  }
  for (std::size_t i = 0; i < runs_.size(); ++i) {
    auto* run = new QPushButton(QString::fromUtf8("%1 ✕").arg(secondsText(runs_[i])), this);
    run->setAutoDefault(false);
    run->setMinimumHeight(kTouch_px);
    run->setMinimumWidth(kTouch_px);
    run->setAccessibleName(tr("Drop run %1, %2").arg(i + 1).arg(secondsText(runs_[i])));
    run->setToolTip(run->accessibleName());
    connect(run, &QPushButton::clicked, this, [this, i] { drop(i); });
    list_->addWidget(run, static_cast<int>(i) / kColumns, static_cast<int>(i) % kColumns);
  }
  if (had_keyboard) button_->setFocus();
}

}  // namespace stopwalk::rounds
