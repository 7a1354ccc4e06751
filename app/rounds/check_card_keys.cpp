// The keys of the card.
#include <QKeyEvent>
#include <QPushButton>
#include <ranges>

#include "app/rounds/check_card.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/what_was_tried.h"

namespace stopwalk::rounds {

bool CheckCard::chooseByKey(const QString& key) {
  for (const inspection::Tried test : std::views::reverse(inspection::kTried))
    if (key == WhatWasTried::keyOf(test) && !tried_->box(test)->isHidden())
      return tried_->box(test)->click(), true;
  for (const inspection::Result result : inspection::kResults)
    if (key.compare(ResultChoice::keyOf(result), Qt::CaseInsensitive) == 0)
      return result_->button(result)->click(), true;
  return false;
}

// Keys that what has the keyboard has no use for.
void CheckCard::keyPressEvent(QKeyEvent* event) {
  const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
  if (!plain || writing_) return QWidget::keyPressEvent(event);
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (event->isAutoRepeat()) return;
    if (auto* button = qobject_cast<QPushButton*>(focusWidget())) return button->click();
    emit recordWanted();
  } else if (event->key() == Qt::Key_Space && is_there_ && is_stop_) {
    if (!event->isAutoRepeat()) timer_->startOrStop();
  } else if (event->key() == Qt::Key_Escape) {
    if (hasFocus()) return emit escaped();
    setFocus();
  } else if (event->text().compare(tr("H", "the key for: all checks of this device"), Qt::CaseInsensitive) ==
             0) {
    emit historyWanted();
  } else if (event->text().isEmpty() || !chooseByKey(event->text())) {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace stopwalk::rounds
