#include "app/window/commands.h"

#include <QKeyEvent>

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

namespace {

class LettersOpenMenus : public QObject {
 public:
  using QObject::QObject;

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() != QEvent::ShortcutOverride) return false;
    const Qt::KeyboardModifiers held = static_cast<QKeyEvent*>(event)->modifiers();
    if ((held & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier) event->accept();
    return false;
  }
};

}  // namespace

void keepLettersForMenus(QMenuBar& bar) {
  bar.installEventFilter(new LettersOpenMenus(&bar));
}

}  // namespace stopwalk::window
