#pragma once

#include <QFrame>
#include <vector>

#include "app/plan/tools/tool.h"

class QHBoxLayout;
class QLabel;
class QLineEdit;

namespace stopwalk::plan {

// The numbers of what is being drawn, beside the plan: they follow the pointer until one is typed. Tab goes
// to the next, Enter accepts, Escape leaves.
class NumberEntry : public QFrame {
  Q_OBJECT

 public:
  explicit NumberEntry(QWidget* parent);

  // Fields of a tool; none hides it. What is being typed stays.
  void show(const std::vector<Field>& fields, layout::LengthUnit unit);
  // Begins typing in the first field that is not yet typed, with these characters.
  void type(const QString& text);

 signals:
  void typed(std::size_t field, double value);
  void accepted();
  void left();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row {
    QLabel* name = nullptr;
    QLineEdit* edit = nullptr;
    Field field;
    bool touched = false;  // text was typed that is not yet taken
  };

  void rebuild(const std::vector<Field>& fields);
  QString textOf(const Field& field) const;
  // Whether all that was typed could be read.
  bool take(Row& row);
  void tell(const QString& problem);

  std::vector<Row> rows_;
  layout::LengthUnit unit_ = layout::LengthUnit::Millimetre;
  QHBoxLayout* line_;
  QLabel* problem_;
};

}  // namespace stopwalk::plan
