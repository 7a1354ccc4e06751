#pragma once

#include <QAction>
#include <QMenuBar>
#include <functional>

class QWidget;

namespace stopwalk::window {

// Makes the actions of one menu: each with its words, its key, and what it does.
class MenuMaker {
 public:
  MenuMaker(QMenuBar& bar, const QString& title);

  QAction* add(const QString& text, const QKeySequence& key, std::function<void()> run,
               const QString& help = {});
  QAction* add(const QString& text, std::function<void()> run) { return add(text, {}, std::move(run)); }
  void add(QAction* action) { menu_->addAction(action); }
  QMenu* addMenu(const QString& title) { return menu_->addMenu(title); }
  void addSeparator() { menu_->addSeparator(); }
  QMenu* menu() const { return menu_; }

 private:
  QMenu* menu_;
};

// While the menu bar has the keyboard a letter opens a menu, and is no key of what hangs in one.
void keepLettersForMenus(QMenuBar& bar);

}  // namespace stopwalk::window
