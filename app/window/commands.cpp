#include "app/window/commands.h"

namespace stopwalk::window {

MenuMaker::MenuMaker(QMenuBar& bar, const QString& title) : menu_(bar.addMenu(title)) {}

QAction* MenuMaker::add(const QString& text, const QKeySequence& key, std::function<void()> run,
                        const QString& help) {
  QAction* action = menu_->addAction(text);
  action->setShortcut(key);
  if (!help.isEmpty()) {
    action->setStatusTip(help);
    action->setWhatsThis(help);
  }
  QObject::connect(action, &QAction::triggered, menu_, [run = std::move(run)] { run(); });
  return action;
}

}  // namespace stopwalk::window
