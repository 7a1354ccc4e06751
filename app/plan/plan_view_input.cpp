// The pointer, the wheel and the keys on the plan.
#include <QGuiApplication>
#include <QMouseEvent>
#include <QNativeGestureEvent>

#include "app/plan/number_entry.h"
#include "app/plan/plan_view.h"
#include "app/plan/pointing.h"
#include "app/plan/supposed.h"
#include "app/plan/wheel.h"

namespace stopwalk::plan {

PointerEvent PlanView::pointerEvent(QPointF pixel, Qt::KeyboardModifiers modifiers) const {
  return {pixel, view_.toPlan(pixel), modifiers};
}

bool PlanView::pans(const QMouseEvent& event) const {
  return event.button() == Qt::MiddleButton || (event.button() == Qt::LeftButton && space_held_);
}

void PlanView::mousePressEvent(QMouseEvent* event) {
  if (pans(*event)) {
    panned_from_ = event->position();
    QWidget::setCursor(Qt::ClosedHandCursor);
  } else if (event->button() == Qt::LeftButton && !takesHold(*event)) {
    tool_->pressed(pointerEvent(event->position(), event->modifiers()));
  }
}

// Of something that stands in the way by supposition.
bool PlanView::takesHold(const QMouseEvent& event) {
  if (choice_.what != Choice::What::Select) return false;
  const geometry::Point at = view_.toPlan(event.position());
  const auto index = inTheWayAt(suppositions_, at);
  if (!index) return false;
  const geometry::Point was = suppositions_.in_the_way[*index].at;
  held_ = Held{*index, at - was, was};
  emit tookHold(suppositions_.in_the_way[*index].id);
  say();
  return true;
}

// What stands in the way to where it was taken from; false: nothing is held.
bool PlanView::bringsBack() {
  const auto held = std::exchange(held_, std::nullopt);
  if (!held || held->index >= suppositions_.in_the_way.size()) return false;
  suppositions_.in_the_way[held->index].at = held->was;
  emit supposed(suppositions_);
  say();
  update();
  return true;
}

void PlanView::putDown() {
  held_.reset();
  emit supposed(suppositions_);
  say();
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
  pointer_ = event->position();
  if (isHolding()) {
    suppositions_.in_the_way[held_->index].at = view_.toPlan(event->position()) - held_->grip;
    emit supposed(suppositions_);
    return update();
  }
  if (panned_from_) {
    view_.pan(event->position() - *panned_from_);
    panned_from_ = event->position();
  } else {
    const auto at = pointerEvent(event->position(), event->modifiers());
    const Item* item = picture().itemAt(at.at, view_.mmPerPixel(), kHit_px);
    hovered_ = item ? item->id : "";
    tool_->moved(at);
    say();
  }
  paintSoon();
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && held_) return putDown();
  if (panned_from_ && (event->button() == Qt::MiddleButton || event->button() == Qt::LeftButton)) {
    panned_from_.reset();
    showCursor();
  } else if (event->button() == Qt::LeftButton) {
    tool_->released(pointerEvent(event->position(), event->modifiers()));
  }
}

void PlanView::endDrag() {
  if (choice_.what != Choice::What::Select || !isPreviewing() || !pointer_) return;
  tool_->released(pointerEvent(*pointer_, QGuiApplication::keyboardModifiers() & Qt::AltModifier));
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton)
    tool_->doubleClicked(pointerEvent(event->position(), event->modifiers()));
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
  if (choice_.what != Choice::What::Select) return choose({});
  if (event->reason() == QContextMenuEvent::Mouse) {
    const Item* item = picture().itemAt(view_.toPlan(event->pos()), view_.mmPerPixel(), kHit_px);
    if (item && !selection_.contains(item->id)) selection_.set(item->id);
  }
  emit menuWanted(event->globalPos());
}

void PlanView::wheelEvent(QWheelEvent* event) {
  zoomOrPan(view_, *event);
  event->accept();
  update();
}

bool PlanView::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && beginsNumber(*static_cast<QKeyEvent*>(event)))
    event->accept();
  if (event->type() != QEvent::NativeGesture) return QWidget::event(event);
  const auto* gesture = static_cast<QNativeGestureEvent*>(event);
  if (gesture->gestureType() != Qt::ZoomNativeGesture) return false;
  view_.zoomAt(gesture->position(), 1 + gesture->value());
  update();
  return true;
}

void PlanView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_held_ = true;
    QWidget::setCursor(Qt::OpenHandCursor);
    return;
  }
  if (event->key() == Qt::Key_Escape && bringsBack()) return;
  if (tool_->key(*event)) return;
  switch (event->key()) {
    case Qt::Key_Escape:
      if (!tool_->cancel() && choice_.what != Choice::What::Select) choose({});
      return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      tool_->accept();
      return;
    default:
      break;
  }
  if (beginsNumber(*event)) return entry_->type(event->text());
  QWidget::keyPressEvent(event);
}

// A digit is the fit shortcut, or the beginning of a length where one is being drawn.
bool PlanView::beginsNumber(const QKeyEvent& event) const {
  const QString text = event.text();
  return text.size() == 1 && (text[0].isDigit() || text == "-" || text == ".") && !tool_->fields().empty() &&
         !(event.modifiers() & ~Qt::KeypadModifier);
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() != Qt::Key_Space || event->isAutoRepeat()) return QWidget::keyReleaseEvent(event);
  letGoOfSpace();
}

// The key may be let go of elsewhere.
void PlanView::focusOutEvent(QFocusEvent* event) {
  if (space_held_) letGoOfSpace();
  QWidget::focusOutEvent(event);
}

void PlanView::letGoOfSpace() {
  space_held_ = false;
  if (!panned_from_) showCursor();
}

void PlanView::showCursor() {
  QWidget::setCursor(choice_.what == Choice::What::Select ? Qt::ArrowCursor : Qt::CrossCursor);
}

}  // namespace stopwalk::plan
