#include "app/panels/search_line.h"

#include <QCoreApplication>
#include <QKeyEvent>

namespace stopwalk::panels {

namespace {

bool movesInList(int key) {
  return key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown;
}

bool isChoosing(int key) {
  return key == Qt::Key_Return || key == Qt::Key_Enter;
}

bool isTyping(const QKeyEvent& key) {
  const auto beyond_shift = key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier);
  return beyond_shift == Qt::NoModifier && !key.text().isEmpty() && key.text().front().isPrint() &&
         key.key() != Qt::Key_Space;
}

}  // namespace

SearchLine::SearchLine(const QString& name, QAbstractItemView* list, QWidget* parent)
    : QLineEdit(parent), list_(list) {
  setPlaceholderText(name);
  setAccessibleName(name);
  setClearButtonEnabled(true);
  list_->installEventFilter(this);
}

bool SearchLine::eventFilter(QObject* object, QEvent* event) {
  if (object != list_ || event->type() != QEvent::KeyPress) return QLineEdit::eventFilter(object, event);
  auto* key = static_cast<QKeyEvent*>(event);
  if (isChoosing(key->key())) {
    emit chosen();
    return true;
  }
  if (!isTyping(*key)) return false;
  setFocus();
  QLineEdit::keyPressEvent(key);
  return true;
}

void SearchLine::keyPressEvent(QKeyEvent* event) {
  if (movesInList(event->key()))
    QCoreApplication::sendEvent(list_, event);
  else if (isChoosing(event->key()))
    emit chosen();
  else if (event->key() == Qt::Key_Escape && !text().isEmpty())
    clear();
  else
    QLineEdit::keyPressEvent(event);
}

// Escape is first for the line, then for the window.
bool SearchLine::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && !text().isEmpty() &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape)
    event->accept();
  return QLineEdit::event(event);
}

bool matches(const QString& text, const QString& search) {
  for (const QString& word : search.split(' ', Qt::SkipEmptyParts))
    if (!text.contains(word, Qt::CaseInsensitive)) return false;
  return true;
}

}  // namespace stopwalk::panels
