#pragma once

#include <QLineEdit>

#include "app/panels/fields/field.h"

namespace stopwalk::panels {

// A value typed on one line. Enter and leaving enter it, Escape puts back what was, arrows up and down step.
class LineField : public Field {
  Q_OBJECT

 public:
  explicit LineField(FieldText text, QWidget* parent = nullptr);
  ~LineField() override;

  QLineEdit* line() const { return line_; }
  void applyPending() override;

 protected:
  // What stands in the line while nothing is being typed.
  void setShown(const QString& text);
  const QString& shown() const { return shown_; }
  bool isBeingTyped() const { return line_->text() != shown_; }
  // Takes what was typed, or tells the trouble.
  virtual void enter(const QString& typed) = 0;
  // By so many steps, or large ones; nothing where there are none.
  virtual void step(int /*steps*/, bool /*large*/) {}

  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  bool handleKey(int key, Qt::KeyboardModifiers modifiers);
  void restore();

  QLineEdit* line_;
  QString shown_;
};

}  // namespace stopwalk::panels
