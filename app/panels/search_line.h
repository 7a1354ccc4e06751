#pragma once

#include <QAbstractItemView>
#include <QLineEdit>

namespace stopwalk::panels {

// A line to search a list below it: while the line has the keyboard, arrows move in the list and Enter
// chooses there; what is typed in the list goes into the line; Escape empties it.
class SearchLine : public QLineEdit {
  Q_OBJECT

 public:
  SearchLine(const QString& name, QAbstractItemView* list, QWidget* parent = nullptr);

 signals:
  // Enter: the current row of the list is chosen.
  void chosen();

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

 private:
  QAbstractItemView* list_;
};

// Whether each word of `search` is somewhere in `text`; small and capital letters are the same.
bool matches(const QString& text, const QString& search);

}  // namespace stopwalk::panels
