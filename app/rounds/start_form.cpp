#include "app/rounds/start_form.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "app/rounds/line.h"

namespace stopwalk::rounds {

StartForm::StartForm(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 4, 8, 4);
  name_ = addLine(*column, tr("Who walks the round"), tr("your name"), this);
  column->addWidget(new QLabel(tr("Over what"), this));
  const auto add = [&](Over which, const QString& key) {
    auto* button = new BigButton(BigButton::Sign::Circle, {}, key, false, this);
    connect(button, &BigButton::answered, this, [this, which] { choose(which); });
    column->addWidget(button);
    over_[static_cast<int>(which)] = button;
  };
  add(Over::Due, "1");
  add(Over::All, "2");
  add(Over::Room, "3");
  over(Over::Room)->setText(tr("One room:"));
  room_ = new QComboBox(this);
  room_->setAccessibleName(tr("Room"));
  room_->setMinimumHeight(kTouch_px);
  room_->view()->setAccessibleName(tr("Room"));
  room_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  connect(room_, &QComboBox::activated, this, [this] { choose(Over::Room); });
  column->addWidget(room_);
  on_paper_ = addLine(*column, tr("Walked on paper on"),
                      tr("empty: it is walked now; else as 2026-03-02 09:15"), this);
  auto* order = new QLabel(tr("The devices come in the order of the shortest walk. What is entered is kept; "
                              "a round can be stopped and "
                              "continued at any time."),
                           this);
  order->setWordWrap(true);
  column->addWidget(order);
  told_ = new QLabel(this);
  told_->setWordWrap(true);
  QFont bold = told_->font();
  bold.setBold(true);
  told_->setFont(bold);
  column->addWidget(told_);
  start_ = new QPushButton(this);
  leave_ = new QPushButton(tr("Back"), this);
  for (QPushButton* button : {start_, leave_}) {
    button->setAutoDefault(false);
    button->setMinimumHeight(kTouch_px);
    column->addWidget(button);
  }
  column->addStretch(1);
  connect(start_, &QPushButton::clicked, this, &StartForm::startWanted);
  connect(leave_, &QPushButton::clicked, this, &StartForm::left);
  show(0, 0, {});
  choose(Over::Due);
  setWriting(false);
  tell({});
}

void StartForm::show(std::size_t due, std::size_t all, const std::vector<Room>& rooms) {
  over(Over::Due)->setText(tr("What is due: %1").arg(due));
  over(Over::All)->setText(tr("All devices: %1").arg(all));
  for (const Over which : {Over::Due, Over::All, Over::Room}) over(which)->setAnswer(over(which)->answer());
  const QString was = room_->currentData().toString();
  room_->clear();
  for (const Room& room : rooms)
    room_->addItem(tr("%1: %2").arg(room.name).arg(room.devices), QString::fromStdString(room.id));
  room_->setCurrentIndex(std::max(0, room_->findData(was)));
  over(Over::Room)->setEnabled(!rooms.empty());
  room_->setEnabled(!rooms.empty());
}

void StartForm::choose(Over which) {
  for (const Over each : {Over::Due, Over::All, Over::Room})
    over(each)->setAnswer(each == which ? std::optional(true) : std::nullopt);
}

planning::RoundScope StartForm::scope() const {
  if (over(Over::Due)->answer()) return {{}, true};
  if (over(Over::Room)->answer()) return {room_->currentData().toString().toStdString(), false};
  return {};
}

void StartForm::setWriting(bool writing) {
  start_->setEnabled(!writing);
  start_->setText(writing ? tr("Being written…") : tr("Start the round (Enter)"));
}

void StartForm::tell(const QString& sentence) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
}

void StartForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return emit startWanted();
  if (event->key() == Qt::Key_Escape) return emit left();
  for (const Over which : {Over::Due, Over::All, Over::Room})
    if (event->text() == QString::number(static_cast<int>(which) + 1) && over(which)->isEnabled())
      return choose(which);
  QWidget::keyPressEvent(event);
}

}  // namespace stopwalk::rounds
