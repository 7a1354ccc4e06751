#include "app/panels/actions/action_finder.h"

#include <QMenu>
#include <QTimer>
#include <QVBoxLayout>

#include "app/panels/actions/plain_text.h"

namespace stopwalk::panels {

namespace {

QString menuOf(const QAction& action) {
  for (const QObject* object : action.associatedObjects())
    if (const auto* menu = qobject_cast<const QMenu*>(object); menu && !menu->title().isEmpty())
      return plainText(menu->title());
  return {};
}

QString lineOf(const QAction& action) {
  const QString menu = menuOf(action), text = plainText(action.text());
  const QString line = menu.isEmpty() ? text : ActionFinder::tr("%1: %2").arg(menu, text);
  const QString keys = action.shortcut().toString(QKeySequence::NativeText);
  return keys.isEmpty() ? line : ActionFinder::tr("%1 (%2)").arg(line, keys);
}

bool canBeRun(const QAction& action) {
  return !action.isSeparator() && !action.menu() && action.isVisible() && !action.text().isEmpty();
}

}  // namespace

ActionFinder::ActionFinder(QWidget* window) : QDialog(window) {
  setWindowTitle(tr("Find an action"));
  list_ = new QListWidget(this);
  list_->setAccessibleName(tr("Actions"));
  list_->setWhatsThis(tr("All that this window can do. Enter does it."));
  search_ = new SearchLine(tr("Type what you want to do"), list_, this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(8, 8, 8, 8);
  column->addWidget(search_);
  column->addWidget(list_, 1);
  resize(360, 400);
  fill(*window);
  connect(search_, &QLineEdit::textChanged, this, &ActionFinder::filter);
  connect(search_, &SearchLine::chosen, this, &ActionFinder::run);
  connect(list_, &QListWidget::itemClicked, this, &ActionFinder::run);
  search_->setFocus();
  filter();
}

void ActionFinder::fill(const QWidget& window) {
  for (QAction* action : window.findChildren<QAction*>()) {
    if (!canBeRun(*action)) continue;
    auto* item = new QListWidgetItem(action->icon(), lineOf(*action), list_);
    if (!action->isEnabled()) item->setFlags(Qt::NoItemFlags);
    item->setToolTip(action->toolTip());
    item->setData(Qt::UserRole, static_cast<int>(actions_.size()));
    actions_ << action;
  }
  list_->sortItems();
}

void ActionFinder::filter() {
  QListWidgetItem* first = nullptr;
  for (int i = 0; i < list_->count(); ++i) {
    QListWidgetItem* item = list_->item(i);
    item->setHidden(!matches(item->text(), search_->text()));
    if (!first && !item->isHidden() && item->flags().testFlag(Qt::ItemIsEnabled)) first = item;
  }
  list_->setCurrentItem(first);
}

// When the dialog is gone, so that what is done has the window for itself.
void ActionFinder::run() {
  const QListWidgetItem* item = list_->currentItem();
  if (!item || !item->flags().testFlag(Qt::ItemIsEnabled)) return;
  const QPointer<QAction> action = actions_.at(item->data(Qt::UserRole).toInt());
  accept();
  if (action) QTimer::singleShot(0, action, &QAction::trigger);
}

}  // namespace stopwalk::panels
