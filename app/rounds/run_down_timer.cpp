#include "app/rounds/run_down_timer.h"

#include <QHBoxLayout>
#include <cmath>

#include "app/rounds/big_button.h"
#include "app/rounds/words.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::rounds {
namespace {

constexpr int kShowEvery_ms = 100;
constexpr double kMsPerSecond = 1000, kPerSecond = 100;  // kept to a hundredth

}  // namespace

RunDownTimer::RunDownTimer(QWidget* parent) : QWidget(parent) {
  column_ = new QVBoxLayout(this);
  column_->setContentsMargins(0, 0, 0, 0);
  column_->setSpacing(4);
  timing_ = new QWidget(this);
  auto* row = new QHBoxLayout(timing_);
  row->setContentsMargins(0, 0, 0, 0);
  button_ = new QPushButton(timing_);
  button_->setAutoDefault(false);
  button_->setFocusPolicy(Qt::TabFocus);  // a click leaves the keyboard with the card: Enter records
  button_->setMinimumHeight(kTouch_px);
  time_ = new QLabel(timing_);
  QFont large = time_->font();
  large.setPointSizeF(large.pointSizeF() * 1.6);
  time_->setFont(large);
  time_->setMinimumWidth(QFontMetrics(large).horizontalAdvance("000.00 s"));
  time_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  row->addWidget(button_, 1);
  row->addWidget(time_);
  fields_ = new RunDownFields(this);
  column_->addWidget(timing_);
  column_->addWidget(fields_);
  ticker_.setInterval(kShowEvery_ms);
  connect(&ticker_, &QTimer::timeout, this, &RunDownTimer::tell);
  connect(button_, &QPushButton::clicked, this, &RunDownTimer::startOrStop);
  connect(fields_, &RunDownFields::changed, this, [this] {
    tell();
    emit changed();
  });
  show({});
}

void RunDownTimer::show(const QStringList& runs) {
  clock_.invalidate();
  ticker_.stop();
  fields_->show(runs);
  tell();
}

void RunDownTimer::setTypedFirst(bool typed_first) {
  typed_first_ = typed_first;
  tell();
  QWidget* first = typed_first ? static_cast<QWidget*>(fields_) : timing_;
  if (column_->itemAt(0)->widget() == first) return;
  column_->insertWidget(0, first);
  QLineEdit* last = fields_->field(kRuns - 1);
  typed_first ? setTabOrder(last, button_) : setTabOrder(button_, fields_->field(0));
}

void RunDownTimer::startOrStop() {
  if (!isRunning()) {
    if (fields_->isFull()) return;
    clock_.start();
    ticker_.start();
    tell();
    return emit turned();
  }
  const double run_s =
      std::round(static_cast<double>(clock_.elapsed()) / kMsPerSecond * kPerSecond) / kPerSecond;
  clock_.invalidate();
  ticker_.stop();
  if (run_s <= inspection::kMostRunDown_s) fields_->add(run_s);
  tell();
  emit turned();
}

void RunDownTimer::tell() {
  const bool full = fields_->isFull() && !isRunning();
  button_->setText(isRunning()    ? tr("At rest: stop the clock (Space)")
                   : full         ? tr("All %1 runs are timed").arg(kRuns)
                   : typed_first_ ? tr("Time one now, dated by the paper (Space)")
                                  : tr("Time the run-down (Space)"));
  button_->setEnabled(!full);
  const auto runs = fields_->runs();
  time_->setText(isRunning() ? tr("%1 s").arg(static_cast<double>(clock_.elapsed()) / kMsPerSecond, 0, 'f', 1)
                 : runs.empty() ? QString()
                                : secondsText(runs.back()));
}

}  // namespace stopwalk::rounds
