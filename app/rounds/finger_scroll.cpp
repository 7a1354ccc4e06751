#include "app/rounds/finger_scroll.h"

#include <QAbstractButton>
#include <QChildEvent>
#include <QMouseEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <cmath>

namespace stopwalk::rounds {
namespace {

constexpr double kTap_px = 16;  // a finger that taps moves by no more

}  // namespace

FingerScroll::FingerScroll(QScrollArea& area) : QObject(&area), area_(area) {
  watch(area.widget());
}

void FingerScroll::watch(QObject* object) {
  if (!object->isWidgetType()) return;
  object->installEventFilter(this);
  for (QObject* child : object->children()) watch(child);
}

// What was pressed on the way is let go of without having been tapped.
bool FingerScroll::draws(QObject* on, double y) {
  if (!grip_->is_drawn && std::abs(y - grip_->y) <= kTap_px) return false;
  grip_->is_drawn = true;
  if (auto* button = qobject_cast<QAbstractButton*>(on)) button->setDown(false);
  area_.verticalScrollBar()->setValue(grip_->value - static_cast<int>(std::lround(y - grip_->y)));
  return true;
}

bool FingerScroll::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::ChildAdded) watch(static_cast<QChildEvent*>(event)->child());
  const bool is_press = event->type() == QEvent::MouseButtonPress,
             is_release = event->type() == QEvent::MouseButtonRelease;
  if (!is_press && !is_release && event->type() != QEvent::MouseMove) return false;
  const auto& mouse = static_cast<const QMouseEvent&>(*event);
  if (mouse.source() == Qt::MouseEventNotSynthesized) return false;
  const double y = mouse.globalPosition().y();
  if (is_press) grip_ = Grip{y, area_.verticalScrollBar()->value()};
  if (is_press || !grip_) return false;
  const bool is_drawn = draws(watched, y);
  if (is_release) grip_.reset();
  return is_drawn;
}

}  // namespace stopwalk::rounds
