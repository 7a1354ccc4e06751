#pragma once

#include <QAbstractItemView>
#include <QLabel>
#include <QWidget>

#include "core/layout/layout.h"

namespace stopwalk::panels {

// How a field is called, and what it is for: the text of its label, of the screen reader and of What's This.
struct FieldText {
  QString name;
  QString what = {};
};

// One value that a person can see and change: an editor, and below it what is wrong with what was entered.
class Field : public QWidget {
  Q_OBJECT

 public:
  explicit Field(FieldText text, QWidget* parent = nullptr);

  const QString& name() const { return text_.name; }
  // Stands before the field, and leads to its editor. None where the editor carries the name itself.
  QLabel* label() const { return label_; }
  QString trouble() const;

  // In which lengths are shown, and meant where no unit is typed.
  virtual void setUnit(layout::LengthUnit) {}
  // What was typed and not yet entered is entered now.
  virtual void applyPending() {}

 protected:
  enum class Named { ByLabel, ByItself };
  // To be called once.
  void setEditor(QWidget* editor, Named named = Named::ByLabel);
  // Which of an editor's controls has the keyboard first: one that is hidden cannot be gone through by Tab.
  void setFirst(QWidget* control);
  // Gives a control within the editor its name and text.
  void describe(QWidget* control, const QString& name) const;
  void setTrouble(const QString& trouble);
  // Takes what is being typed in a cell of a table.
  static void closeEditor(QAbstractItemView& table);
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void sizeMark();
  void giveTroubleItsHeight();

  FieldText text_;
  QLabel* label_ = nullptr;
  QWidget* editor_ = nullptr;
  QWidget* trouble_row_ = nullptr;
  QLabel* mark_ = nullptr;
  QLabel* trouble_ = nullptr;
};

}  // namespace stopwalk::panels
