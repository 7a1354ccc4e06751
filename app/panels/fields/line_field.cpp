#include "app/panels/fields/line_field.h"

#include <QKeyEvent>

namespace stopwalk::panels {

LineField::LineField(FieldText text, QWidget* parent) : Field(std::move(text), parent) {
  line_ = new QLineEdit(this);
  line_->installEventFilter(this);
  setEditor(line_);
  connect(line_, &QLineEdit::editingFinished, this, &LineField::applyPending);
}

// A line that has the keyboard is left as it goes, when there is nothing any more that could enter it.
LineField::~LineField() {
  line_->disconnect(this);
}

void LineField::applyPending() {
  if (isBeingTyped())
    enter(line_->text());
  else
    setTrouble({});
}

void LineField::setShown(const QString& text) {
  shown_ = text;
  setTrouble({});
  if (line_->text() == text) return;
  line_->setText(text);
  line_->setCursorPosition(0);
}

bool LineField::eventFilter(QObject* object, QEvent* event) {
  if (object == line_ && event->type() == QEvent::ShortcutOverride) {
    // Escape is first for the line, then for the window.
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape && isBeingTyped()) event->accept();
  }
  if (object == line_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    if (handleKey(key->key(), key->modifiers())) return true;
  }
  return Field::eventFilter(object, event);
}

bool LineField::handleKey(int key, Qt::KeyboardModifiers modifiers) {
  const bool large = modifiers & Qt::ShiftModifier;
  switch (key) {
    case Qt::Key_Up:
      step(1, large);
      return true;
    case Qt::Key_Down:
      step(-1, large);
      return true;
    case Qt::Key_Escape:
      if (!isBeingTyped()) return false;
      restore();
      return true;
    default:
      return false;
  }
}

void LineField::restore() {
  setShown(shown_);
  line_->selectAll();
}

}  // namespace stopwalk::panels
