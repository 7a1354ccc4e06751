#pragma once

#include <QAction>
#include <QDialog>
#include <QListWidget>
#include <QPointer>

#include "app/panels/search_line.h"

namespace stopwalk::panels {

// All that a window can do, found by typing, with the shortcuts.
class ActionFinder : public QDialog {
  Q_OBJECT

 public:
  explicit ActionFinder(QWidget* window);

  QListWidget* list() const { return list_; }
  SearchLine* search() const { return search_; }

 private:
  void fill(const QWidget& window);
  void filter();
  void run();

  QListWidget* list_;
  SearchLine* search_;
  QList<QPointer<QAction>> actions_;  // by row
};

}  // namespace stopwalk::panels
