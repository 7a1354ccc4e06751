#include "app/rounds/start_form.h"

#include <QAbstractItemView>
#include <QKeyEvent>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/announce.h"
#include "app/panels/quiet_box.h"
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
  addRoomRow(*column);
  addWalkRows(*column);
  on_paper_ = addLine(*column, tr("Walked on paper on"),
                      tr("empty: it is walked now; else as 2026-03-02 09:15"), this);
  order_ = new QLabel(this);
  order_->setWordWrap(true);
  column->addWidget(order_);
  auto* kept =
      new QLabel(tr("What is entered is kept; a round can be stopped and continued at any time."), this);
  kept->setWordWrap(true);
  column->addWidget(kept);
  told_ = new QLabel(this);
  told_->setWordWrap(true);
  QFont bold = told_->font();
  bold.setBold(true);
  told_->setFont(bold);
  column->addWidget(told_);
  start_ = new QPushButton(this);
  sheet_ = new QPushButton(tr("Sheet on paper…"), this);
  sheet_->setToolTip(tr("Saves the sheet to walk this round with as PDF, and opens no round."));
  leave_ = new QPushButton(tr("Back"), this);
  for (QPushButton* button : {start_, sheet_, leave_}) {
    button->setAutoDefault(false);
    button->setFocusPolicy(Qt::TabFocus);  // a click leaves the keyboard with the form: Enter starts
    button->setMinimumHeight(kTouch_px);
  }
  column->addWidget(start_);
  auto* row = new QHBoxLayout;
  row->addWidget(sheet_, 1);
  row->addWidget(leave_, 1);
  column->addLayout(row);
  column->addStretch(1);
  connect(start_, &QPushButton::clicked, this, &StartForm::startWanted);
  connect(sheet_, &QPushButton::clicked, this, &StartForm::sheetWanted);
  connect(leave_, &QPushButton::clicked, this, &StartForm::left);
  show(0, 0, {}, {});
  choose(Over::Due);
  setWriting(false);
  tell({});
}

QComboBox* StartForm::choiceOf(const QString& name) {
  auto* box = new panels::QuietBox(this);
  box->setAccessibleName(name);
  box->setMinimumHeight(kTouch_px);
  box->view()->setAccessibleName(name);
  box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  return box;
}

void StartForm::addRoomRow(QBoxLayout& column) {
  room_ = choiceOf(tr("Room"));
  only_due_ = new QCheckBox(tr("only what is due"), this);
  only_due_->setMinimumHeight(kTouch_px);
  auto* row = new QHBoxLayout;
  row->addWidget(room_, 1);
  row->addWidget(only_due_);
  column.addLayout(row);
  connect(room_, &QComboBox::activated, this, [this] { choose(Over::Room); });
  connect(only_due_, &QCheckBox::clicked, this, [this] { choose(Over::Room); });
}

void StartForm::addWalkRows(QBoxLayout& column) {
  hours_ = choiceOf(tr("Doors"));
  hours_->addItems({tr("Doors as in opening hours"), tr("Doors as after hours")});
  closed_ = new QCheckBox(tr("back to the beginning"), this);
  closed_->setMinimumHeight(kTouch_px);
  begin_at_ = choiceOf(tr("Where the walk begins"));
  auto* row = new QHBoxLayout;
  row->addWidget(hours_, 1);
  row->addWidget(closed_);
  column.addLayout(row);
  column.addWidget(begin_at_);
  connect(hours_, &QComboBox::activated, this, &StartForm::changed);
  connect(begin_at_, &QComboBox::activated, this, &StartForm::changed);
  connect(closed_, &QCheckBox::clicked, this, &StartForm::changed);
}

void StartForm::show(std::size_t due, std::size_t all, const std::vector<Room>& rooms,
                     const std::vector<Place>& places) {
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
  only_due_->setEnabled(!rooms.empty());
  only_due_->setChecked(false);
  hours_->setCurrentIndex(0);
  closed_->setChecked(false);
  begin_at_->clear();
  begin_at_->addItem(tr("Begins wherever the walk is shortest"), QString());
  for (const Place& place : places)
    begin_at_->addItem(tr("Begins at: %1").arg(place.name), QString::fromStdString(place.id));
  showOrder({});
}

void StartForm::choose(Over which) {
  for (const Over each : {Over::Due, Over::All, Over::Room})
    over(each)->setAnswer(each == which ? std::optional(true) : std::nullopt);
  emit changed();
}

void StartForm::showOrder(const QString& sentences) {
  order_->setText(sentences.isEmpty() ? tr("The shortest walk is being sought…") : sentences);
}

inspection::RoundWalk StartForm::walk() const {
  return {hours_->currentIndex() == 1, begin_at_->currentData().toString().toStdString(),
          closed_->isChecked()};
}

planning::RoundScope StartForm::scope() const {
  if (over(Over::Due)->answer()) return {{}, true};
  if (over(Over::Room)->answer())
    return {room_->currentData().toString().toStdString(), only_due_->isChecked()};
  return {};
}

void StartForm::setWriting(bool writing) {
  start_->setEnabled(!writing);
  start_->setText(writing ? tr("Being written…") : tr("Start the round (Enter)"));
}

void StartForm::tell(const QString& sentence) {
  told_->setText(sentence);
  told_->setVisible(!sentence.isEmpty());
  if (!sentence.isEmpty()) panels::announce(*told_);
}

void StartForm::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (auto* button = qobject_cast<QPushButton*>(focusWidget())) return button->click();
    return emit startWanted();
  }
  if (event->key() == Qt::Key_Escape) return emit left();
  for (const Over which : {Over::Due, Over::All, Over::Room})
    if (event->text() == QString::number(static_cast<int>(which) + 1) && over(which)->isEnabled())
      return choose(which);
  QWidget::keyPressEvent(event);
}

}  // namespace stopwalk::rounds
